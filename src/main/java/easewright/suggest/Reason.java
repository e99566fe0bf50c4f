package easewright.suggest;

import java.util.Map;

/**
 * Why something is suggested.
 *
 * @param code       stable name in lower case with hyphens; its words are in the bundle under {@code reason.<code>}
 * @param values     lengths in mm as numbers, names as text
 * @param confidence from 0 to 1; below {@link #LIKELY} it is no more than a guess
 */
public record Reason(String code, Map<String, Object> values, double confidence) {
    public static final double LIKELY = 0.5;

    /**
     * @throws IllegalArgumentException if the confidence is not from 0 to 1
     */
    public Reason {
        values = Map.copyOf(values);
        if (!(confidence >= 0 && confidence <= 1)) {
            throw new IllegalArgumentException("A confidence is from 0 to 1: " + confidence);
        }
    }

    static Reason of(String code, double confidence) {
        return new Reason(code, Map.of(), confidence);
    }

    public boolean isLikely() {
        return confidence >= LIKELY;
    }
}
