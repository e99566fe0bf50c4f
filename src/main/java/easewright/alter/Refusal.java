package easewright.alter;

import easewright.pattern.Problem;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Why a change was not made. The words are in the bundle under {@code problem.<code>}; values named there are lengths
 * in mm where they are numbers.
 */
public final class Refusal extends Problem {
    private static final long serialVersionUID = 1L;

    private final transient OptionalDouble largest;

    private Refusal(String code, Map<String, Object> values, OptionalDouble largest) {
        super(code, values);
        this.largest = largest;
    }

    static Refusal of(String code) {
        return new Refusal(code, Map.of(), OptionalDouble.empty());
    }

    Refusal with(String key, Object value) {
        Map<String, Object> more = new TreeMap<>(values());
        more.put(key, value);
        return new Refusal(code(), more, largest);
    }

    Refusal withLargest(double amount) {
        Map<String, Object> more = new TreeMap<>(values());
        more.put("largest", amount);
        return new Refusal(code(), more, OptionalDouble.of(amount));
    }

    /** Whether another amount helps less here than with the other refusal: it must be smaller, or does not help at all. */
    public boolean allowsLessThan(Refusal other) {
        return other.largest.isPresent()
                && (largest.isEmpty() || Math.abs(largest.getAsDouble()) < Math.abs(other.largest.getAsDouble()));
    }

    /** The largest amount, in the direction asked, that would have worked, mm; empty where none is known. */
    public OptionalDouble largest() {
        return largest;
    }
}
