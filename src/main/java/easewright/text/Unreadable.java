package easewright.text;

import java.util.Map;

/** Something a person wrote cannot be read. The words come from the bundle, under {@code problem.<code>}. */
public final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;
    private final transient Map<String, Object> values;

    public Unreadable(String code, Map<String, Object> values) {
        super(code + " " + values);
        this.code = code;
        this.values = Map.copyOf(values);
    }

    public String code() {
        return code;
    }

    public Map<String, Object> values() {
        return values;
    }
}
