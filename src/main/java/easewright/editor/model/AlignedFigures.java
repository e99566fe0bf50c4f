package easewright.editor.model;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures of one column, each filled up at its right so that they stand by their decimal points, with as many places as
 * the longest, or by their fractions, when all are set flush right. Digits are as wide as each other in the window's
 * type.
 */
public final class AlignedFigures {
    private static final Pattern FIGURE = Pattern.compile(
            "(?<whole>[+\u2212]?(?:[0-9]+(?![0-9/]))?)(?:\\.(?<places>[0-9]+)|(?<gap> ?)(?<fraction>[0-9]+/[0-9]+))?");

    /** As wide as a digit, as a stroke or point, and as a space between whole and fraction. */
    private static final String DIGIT = "\u2007";

    private static final String STROKE = "\u2008";

    private AlignedFigures() {}

    /** The same figures in the same order; what is no figure stays as it is. */
    public static List<String> of(List<String> figures) {
        int places = longest(figures, "places");
        int fraction = longest(figures, "fraction");
        return figures.stream().map(f -> filled(f, places, fraction)).toList();
    }

    private static int longest(List<String> figures, String part) {
        return figures.stream()
                .map(FIGURE::matcher)
                .filter(m -> m.matches() && m.group(part) != null)
                .mapToInt(m -> m.group(part).length())
                .max()
                .orElse(0);
    }

    private static String filled(String figure, int places, int fraction) {
        Matcher form = FIGURE.matcher(figure);
        if (!form.matches()) {
            return figure;
        }
        if (fraction > 0) {
            String own = form.group("fraction");
            return own == null
                    ? figure + " " + STROKE + DIGIT.repeat(fraction - 1)
                    : figure + DIGIT.repeat(fraction - own.length());
        }
        String own = form.group("places");
        if (own != null) {
            return figure + "0".repeat(places - own.length());
        }
        return places > 0 ? figure + "." + "0".repeat(places) : figure;
    }
}
