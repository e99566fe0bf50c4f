package easewright.editor.model;

import easewright.text.Words;
import java.util.Map;

/** A line of the bundle with its values, to be said in whatever unit is then chosen. */
public record Said(String key, Map<String, Object> values) {
    public Said {
        values = Map.copyOf(values);
    }

    public String in(Words words) {
        return words.of(key, values);
    }
}
