package easewright.editor.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Names of files as they are shown within a sentence: long ones without their middle, so that what they begin with and
 * their ending can be read.
 */
public final class ShortName {
    private static final int MOST = 40;
    private static final int BEGINNING = 22;
    private static final int END = 17;

    private static final List<String> NAMES = List.of("file", "files", "backup", "folder");

    private ShortName() {}

    public static String of(String name) {
        int length = name.codePointCount(0, name.length());
        if (length <= MOST) {
            return name;
        }
        // Not through the middle of a letter that takes two places.
        return name.substring(0, name.offsetByCodePoints(0, BEGINNING))
                + "\u2026"
                + name.substring(name.offsetByCodePoints(0, length - END));
    }

    /** The values of a sentence with the names of files shortened in it. */
    public static Map<String, Object> in(Map<String, Object> values) {
        Map<String, Object> shown = new LinkedHashMap<>(values);
        shown.replaceAll((key, value) -> NAMES.contains(key) ? shortened(value) : value);
        return shown;
    }

    private static Object shortened(Object value) {
        if (value instanceof List<?> names) {
            List<Object> all = new ArrayList<>();
            names.forEach(name -> all.add(shortened(name)));
            return all;
        }
        return value instanceof String name ? of(name) : value;
    }
}
