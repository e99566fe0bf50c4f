package easewright.command;

import java.util.Map;

/** Trouble that lies in the command line itself rather than in a file. */
final class Misuse extends Trouble {
    private static final long serialVersionUID = 1L;

    Misuse(String code, Map<String, Object> values) {
        super(code, values);
    }
}
