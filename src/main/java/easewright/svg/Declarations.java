package easewright.svg;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The declarations of a style attribute or rule, as far as they can move, hide or cut an outline, or set its words. */
final class Declarations {
    /** Properties that decide whether, where and how far an outline is drawn; of others only those of words count. */
    private static final Set<String> OF_INTEREST = Set.of(
            "display",
            "clip-path",
            "mask",
            "visibility",
            "transform",
            "transform-origin",
            "transform-box",
            "translate",
            "rotate",
            "scale",
            "d",
            "x",
            "y",
            "width",
            "height",
            "r",
            "rx",
            "ry",
            "cx",
            "cy");

    /** Properties that say how words are set; they leave every outline where it is. */
    private static final Set<String> OF_WORDS = Set.of("font-size", "text-anchor");

    /** A value, and whether it was marked important. */
    record Value(String text, boolean important) {}

    private Declarations() {}

    static Map<String, Value> parse(String text) {
        Map<String, Value> found = null;
        int from = 0;
        while (from < text.length()) {
            int to = end(text, from);
            int colon = text.indexOf(':', from);
            if (colon > from && colon < to) {
                String name = text.substring(from, colon).strip().toLowerCase(Locale.ROOT);
                Value value = value(text.substring(colon + 1, to).strip());
                if (name.equals("font")) {
                    name = "font-size";
                    value = new Value(sizeOf(value.text()), value.important());
                }
                if (OF_INTEREST.contains(name) || OF_WORDS.contains(name)) {
                    found = found == null ? new HashMap<>() : found;
                    Value before = found.get(name);
                    if (before == null || value.important() || !before.important()) {
                        found.put(name, value);
                    }
                }
            }
            from = to + 1;
        }
        return found == null ? Map.of() : found;
    }

    /** Whether all of the properties only say how words are set. */
    static boolean onlyWords(Set<String> properties) {
        return OF_WORDS.containsAll(properties);
    }

    private static Value value(String text) {
        int mark = text.lastIndexOf('!');
        boolean important = mark >= 0 && text.substring(mark + 1).strip().equalsIgnoreCase("important");
        return new Value(important ? text.substring(0, mark).strip() : text, important);
    }

    /** The size in a font that is told in one line, such as {@code bold 12px/1.4 serif}; empty where it tells none. */
    private static String sizeOf(String font) {
        for (String word : font.split("\\s+")) {
            String size = word.split("/", 2)[0];
            if (Length.parse(size).filter(l -> !l.unit().isEmpty()).isPresent()) {
                return size;
            }
        }
        return "";
    }

    /** Where the declaration that begins at {@code from} ends: a semicolon outside quotes and brackets. */
    private static int end(String text, int from) {
        int depth = 0;
        char quote = 0;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '(') {
                depth++;
            } else if (c == ')') {
                depth--;
            } else if (c == ';' && depth <= 0) {
                return i;
            }
        }
        return text.length();
    }
}
