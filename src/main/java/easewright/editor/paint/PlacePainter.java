package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Draws a place that was chosen on the table: a cross in a ring, with what it is for beside it. */
public final class PlacePainter {
    /** How far below its place a label's middle may lie, the best first, and how high a label is, pixels. */
    private static final double[] DOWN = {-9, 12, -27, 30, -45, 48};

    private static final double HIGH = 15;

    private PlacePainter() {}

    /**
     * Draws one place over what lies there.
     *
     * @param room for its label, which stands where it hides no other words
     */
    public static void paint(GraphicsContext gc, Viewport view, Ink ink, Point place, String label, LabelRoom room) {
        Point at = view.toScreen(place);
        gc.setLineDashes();
        gc.setStroke(ink.paper());
        gc.setLineWidth(5);
        cross(gc, at);
        gc.setStroke(ink.moved());
        gc.setLineWidth(2);
        cross(gc, at);
        if (!label.isEmpty()) {
            label(gc, ink, at, label, room);
        }
    }

    private static void label(GraphicsContext gc, Ink ink, Point at, String label, LabelRoom room) {
        Font font = Font.font(12);
        Text ruler = new Text(label);
        ruler.setFont(font);
        double width = ruler.getLayoutBounds().getWidth();
        List<Point> middles = new ArrayList<>();
        for (double down : DOWN) {
            middles.add(at.plus(new Point(12 + width / 2, down)));
            middles.add(at.plus(new Point(-12 - width / 2, down)));
        }
        Point middle = room.take(middles, width + 4, HIGH).orElse(middles.get(0));
        RimmedWords.paint(gc, ink, label, font, middle, 4, ink.moved());
    }

    /** Draws a cut from place to place. */
    static void cut(GraphicsContext gc, Viewport view, Ink ink, Line cut) {
        Point from = view.toScreen(cut.start());
        Point to = view.toScreen(cut.end());
        gc.setLineDashes();
        gc.setStroke(ink.paper());
        gc.setLineWidth(4);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        gc.setStroke(ink.moved());
        gc.setLineWidth(1.6);
        gc.setLineDashes(9, 4, 2, 4);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        gc.setLineDashes();
    }

    private static void cross(GraphicsContext gc, Point at) {
        gc.strokeOval(at.x() - 5, at.y() - 5, 10, 10);
        gc.strokeLine(at.x() - 9, at.y(), at.x() + 9, at.y());
        gc.strokeLine(at.x(), at.y() - 9, at.x(), at.y() + 9);
    }
}
