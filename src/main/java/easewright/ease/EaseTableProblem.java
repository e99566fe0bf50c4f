package easewright.ease;

import easewright.pattern.Problem;
import java.util.Map;

/** A table file that cannot be used; the words are in the bundle under {@code problem.<code>}. */
public final class EaseTableProblem extends Problem {
    private static final long serialVersionUID = 1L;

    EaseTableProblem(String code, Map<String, Object> values) {
        super(code, values);
    }

    /** That a file cannot be read, for whatever reason. */
    public static EaseTableProblem unreadable(String file) {
        return new EaseTableProblem("file-unreadable", Map.of("file", file));
    }
}
