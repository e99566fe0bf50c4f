package easewright.print.pdf;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.awt.AWTError;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.PathIterator;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writing that the embedded typeface cannot set (letters it lacks, scripts that join or run from right to left), as
 * the outlines in which the machine's own fonts draw it.
 *
 * @param outlines of a size of 1, base line at y = 0
 * @param width    of a size of 1
 */
record Drawn(List<Segment> outlines, double width) {
    /** Size at which outlines are taken, so that rounding inside the fonts stays small. */
    private static final float SIZE = 1000;

    /** Empty where the machine has no fonts to draw with. Letters that none of them has are drawn as boxes. */
    static Optional<Drawn> of(String text, boolean bold) {
        try {
            int style = bold ? Font.BOLD : Font.PLAIN;
            AttributedString set = new AttributedString(text);
            Font usual = new Font(Font.SANS_SERIF, style, 1).deriveFont(SIZE);
            for (int i = 0; i < text.length(); ) {
                int letter = text.codePointAt(i);
                int end = i + Character.charCount(letter);
                set.addAttribute(TextAttribute.FONT, usual.canDisplay(letter) ? usual : other(letter, style), i, end);
                i = end;
            }
            TextLayout layout = new TextLayout(set.getIterator(), new FontRenderContext(null, true, true));
            return Optional.of(
                    new Drawn(segments(layout.getOutline(null).getPathIterator(null)), layout.getAdvance() / SIZE));
        } catch (RuntimeException | LinkageError | InternalError | AWTError e) {
            // A machine without any font set-up; the caller shows signs for the missing letters.
            return Optional.empty();
        }
    }

    /** The first of the machine's fonts that has the letter, or else the usual one, which draws a box for it. */
    private static Font other(int letter, int style) {
        for (Font font : GraphicsEnvironment.getLocalGraphicsEnvironment().getAllFonts()) {
            if (font.canDisplay(letter)) {
                return font.deriveFont(style, SIZE);
            }
        }
        return new Font(Font.SANS_SERIF, style, 1).deriveFont(SIZE);
    }

    private static List<Segment> segments(PathIterator path) {
        List<Segment> run = new ArrayList<>();
        double[] c = new double[6];
        Point start = Point.ORIGIN;
        Point pen = Point.ORIGIN;
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(c);
            Point next = kind == PathIterator.SEG_CLOSE ? start : at(c, (ends(kind) - 1) * 2);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> start = next;
                case PathIterator.SEG_QUADTO -> run.add(Cubic.fromQuadratic(pen, at(c, 0), next));
                case PathIterator.SEG_CUBICTO -> run.add(new Cubic(pen, at(c, 0), at(c, 2), next));
                default -> {
                    if (!next.equals(pen)) {
                        run.add(new Line(pen, next));
                    }
                }
            }
            pen = next;
        }
        return run;
    }

    private static int ends(int kind) {
        return kind == PathIterator.SEG_QUADTO ? 2 : kind == PathIterator.SEG_CUBICTO ? 3 : 1;
    }

    private static Point at(double[] c, int i) {
        return new Point(c[i] / SIZE, c[i + 1] / SIZE);
    }
}
