package easewright.text;

import easewright.pattern.Problem;
import java.util.Map;

/** Something a person wrote cannot be read. The words come from the bundle, under {@code problem.<code>}. */
public final class Unreadable extends Problem {
    private static final long serialVersionUID = 1L;

    public Unreadable(String code, Map<String, Object> values) {
        super(code, values);
    }
}
