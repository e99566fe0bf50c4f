package easewright.editor.paint;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A line as it lies on the screen, in straight steps that are near enough for words that are to keep clear of it. Made
 * anew for every picture and asked about often: it is made of bare numbers.
 */
final class DrawnLine {
    /** A curve is followed in steps of about this many pixels. */
    private static final double STEP = 16;

    private static final int MOST_STEPS = 16;

    /** Places nearer to the last one than this many pixels are left out. */
    private static final double TOO_NEAR = 3;

    private double[] xs = new double[16];
    private double[] ys = new double[16];
    private int count;
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    private DrawnLine() {}

    /** Through these pixels. */
    static DrawnLine through(List<Point> corners) {
        DrawnLine line = new DrawnLine();
        corners.forEach(c -> line.add(c.x(), c.y()));
        return line;
    }

    /** Along joined segments; a stretch that does not begin where the one before it ends makes a line of its own. */
    static List<DrawnLine> along(List<Segment> segments, Viewport view) {
        List<DrawnLine> lines = new ArrayList<>(1);
        DrawnLine line = null;
        Point pen = null;
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            if (pen == null || !pen.equals(segment.start())) {
                line = new DrawnLine();
                lines.add(line);
                line.add(
                        view.screenX(segment.start().x()),
                        view.screenY(segment.start().y()));
            }
            pen = segment.end();
            boolean last =
                    i == segments.size() - 1 || !segments.get(i + 1).start().equals(pen);
            line.follow(segment, view, last);
        }
        return lines;
    }

    private void follow(Segment segment, Viewport view, boolean last) {
        double endX = view.screenX(segment.end().x());
        double endY = view.screenY(segment.end().y());
        if (segment instanceof Cubic cubic) {
            double reach = Math.abs(endX - xs[count - 1])
                    + Math.abs(endY - ys[count - 1])
                    + view.scale() * cubic.control1().distance(cubic.control2());
            int steps = (int) Math.min(MOST_STEPS, Math.ceil(reach / STEP));
            for (int i = 1; i < steps; i++) {
                Point at = segment.at((double) i / steps);
                add(view.screenX(at.x()), view.screenY(at.y()));
            }
        }
        boolean far = Math.abs(endX - xs[count - 1]) + Math.abs(endY - ys[count - 1]) > TOO_NEAR;
        if (far || last) {
            add(endX, endY);
        }
    }

    private void add(double x, double y) {
        if (count == xs.length) {
            xs = Arrays.copyOf(xs, 2 * count);
            ys = Arrays.copyOf(ys, 2 * count);
        }
        xs[count] = x;
        ys[count] = y;
        count++;
        minX = Math.min(minX, x);
        minY = Math.min(minY, y);
        maxX = Math.max(maxX, x);
        maxY = Math.max(maxY, y);
    }

    /** Whether the line crosses or enters a rectangle that is turned about its middle, radians. */
    boolean meets(Point middle, double width, double height, double turn) {
        double reach = turn == 0 ? width / 2 : Math.hypot(width, height) / 2;
        double tall = turn == 0 ? height / 2 : reach;
        if (middle.x() + reach < minX
                || middle.x() - reach > maxX
                || middle.y() + tall < minY
                || middle.y() - tall > maxY) {
            return false;
        }
        double cos = turn == 0 ? 1 : Math.cos(turn);
        double sin = turn == 0 ? 0 : Math.sin(turn);
        double lastX = 0;
        double lastY = 0;
        for (int i = 0; i < count; i++) {
            double dx = xs[i] - middle.x();
            double dy = ys[i] - middle.y();
            double x = dx * cos + dy * sin;
            double y = dy * cos - dx * sin;
            if (i > 0 && enters(lastX, lastY, x, y, width / 2, height / 2)) {
                return true;
            }
            lastX = x;
            lastY = y;
        }
        return false;
    }

    /** Whether a straight step has a part within so far of the origin to the sides, and up and down. */
    private static boolean enters(double x0, double y0, double x1, double y1, double wide, double high) {
        boolean beside = x0 < -wide && x1 < -wide || x0 > wide && x1 > wide;
        boolean over = y0 < -high && y1 < -high || y0 > high && y1 > high;
        if (beside || over) {
            return false;
        }
        boolean inside = Math.abs(x0) <= wide && Math.abs(y0) <= high || Math.abs(x1) <= wide && Math.abs(y1) <= high;
        if (inside) {
            return true;
        }
        // All four corners on one side of the step: it passes by.
        double dx = x1 - x0;
        double dy = y1 - y0;
        double off = x0 * dy - y0 * dx;
        double most = Math.abs(wide * dy) + Math.abs(high * dx);
        return Math.abs(off) <= most;
    }

    /** Whether a pixel lies within the line, taken as closed. */
    boolean surrounds(Point at) {
        boolean inside = false;
        for (int i = 0, j = count - 1; i < count; j = i++) {
            boolean between = ys[i] > at.y() != ys[j] > at.y();
            if (between && at.x() < (xs[j] - xs[i]) * (at.y() - ys[i]) / (ys[j] - ys[i]) + xs[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
