package easewright.svg;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Why a drawing could not be read or written. The words come from the bundle, under {@code problem.<code>}. */
public final class SvgProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;

    /** Only text and boxed numbers are ever put in, all of which can be written. */
    private final TreeMap<String, Object> values;

    public SvgProblem(String code, Map<String, Object> values) {
        this(code, values, null);
    }

    public SvgProblem(String code, Map<String, Object> values, Throwable cause) {
        super(code + " " + new TreeMap<>(values), cause);
        this.code = code;
        this.values = new TreeMap<>(values);
    }

    /** Stable name in lower case with hyphens, such as {@code not-well-formed}. */
    public String code() {
        return code;
    }

    /** What the words need: the file's name as {@code file}, where known the {@code line}, sizes and the like. */
    public Map<String, Object> values() {
        return Collections.unmodifiableMap(values);
    }
}
