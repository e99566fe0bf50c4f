package easewright.pattern;

import java.util.Map;
import java.util.TreeMap;

/**
 * Something a reader, a measure or a check noticed. The words come from the bundle, under {@code finding.<code>},
 * with the values by name.
 *
 * @param code   stable name in lower case with hyphens, such as {@code scale-unproved}
 * @param piece  name of the piece concerned; may be empty
 * @param values lengths in mm as numbers, names as text
 */
public record Finding(String code, Severity severity, String piece, Map<String, Object> values) {
    public Finding {
        Names.require(code, "finding");
        values = Map.copyOf(values);
    }

    public static Finding of(String code, Severity severity, String piece) {
        return new Finding(code, severity, piece, Map.of());
    }

    /** The same finding with one more value. */
    public Finding with(String key, Object value) {
        Map<String, Object> more = new TreeMap<>(values);
        more.put(key, value);
        return new Finding(code, severity, piece, more);
    }

    /** Spelt out for speed, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Finding f
                && code.equals(f.code)
                && severity == f.severity
                && piece.equals(f.piece)
                && values.equals(f.values);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * code.hashCode() + piece.hashCode()) + values.hashCode();
    }
}
