package easewright.command;

import easewright.pattern.Problem;
import java.util.Map;

/** Why a command stopped without doing anything: the code of its words in the bundle, {@code problem.<code>}. */
class Trouble extends Problem {
    private static final long serialVersionUID = 1L;

    Trouble(String code, Map<String, Object> values) {
        super(code, values);
    }
}
