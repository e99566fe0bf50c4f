package easewright.editor.mark;

import easewright.pattern.Problem;
import java.util.Map;

/** A mark that cannot be made; the words are in the bundle under {@code problem.<code>}. */
public final class MarkRefused extends Problem {
    private static final long serialVersionUID = 1L;

    MarkRefused(String code, Map<String, Object> values) {
        super(code, values);
    }
}
