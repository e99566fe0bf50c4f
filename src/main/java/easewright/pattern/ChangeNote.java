package easewright.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The record of one change: which method, and its settings in the order in which they are written. Lengths are mm,
 * written as plain decimals. {@code alter} reads and writes these; {@code pattern} only keeps them.
 */
public record ChangeNote(String method, Map<String, String> settings) {
    public ChangeNote {
        Names.require(method, "change");
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }
}
