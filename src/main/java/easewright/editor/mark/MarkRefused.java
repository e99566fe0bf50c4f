package easewright.editor.mark;

import java.util.Map;

/** A mark that cannot be made; the words are in the bundle under {@code problem.<code>}. */
public final class MarkRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;
    private final transient Map<String, Object> values;

    MarkRefused(String code, Map<String, Object> values) {
        super(code);
        this.code = code;
        this.values = Map.copyOf(values);
    }

    public String code() {
        return code;
    }

    public Map<String, Object> values() {
        return values == null ? Map.of() : values;
    }
}
