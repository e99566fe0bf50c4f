package easewright.editor.paint;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/** Lays segments into the current path of a canvas, and walks along them for signs set at even distances. */
final class Tracer {
    /** Ends closer to the last laid one than this many pixels are left out: nobody could see them. */
    private static final double TOO_NEAR = 0.4;

    private Tracer() {}

    /** Adds a run of joined segments to the path. */
    static void trace(GraphicsContext gc, Viewport view, List<Segment> segments, boolean close) {
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            Point start = segment.start();
            if (i == 0 || !isAt(segments.get(i - 1).end(), start)) {
                lastX = view.screenX(start.x());
                lastY = view.screenY(start.y());
                gc.moveTo(lastX, lastY);
            }
            double endX = view.screenX(segment.end().x());
            double endY = view.screenY(segment.end().y());
            boolean last = i == segments.size() - 1;
            if (!last
                    && Math.abs(endX - lastX) < TOO_NEAR
                    && Math.abs(endY - lastY) < TOO_NEAR
                    && isTiny(segment, view)) {
                continue;
            }
            if (segment instanceof Cubic cubic) {
                gc.bezierCurveTo(
                        view.screenX(cubic.control1().x()),
                        view.screenY(cubic.control1().y()),
                        view.screenX(cubic.control2().x()),
                        view.screenY(cubic.control2().y()),
                        endX,
                        endY);
            } else {
                gc.lineTo(endX, endY);
            }
            lastX = endX;
            lastY = endY;
        }
        if (close) {
            gc.closePath();
        }
    }

    /** Whether two places are the same: asked of every corner in every picture. */
    static boolean isAt(Point one, Point other) {
        return one == other || one.x() == other.x() && one.y() == other.y();
    }

    private static boolean isTiny(Segment segment, Viewport view) {
        if (segment instanceof Cubic cubic) {
            double reach = Math.max(
                    cubic.control1().distance(cubic.start()), cubic.control2().distance(cubic.start()));
            return reach * view.scale() < TOO_NEAR;
        }
        return true;
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
