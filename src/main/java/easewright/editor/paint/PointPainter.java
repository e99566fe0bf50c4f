package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;

/** Draws what a list beside the table points at: a ring about each place, and the lines as it would be drawn there. */
public final class PointPainter {
    private static final double RING = 15;

    private PointPainter() {}

    /** Draws over what lies there. */
    public static void paint(GraphicsContext gc, Viewport view, Ink ink, List<Point> places, List<Segment> lines) {
        gc.setLineDashes();
        gc.setLineCap(StrokeLineCap.ROUND);
        Pen pen = new Pen(gc, view);
        pen.set(ink.paper(), 5);
        pen.stroke(lines);
        pen.set(ink.moved(), 2.4);
        pen.stroke(lines);
        gc.setLineCap(StrokeLineCap.BUTT);
        for (Point place : places) {
            Point at = view.toScreen(place);
            ring(gc, at, RING, ink.paper(), 5);
            ring(gc, at, RING, ink.moved(), 2);
        }
    }

    private static void ring(
            GraphicsContext gc, Point at, double radius, javafx.scene.paint.Color colour, double width) {
        gc.setStroke(colour);
        gc.setLineWidth(width);
        gc.strokeOval(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
    }
}
