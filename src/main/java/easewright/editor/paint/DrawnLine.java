package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** A line as it lies on the screen, in straight steps that are near enough for words that are to keep clear of it. */
final class DrawnLine {
    /** A curve is followed in steps of about this many pixels. */
    private static final double STEP = 16;

    private static final int MOST_STEPS = 16;

    private final double[] xs;
    private final double[] ys;
    private final Box box;

    private DrawnLine(List<Point> corners) {
        xs = corners.stream().mapToDouble(Point::x).toArray();
        ys = corners.stream().mapToDouble(Point::y).toArray();
        box = Box.around(corners);
    }

    /** Through these pixels. */
    static DrawnLine through(List<Point> corners) {
        return new DrawnLine(corners);
    }

    /** Along joined segments; a stretch that does not begin where the one before it ends makes a line of its own. */
    static List<DrawnLine> along(List<Segment> segments, Viewport view) {
        List<DrawnLine> lines = new ArrayList<>();
        List<Point> corners = new ArrayList<>();
        Point pen = null;
        for (Segment segment : segments) {
            if (pen != null && !pen.equals(segment.start())) {
                lines.add(new DrawnLine(corners));
                corners.clear();
            }
            if (corners.isEmpty()) {
                corners.add(view.toScreen(segment.start()));
            }
            int steps = steps(segment, view);
            for (int i = 1; i < steps; i++) {
                corners.add(view.toScreen(segment.at((double) i / steps)));
            }
            pen = segment.end();
            corners.add(view.toScreen(pen));
        }
        if (!corners.isEmpty()) {
            lines.add(new DrawnLine(corners));
        }
        return lines;
    }

    private static int steps(Segment segment, Viewport view) {
        if (!(segment instanceof Cubic)) {
            return 1;
        }
        Box box = segment.box();
        return (int) Math.max(2, Math.min(MOST_STEPS, view.scale() * (box.width() + box.height()) / STEP));
    }

    /** Whether the line crosses or enters a rectangle that is turned about its middle, radians. */
    boolean meets(Point middle, double width, double height, double turn) {
        double reach = (turn == 0 ? Math.max(width, height) : Math.hypot(width, height)) / 2;
        if (middle.x() + reach < box.minX()
                || middle.x() - reach > box.maxX()
                || middle.y() + reach < box.minY()
                || middle.y() - reach > box.maxY()) {
            return false;
        }
        Box around = new Box(-width / 2, -height / 2, width / 2, height / 2);
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double lastX = 0;
        double lastY = 0;
        for (int i = 0; i < xs.length; i++) {
            double dx = xs[i] - middle.x();
            double dy = ys[i] - middle.y();
            double x = dx * cos + dy * sin;
            double y = dy * cos - dx * sin;
            if (i > 0 && Stretch.of(around, lastX, lastY, x, y).isPresent()) {
                return true;
            }
            lastX = x;
            lastY = y;
        }
        return false;
    }

    /** Whether a pixel lies within the line, taken as closed. */
    boolean surrounds(Point at) {
        boolean inside = false;
        for (int i = 0, j = xs.length - 1; i < xs.length; j = i++) {
            boolean between = ys[i] > at.y() != ys[j] > at.y();
            if (between && at.x() < (xs[j] - xs[i]) * (at.y() - ys[i]) / (ys[j] - ys[i]) + xs[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
