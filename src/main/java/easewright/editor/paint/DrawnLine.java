package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A line as it lies on the screen, in straight steps that are near enough for words that are to keep clear of it. Made
 * for many lines in a picture and asked about often: it is made of bare numbers. Once made it stays as it is.
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
    /** What every so many steps reach to the left, up, to the right and down: most of a long line is far from a word. */
    private static final int STRETCH = 16;

    private double[] reaches = new double[4];
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    /** So much farther to every side it keeps words off: half of how thick it is drawn, pixels. */
    private final double around;

    private DrawnLine(double around) {
        this.around = around;
    }

    /** Through these pixels. */
    static DrawnLine through(List<Point> corners) {
        DrawnLine line = new DrawnLine(0);
        corners.forEach(c -> line.add(c.x(), c.y()));
        return line;
    }

    /** Along joined segments; a stretch that does not begin where the one before it ends makes a line of its own. */
    static List<DrawnLine> along(List<Segment> segments, Viewport view) {
        return along(segments, view, 0);
    }

    /**
     * The same of a thick line.
     *
     * @param around from its middle to its rim, pixels
     */
    static List<DrawnLine> along(List<Segment> segments, Viewport view, double around) {
        List<DrawnLine> lines = new ArrayList<>(1);
        DrawnLine line = null;
        Point pen = null;
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            if (pen == null || !ScreenPath.isAt(pen, segment.start())) {
                line = new DrawnLine(around);
                lines.add(line);
                line.add(
                        view.screenX(segment.start().x()),
                        view.screenY(segment.start().y()));
            }
            pen = segment.end();
            boolean last = i == segments.size() - 1
                    || !ScreenPath.isAt(pen, segments.get(i + 1).start());
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
        if (count > 0) {
            reach((count - 1) / STRETCH, (count - 1) % STRETCH == 0);
        }
        count++;
        minX = Math.min(minX, x - around);
        minY = Math.min(minY, y - around);
        maxX = Math.max(maxX, x + around);
        maxY = Math.max(maxY, y + around);
    }

    /** Notes in its stretch the step that ends at the last place. */
    private void reach(int stretch, boolean first) {
        int at = 4 * stretch;
        if (at == reaches.length) {
            reaches = Arrays.copyOf(reaches, 2 * at);
        }
        double left = Math.min(xs[count - 1], xs[count]) - around;
        double top = Math.min(ys[count - 1], ys[count]) - around;
        double right = Math.max(xs[count - 1], xs[count]) + around;
        double bottom = Math.max(ys[count - 1], ys[count]) + around;
        reaches[at] = first ? left : Math.min(reaches[at], left);
        reaches[at + 1] = first ? top : Math.min(reaches[at + 1], top);
        reaches[at + 2] = first ? right : Math.max(reaches[at + 2], right);
        reaches[at + 3] = first ? bottom : Math.max(reaches[at + 3], bottom);
    }

    /** Around it. */
    Box box() {
        return new Box(minX, minY, maxX, maxY);
    }

    /** Whether a part of the line may lie in a box. */
    boolean comesInto(Box box) {
        return minX <= box.maxX() && maxX >= box.minX() && minY <= box.maxY() && maxY >= box.minY();
    }

    /**
     * A rectangle that may be turned.
     *
     * @param wide  from its middle along it, pixels
     * @param high  from its middle across it
     * @param reach how far it reaches from its middle to the sides at most
     * @param tall  the same up and down
     */
    record Place(double x, double y, double wide, double high, double reach, double tall, double cos, double sin) {
        /**
         * @param turn about its middle, radians
         */
        static Place of(Point middle, double width, double height, double turn) {
            double wide = width / 2;
            double high = height / 2;
            if (turn == 0) {
                return new Place(middle.x(), middle.y(), wide, high, wide, high, 1, 0);
            }
            double reach = Math.sqrt(width * width + height * height) / 2;
            return new Place(middle.x(), middle.y(), wide, high, reach, reach, Math.cos(turn), Math.sin(turn));
        }
    }

    /** Whether the line crosses or enters a rectangle that is turned about its middle, radians. */
    boolean meets(Point middle, double width, double height, double turn) {
        return meets(Place.of(middle, width, height, turn));
    }

    /** The same of a rectangle that several lines are asked about. */
    boolean meets(Place place) {
        if (place.x + place.reach < minX
                || place.x - place.reach > maxX
                || place.y + place.tall < minY
                || place.y - place.tall > maxY) {
            return false;
        }
        for (int stretch = 0; stretch < stretches(); stretch++) {
            if (meets(stretch, place)) {
                return true;
            }
        }
        return false;
    }

    /** Into how many stretches it is parted. */
    int stretches() {
        return (count - 1 + STRETCH - 1) / STRETCH;
    }

    double left(int stretch) {
        return reaches[4 * stretch];
    }

    double top(int stretch) {
        return reaches[4 * stretch + 1];
    }

    double right(int stretch) {
        return reaches[4 * stretch + 2];
    }

    double bottom(int stretch) {
        return reaches[4 * stretch + 3];
    }

    /** Whether one of the steps of a stretch does so. */
    boolean meets(int stretch, Place place) {
        if (place.x + place.reach < left(stretch)
                || place.x - place.reach > right(stretch)
                || place.y + place.tall < top(stretch)
                || place.y - place.tall > bottom(stretch)) {
            return false;
        }
        double lastX = 0;
        double lastY = 0;
        int from = stretch * STRETCH;
        for (int i = from; i < Math.min(count, from + STRETCH + 1); i++) {
            double dx = xs[i] - place.x;
            double dy = ys[i] - place.y;
            double x = dx * place.cos + dy * place.sin;
            double y = dy * place.cos - dx * place.sin;
            if (i > from && enters(lastX, lastY, x, y, place.wide + around, place.high + around)) {
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
        boolean inside = passes(at, count - 1, 0);
        for (int from = 0, k = 0; from < count - 1; from += STRETCH, k += 4) {
            if (at.x() <= reaches[k + 2] && at.y() >= reaches[k + 1] && at.y() <= reaches[k + 3]) {
                for (int i = from + 1; i <= Math.min(count - 1, from + STRETCH); i++) {
                    inside ^= passes(at, i - 1, i);
                }
            }
        }
        return inside;
    }

    /** Whether the step between two places passes a pixel on its right. */
    private boolean passes(Point at, int j, int i) {
        boolean between = ys[i] > at.y() != ys[j] > at.y();
        return between && at.x() < (xs[j] - xs[i]) * (at.y() - ys[i]) / (ys[j] - ys[i]) + xs[i];
    }
}
