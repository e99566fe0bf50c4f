package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** Draws lines that are given in mm, and signs whose size is in pixels. */
record Pen(GraphicsContext gc, Viewport view) {
    void set(Color color, double width, double... dashes) {
        gc.setStroke(color);
        gc.setLineWidth(width);
        gc.setLineDashes(dashes);
    }

    /** Strokes an open line. */
    void stroke(List<Segment> line) {
        gc.beginPath();
        Tracer.trace(gc, view, line, false);
        gc.stroke();
    }

    /** A straight line between two places on the table. */
    void line(Point from, Point to) {
        gc.strokeLine(view.screenX(from.x()), view.screenY(from.y()), view.screenX(to.x()), view.screenY(to.y()));
    }

    /** Fills an area given by its corners on the table. */
    void fill(List<Point> corners) {
        double[] xs = corners.stream().mapToDouble(p -> view.screenX(p.x())).toArray();
        double[] ys = corners.stream().mapToDouble(p -> view.screenY(p.y())).toArray();
        gc.fillPolygon(xs, ys, xs.length);
    }

    /** The head of an arrow whose tip lies at a pixel. */
    void arrowHead(Point tip, Point direction, Color color) {
        Point side = direction.quarterTurned();
        Point back = tip.minus(direction.times(8));
        gc.setFill(color);
        gc.fillPolygon(
                new double[] {tip.x(), back.x() + side.x() * 3.5, back.x() - side.x() * 3.5},
                new double[] {tip.y(), back.y() + side.y() * 3.5, back.y() - side.y() * 3.5},
                3);
    }
}
