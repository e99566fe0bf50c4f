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
    private static final double MARGIN = 14;

    /** Between two words beside each other, as a part of their size. */
    private static final double GAP = 0.6;

    private NamePainter() {}

    static void paint(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom taken) {
        double boxWidth = sight.piece().outline().box().width() * view.scale();
        if (boxWidth < 46) {
            return;
        }
        NamePlace place = sight.name();
        double room = place.width() * view.scale() - MARGIN;
        double high = place.height() * view.scale();
        double size = fitting(sight, Math.max(12, Math.min(LARGEST, boxWidth / 10)), room);
        Point at = view.toScreen(place.at());
        gc.setTextBaseline(VPos.CENTER);
        if (high >= 2.2 * size && inTwoLines(gc, ink, sight, at, size, room + MARGIN, taken)) {
            return;
        }
        double low = Math.min(size, Math.max(SMALLEST, high * 0.8));
        double most = Math.min(boxWidth, room + MARGIN);
        double oneLine = low;
        while (oneLine > SMALLEST && wide(sight, oneLine) > most) {
            oneLine = Math.max(SMALLEST, oneLine - 0.5);
        }
        if (!inOneLine(gc, ink, sight, at, oneLine, most, taken)) {
            nameAlone(gc, ink, sight, at, low, boxWidth, taken);
        }
    }

    private static boolean inTwoLines(
            GraphicsContext gc,
            Ink ink,
            TableScene.PieceSight sight,
            Point at,
            double size,
            double most,
            LabelRoom taken) {
        double wide = Math.max(width(sight.piece().name(), bold(size)), width(sight.subtitle(), small(size)));
        Box plate = LabelRoom.around(at, wide, 2 * size);
        if (wide > most || !taken.take(plate)) {
            return false;
        }
        plate(gc, ink, plate);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setFont(bold(size));
        words(gc, ink, sight.piece().name(), ink.text(), at.x(), at.y() - size * 0.55);
        gc.setFont(small(size));
        words(gc, ink, sight.subtitle(), ink.quiet(), at.x(), at.y() + size * 0.6);
        return true;
    }

    /** On a narrow piece such as a band: the name and beside it how often it is cut. */
    private static boolean inOneLine(
            GraphicsContext gc,
            Ink ink,
            TableScene.PieceSight sight,
            Point at,
            double size,
            double most,
            LabelRoom taken) {
        double nameWidth = width(sight.piece().name(), bold(size));
        double gap = GAP * size;
        double wide = wide(sight, size);
        Box plate = LabelRoom.around(at, wide, size);
        if (wide > most || !taken.take(plate)) {
            return false;
        }
        plate(gc, ink, plate);
        gc.setTextAlign(TextAlignment.LEFT);
        gc.setFont(bold(size));
        words(gc, ink, sight.piece().name(), ink.text(), at.x() - wide / 2, at.y());
        gc.setFont(small(size));
        words(gc, ink, sight.subtitle(), ink.quiet(), at.x() - wide / 2 + nameWidth + gap, at.y());
        return true;
    }

    /** How wide both are beside each other. */
    private static double wide(TableScene.PieceSight sight, double size) {
        return width(sight.piece().name(), bold(size)) + GAP * size + width(sight.subtitle(), small(size));
    }

    /** On a very small piece; nearer there is room for more. */
    private static void nameAlone(
            GraphicsContext gc,
            Ink ink,
            TableScene.PieceSight sight,
            Point at,
            double size,
            double most,
            LabelRoom taken) {
        double wide = width(sight.piece().name(), bold(size));
        if (wide <= most && taken.take(LabelRoom.around(at, wide, size))) {
            gc.setTextAlign(TextAlignment.CENTER);
            gc.setFont(bold(size));
            words(gc, ink, sight.piece().name(), ink.text(), at.x(), at.y());
        }
    }

    /** What is faintly drawn on the paper would be between the letters. */
    private static void plate(GraphicsContext gc, Ink ink, Box place) {
        gc.setFill(ink.paper().deriveColor(0, 1, 1, 0.85));
        gc.fillRoundRect(place.minX() - 3, place.minY() + 1, place.width() + 6, place.height() - 2, 6, 6);
    }

    /** The size at which both lines fit into the room, if that can still be read. */
    private static double fitting(TableScene.PieceSight sight, double size, double room) {
        double wide = Math.max(width(sight.piece().name(), bold(size)), width(sight.subtitle(), small(size)));
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
    private static void words(GraphicsContext gc, Ink ink, String text, Color color, double x, double y) {
        gc.setStroke(ink.paper());
        gc.setLineWidth(5);
        gc.setLineDashes();
        gc.strokeText(text, x, y);
        gc.setFill(color);
        gc.fillText(text, x, y);
    }
}
