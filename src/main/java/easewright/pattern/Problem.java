package easewright.pattern;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Why something was not done, as code and values: the words are in the bundle under {@code problem.<code>}. Values that
 * are numbers are lengths in mm, unless their name says otherwise.
 */
public abstract class Problem extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;

    /** Anything may be among them, also what cannot be written: none is ever sent anywhere. */
    private final transient Map<String, Object> values;

    protected Problem(String code, Map<String, Object> values) {
        super(code + " " + new TreeMap<>(values));
        this.code = code;
        this.values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /**
     * @param cause what it came from; null if that is not known
     */
    protected Problem(String code, Map<String, Object> values, Throwable cause) {
        super(code + " " + new TreeMap<>(values), cause);
        this.code = code;
        this.values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /** Stable name in lower case with hyphens, such as {@code not-well-formed}. */
    public final String code() {
        return code;
    }

    /** What the words need, by the names that stand in them. */
    public final Map<String, Object> values() {
        return values;
    }
}
