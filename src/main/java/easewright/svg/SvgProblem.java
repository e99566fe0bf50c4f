package easewright.svg;

import easewright.pattern.Problem;
import java.util.Map;

/** Why a drawing could not be read or written. The words come from the bundle, under {@code problem.<code>}. */
public final class SvgProblem extends Problem {
    private static final long serialVersionUID = 1L;

    public SvgProblem(String code, Map<String, Object> values) {
        super(code, values);
    }

    public SvgProblem(String code, Map<String, Object> values, Throwable cause) {
        super(code, values, cause);
    }
}
