package easewright.ease;

import easewright.pattern.Problem;
import java.util.Map;

/** A table file that cannot be used; the words are in the bundle under {@code problem.<code>}. */
public final class EaseTableProblem extends Problem {
    private static final long serialVersionUID = 1L;

    EaseTableProblem(String code, Map<String, Object> values) {
        super(code, values);
    }
}
