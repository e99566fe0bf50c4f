package easewright.editor.model;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures of one column, with as many places as the longest, so that they stand by their points when set flush right. */
public final class AlignedFigures {
    private static final Pattern FIGURE = Pattern.compile("[+\u2212]?[0-9]+(?:\\.(?<places>[0-9]+))?");

    private AlignedFigures() {}

    /** The same figures in the same order; what is no figure stays as it is. */
    public static List<String> of(List<String> figures) {
        int places = figures.stream()
                .map(FIGURE::matcher)
                .filter(m -> m.matches() && m.group("places") != null)
                .mapToInt(m -> m.group("places").length())
                .max()
                .orElse(0);
        return figures.stream().map(f -> filled(f, places)).toList();
    }

    /**
     * Lengths without their unit: centimetres by their points, unless one would find no room then. Inches end in one line, as
     * fields do: filled up for a fraction, a whole number would stand at the column before.
     *
     * @param room how many letters of a figure the column has room for
     */
    public static List<String> of(List<String> lengths, int room, Words words) {
        List<String> bare = lengths.stream()
                .map(length -> words.bare(length).replace('\u00a0', ' '))
                .toList();
        if (words.unit() == LengthUnit.INCH) {
            return bare;
        }
        List<String> aligned = of(bare);
        return aligned.stream().allMatch(figure -> figure.length() <= room) ? aligned : bare;
    }

    private static String filled(String figure, int places) {
        Matcher form = FIGURE.matcher(figure);
        if (!form.matches()) {
            return figure;
        }
        String own = form.group("places");
        if (own != null) {
            return figure + "0".repeat(places - own.length());
        }
        return places > 0 ? figure + "." + "0".repeat(places) : figure;
    }
}
