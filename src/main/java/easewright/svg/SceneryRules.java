package easewright.svg;

import java.util.Locale;
import java.util.Set;

/** Lets through of styles what says how lines and words look, and nothing else. */
final class SceneryRules {
    /** Opacity of whole groups is not among them: each would want a picture of its own, as large as the screen. */
    static final Set<String> PROPERTIES = Set.of(
            "fill",
            "fill-opacity",
            "fill-rule",
            "stroke",
            "stroke-width",
            "stroke-opacity",
            "stroke-linecap",
            "stroke-linejoin",
            "stroke-miterlimit",
            "stroke-dasharray",
            "stroke-dashoffset",
            "display",
            "visibility",
            "color",
            "stop-color",
            "stop-opacity",
            "font-family",
            "font-size",
            "font-style",
            "font-weight",
            "text-anchor",
            "letter-spacing",
            "marker-start",
            "marker-end");

    private static final Set<String> REFERRING = Set.of("fill", "stroke", "marker-start", "marker-end");
    private static final int LONGEST_VALUE = 400;
    private static final int LONGEST_SHEET = 200_000;

    private SceneryRules() {}

    /** Whether a value may stand for a property: no escapes, and no reference but to an id in the drawing. */
    static boolean isPlain(String property, String value) {
        String plain = value.strip().toLowerCase(Locale.ROOT);
        if (!PROPERTIES.contains(property) || plain.length() > LONGEST_VALUE || hasSigns(plain)) {
            return false;
        }
        boolean refers = plain.contains("url") || plain.contains("(") && !plain.startsWith("rgb(");
        return !refers || REFERRING.contains(property) && plain.matches("url\\(#[^()'\"\\s]+\\)");
    }

    private static boolean hasSigns(String value) {
        return value.chars().anyMatch(c -> c == '\\' || c == '@' || c == '<' || c == '{' || c == '}' || c == ';');
    }

    /** The declarations of a style attribute that are let through. */
    static String declarations(String style) {
        StringBuilder kept = new StringBuilder();
        for (String declaration : style.split(";")) {
            int colon = declaration.indexOf(':');
            String property =
                    colon < 0 ? "" : declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
            String value = colon < 0
                    ? ""
                    : declaration.substring(colon + 1).replace("!important", "").strip();
            if (!value.isEmpty() && isPlain(property, value)) {
                kept.append(property).append(':').append(value).append(';');
            }
        }
        return kept.toString();
    }

    /** The rules of a style sheet that are let through; whatever begins with @ is left out with all that it holds. */
    static String sheet(String css) {
        if (css.length() > LONGEST_SHEET) {
            return "";
        }
        String rest =
                css.replaceAll("(?s)/\\*.*?\\*/", " ").replace("<!--", " ").replace("-->", " ");
        StringBuilder kept = new StringBuilder();
        int from = 0;
        for (int open = rest.indexOf('{'); open >= 0; open = rest.indexOf('{', from)) {
            int close = rest.indexOf('}', open);
            String selector = rest.substring(from, open);
            // An @-rule without a block ends before the selector that follows it.
            selector = selector.substring(selector.lastIndexOf(';') + 1).strip();
            int inner = rest.indexOf('{', open + 1);
            boolean nested = inner >= 0 && inner < close;
            if (close < 0 || nested) {
                return kept.toString();
            }
            String declarations = declarations(rest.substring(open + 1, close));
            // A rule with references may lead to what is not there; those of single elements are looked after.
            if (selector.matches("[\\w\\s.#,>*+-]+") && !declarations.isEmpty() && !declarations.contains("url")) {
                kept.append(selector).append('{').append(declarations).append("}\n");
            }
            from = close + 1;
        }
        return kept.toString();
    }
}
