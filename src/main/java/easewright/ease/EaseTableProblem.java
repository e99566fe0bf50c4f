package easewright.ease;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** A table file that cannot be used; the words are in the bundle under {@code problem.<code>}. */
public final class EaseTableProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;
    private final transient Map<String, Object> values;

    EaseTableProblem(String code, Map<String, Object> values) {
        super(code + " " + new TreeMap<>(values));
        this.code = code;
        this.values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    public String code() {
        return code;
    }

    public Map<String, Object> values() {
        return values;
    }
}
