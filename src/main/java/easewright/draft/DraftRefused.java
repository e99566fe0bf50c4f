package easewright.draft;

import java.util.Map;
import java.util.TreeMap;

/**
 * The measurements do not allow a draft: one is missing, or some line would have to be longer or shorter than it can
 * be. The words are in the bundle under {@code problem.<code>}.
 */
public final class DraftRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String code;
    private final transient Map<String, Object> values;

    DraftRefused(String code, Map<String, Object> values) {
        super(code + " " + new TreeMap<>(values));
        this.code = code;
        this.values = Map.copyOf(values);
    }

    /** @param what the line that cannot be drawn */
    static DraftRefused line(DraftLine what) {
        return new DraftRefused("draft-line", Map.of("what", what));
    }

    public String code() {
        return code;
    }

    public Map<String, Object> values() {
        return values;
    }
}
