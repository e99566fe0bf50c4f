package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The settings of a change as they are kept in a {@link ChangeNote}: writes them, and reads them back equal. */
final class Settings {
    static final String DART_WEIGHT = "dart-weight.";

    private final Map<String, String> entries;

    Settings() {
        entries = new LinkedHashMap<>();
    }

    Settings(ChangeNote note) {
        entries = note.settings();
    }

    ChangeNote note(String method) {
        return new ChangeNote(method, entries);
    }

    Settings text(String key, String value) {
        entries.put(key, value);
        return this;
    }

    /** Written only where there is something to write. */
    Settings some(String key, String value) {
        return value.isEmpty() ? this : text(key, value);
    }

    /** A plain decimal with as many digits as bring the very number back. */
    Settings number(String key, double value) {
        return text(key, plain(value));
    }

    /** Written only where it is true. */
    Settings flag(String key, boolean value) {
        return value ? text(key, "yes") : this;
    }

    Settings point(String key, Point p) {
        return text(key, plain(p.x()) + " " + plain(p.y()));
    }

    Settings texts(String key, List<String> values) {
        for (int i = 0; i < values.size(); i++) {
            text(key + "." + (i + 1), values.get(i));
        }
        return this;
    }

    Settings points(String key, List<Point> values) {
        for (int i = 0; i < values.size(); i++) {
            point(key + "." + (i + 1), values.get(i));
        }
        return this;
    }

    /** Edges with their weights, under {@code weight.1} and so on. */
    Settings shares(String key, List<Share> shares) {
        for (int i = 0; i < shares.size(); i++) {
            text(key + "." + (i + 1), shares.get(i).edge().toString());
            number("weight." + (i + 1), shares.get(i).weight());
        }
        return this;
    }

    /** Darts with their weights, under {@code dart-weight.1} and so on. */
    Settings darts(String key, List<DartShare> darts) {
        for (int i = 0; i < darts.size(); i++) {
            text(key + "." + (i + 1), darts.get(i).path());
            number(DART_WEIGHT + (i + 1), darts.get(i).weight());
        }
        return this;
    }

    String text(String key) throws Refusal {
        String value = entries.get(key);
        if (value == null) {
            throw Refusal.of("note-setting-missing").with("setting", key);
        }
        return value;
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    /** Empty where it was left out. */
    String some(String key) {
        return entries.getOrDefault(key, "");
    }

    double number(String key) throws Refusal {
        return parsed(key, text(key));
    }

    boolean flag(String key) {
        return "yes".equals(entries.get(key));
    }

    Point point(String key) throws Refusal {
        String[] xy = text(key).strip().split("\\s+");
        if (xy.length != 2) {
            throw unreadable(key);
        }
        return new Point(parsed(key, xy[0]), parsed(key, xy[1]));
    }

    <T extends Enum<T>> T choice(String key, Class<T> kind) throws Refusal {
        String wanted = text(key);
        for (T constant : kind.getEnumConstants()) {
            if (name(constant).equals(wanted)) {
                return constant;
            }
        }
        throw unreadable(key);
    }

    static String name(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    List<String> texts(String key) throws Refusal {
        List<String> values = new ArrayList<>();
        for (int i = 1; entries.containsKey(key + "." + i); i++) {
            values.add(text(key + "." + i));
        }
        return values;
    }

    List<Point> points(String key) throws Refusal {
        List<Point> values = new ArrayList<>();
        for (int i = 1; entries.containsKey(key + "." + i); i++) {
            values.add(point(key + "." + i));
        }
        return values;
    }

    List<Share> shares(String key) throws Refusal {
        List<Share> shares = new ArrayList<>();
        List<String> edges = texts(key);
        for (int i = 0; i < edges.size(); i++) {
            try {
                shares.add(new Share(EdgeRef.parse(edges.get(i)), number("weight." + (i + 1))));
            } catch (IllegalArgumentException malformed) {
                throw unreadable(key + "." + (i + 1));
            }
        }
        return shares;
    }

    List<DartShare> darts(String key) throws Refusal {
        List<DartShare> darts = new ArrayList<>();
        List<String> paths = texts(key);
        for (int i = 0; i < paths.size(); i++) {
            int slash = paths.get(i).lastIndexOf('/');
            double weight = number(DART_WEIGHT + (i + 1));
            if (slash <= 0 || !(weight > 0)) {
                throw unreadable(key + "." + (i + 1));
            }
            darts.add(
                    new DartShare(paths.get(i).substring(0, slash), paths.get(i).substring(slash + 1), weight));
        }
        return darts;
    }

    EdgeRef edge(String key) throws Refusal {
        try {
            return EdgeRef.parse(text(key));
        } catch (IllegalArgumentException malformed) {
            throw unreadable(key);
        }
    }

    Refusal unreadable(String key) {
        return Refusal.of("note-setting-unreadable").with("setting", key).with("text", entries.getOrDefault(key, ""));
    }

    private double parsed(String key, String text) throws Refusal {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw unreadable(key);
        }
        throw unreadable(key);
    }

    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).toPlainString();
    }
}
