package easewright.pattern;

import easewright.geom.Point;
import java.util.List;

/**
 * Words written on the drawing, where they stand. Not part of the pattern, but they say what its pieces are.
 *
 * @param lines  the lines of the text, fit to show; at least one
 * @param middle about the middle of the first line, as far as it can be told without the font, mm
 * @param height size of the letters, mm
 */
public record Caption(List<String> lines, Point middle, double height) {
    /** Letters of Latin fonts are on average about this wide for their size. */
    public static final double LETTER = 0.55;

    /**
     * @throws IllegalArgumentException if there is no line or a height that is no number
     */
    public Caption {
        lines = List.copyOf(lines);
        if (lines.isEmpty() || !(height >= 0 && Double.isFinite(height))) {
            throw new IllegalArgumentException("A caption needs words and a height");
        }
    }

    /** The place of the first line that is nearest to another place beside, above or below it, as far as can be told. */
    public Point nearest(Point to) {
        double half = LETTER * height * lines.get(0).length() / 2;
        return new Point(Math.max(middle.x() - half, Math.min(middle.x() + half, to.x())), middle.y());
    }

    /** All lines in one. */
    public String words() {
        return String.join(" ", lines);
    }
}
