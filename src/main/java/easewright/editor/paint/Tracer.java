package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/** Lays segments into the current path of a canvas, and walks along them for signs set at even distances. */
final class Tracer {
    private Tracer() {}

    /** Adds a run of joined segments to the path. */
    static void trace(GraphicsContext gc, Viewport view, List<Segment> segments, boolean close) {
        ScreenPath.of(segments, view).lay(gc, 0, 0, close);
    }

    /** What is done at each step of a walk. */
    interface Step {
        /** At a place on the table, with the unit direction of travel. */
        void at(Point place, Point tangent);
    }

    /** Walks along the segments and stops every {@code spacing} millimetres, half a spacing after the start first. */
    static void walk(List<Segment> segments, double spacing, Step step) {
        double next = spacing / 2;
        for (Segment segment : segments) {
            double length = segment.length();
            while (next < length) {
                double t = segment.parameterAtLength(next);
                Point direction = segment.derivative(t);
                if (direction.norm() > 0) {
                    step.at(segment.at(t), direction.unit());
                }
                next += spacing;
            }
            next -= length;
        }
    }
}
