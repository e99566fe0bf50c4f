package easewright.command;

import java.util.Map;

/** Why a command stopped without doing anything: the code of its words in the bundle, {@code problem.<code>}. */
class Trouble extends Exception {
    private static final long serialVersionUID = 1L;

    private final String code;
    private final transient Map<String, Object> values;

    Trouble(String code, Map<String, Object> values) {
        super(code + " " + values);
        this.code = code;
        this.values = Map.copyOf(values);
    }

    final String code() {
        return code;
    }

    final Map<String, Object> values() {
        return values;
    }
}
