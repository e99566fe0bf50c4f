package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Writes the name of a piece, and below it how often it is cut, where there is room. */
final class NamePainter {
    private static final double LARGEST = 20;
    private static final double SMALLEST = 9;

    /** Rather than in two lines smaller than this, both words are written beside each other. */
    private static final double LEAST_OF_TWO = 11;

    private static final double MARGIN = 22;

    /** Of the margin, what is for the rim of the words, which would cross out the lines beside them. */
    private static final double RIM = 8;

    /** How far the plate below words reaches over their middle height, as a part of it. */
    private static final double OVER = 0.08;

    /** Between two words beside each other, as a part of their size. */
    private static final double GAP = 0.6;

    private final GraphicsContext gc;
    private final Ink ink;
    private final LabelRoom taken;
    private final String name;
    private final String subtitle;
    private final Point at;

    private NamePainter(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom taken) {
        this.gc = gc;
        this.ink = ink;
        this.taken = taken;
        name = sight.piece().name();
        subtitle = sight.subtitle();
        at = view.toScreen(sight.name().at());
    }

    static void paint(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom taken) {
        double boxWidth = sight.piece().outline().box().width() * view.scale();
        if (boxWidth < 46) {
            return;
        }
        double room = sight.name().width() * view.scale() - MARGIN;
        double high = sight.name().height() * view.scale();
        gc.setTextBaseline(VPos.CENTER);
        new NamePainter(gc, view, ink, sight, taken).paint(boxWidth, room, high);
    }

    private void paint(double boxWidth, double room, double high) {
        double size = fitting(Math.max(12, Math.min(LARGEST, boxWidth / 10)), room);
        double low = Math.min(size, Math.max(SMALLEST, high * 0.8));
        double most = Math.min(boxWidth, room + MARGIN) - RIM;
        double two = Math.min(size, high / 2.5);
        boolean better = high >= 2.5 * size || beside(low) > most;
        if (two >= LEAST_OF_TWO && better && inTwoLines(two, most)) {
            return;
        }
        double oneLine = low;
        while (oneLine > SMALLEST && beside(oneLine) > most) {
            oneLine = Math.max(SMALLEST, oneLine - 0.5);
        }
        if (!inOneLine(oneLine, most)) {
            nameAlone(low, boxWidth);
        }
    }

    private boolean inTwoLines(double size, double most) {
        if (!plated(below(size), 2 * size, most)) {
            return false;
        }
        both(size, TextAlignment.CENTER, at.plus(new Point(0, -size * 0.55)), at.plus(new Point(0, size * 0.6)));
        return true;
    }

    /** On a narrow piece such as a band: the name and beside it how often it is cut. */
    private boolean inOneLine(double size, double most) {
        double wide = beside(size);
        if (!plated(wide, size, most)) {
            return false;
        }
        Point start = at.minus(new Point(wide / 2, 0));
        Point next = start.plus(new Point(width(name, bold(size)) + GAP * size, 0));
        both(size, TextAlignment.LEFT, start, next);
        return true;
    }

    /** On a very small piece; nearer there is room for more. */
    private void nameAlone(double size, double most) {
        double wide = width(name, bold(size));
        if (wide <= most && taken.take(LabelRoom.around(at, wide, size))) {
            gc.setTextAlign(TextAlignment.CENTER);
            gc.setFont(bold(size));
            words(name, ink.text(), at);
        }
    }

    private void both(double size, TextAlignment align, Point first, Point second) {
        gc.setTextAlign(align);
        gc.setFont(bold(size));
        words(name, ink.text(), first);
        gc.setFont(small(size));
        words(subtitle, ink.quiet(), second);
    }

    /** How wide both are beside each other. */
    private double beside(double size) {
        return width(name, bold(size)) + GAP * size + width(subtitle, small(size));
    }

    /** How wide both are one below the other. */
    private double below(double size) {
        return Math.max(width(name, bold(size)), width(subtitle, small(size)));
    }

    /**
     * Takes the room for both, if it is to be had, and lays a plate there: what is faintly drawn on the paper would be
     * between the letters.
     */
    private boolean plated(double wide, double high, double most) {
        Box place = LabelRoom.around(at, wide, high);
        if (wide > most || !taken.take(place)) {
            return false;
        }
        gc.setFill(ink.paper().deriveColor(0, 1, 1, 0.85));
        double over = OVER * high;
        gc.fillRoundRect(place.minX() - 3, place.minY() - over, place.width() + 6, high + 2 * over, 6, 6);
        return true;
    }

    /** The size at which both lines fit into the room, if that can still be read. */
    private double fitting(double size, double room) {
        double wide = below(size);
        return wide <= room ? size : Math.max(SMALLEST, size * room / wide);
    }

    private static Font bold(double size) {
        return Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, size);
    }

    private static Font small(double size) {
        return Font.font(Math.max(SMALLEST, size * 0.68));
    }

    private static double width(String text, Font font) {
        Text ruler = new Text(text);
        ruler.setFont(font);
        return ruler.getLayoutBounds().getWidth();
    }

    /** Words with a rim of paper, so that a line below does not cross them out. */
    private void words(String text, Color color, Point place) {
        gc.setStroke(ink.paper());
        gc.setLineWidth(5);
        gc.setLineDashes();
        gc.strokeText(text, place.x(), place.y());
        gc.setFill(color);
        gc.fillText(text, place.x(), place.y());
    }
}
