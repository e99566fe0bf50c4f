package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;

/** A polygon measured from the upper left corner of its own box, as bare numbers: layouts ask for it a million times. */
final class Footprint {
    private final double[] xs;
    private final double[] ys;
    private final double width;
    private final double height;

    private Footprint(double[] xs, double[] ys, double width, double height) {
        this.xs = xs;
        this.ys = ys;
        this.width = width;
        this.height = height;
    }

    static Footprint of(List<Point> corners) {
        Box box = Box.around(corners);
        return new Footprint(
                corners.stream().mapToDouble(p -> p.x() - box.minX()).toArray(),
                corners.stream().mapToDouble(p -> p.y() - box.minY()).toArray(),
                box.width(),
                box.height());
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** Whether any part of the area, moved by {@code dx} and {@code dy}, lies in the box. */
    boolean touches(double dx, double dy, Box box) {
        double left = box.minX() - dx;
        double right = box.maxX() - dx;
        double top = box.minY() - dy;
        double bottom = box.maxY() - dy;
        if (left > width || right < 0 || top > height || bottom < 0) {
            return false;
        }
        double x = (left + right) / 2;
        double y = (top + bottom) / 2;
        boolean inside = false;
        for (int i = 0, j = xs.length - 1; i < xs.length; j = i++) {
            if (Clip.meets(xs[j], ys[j], xs[i], ys[i], left, top, right, bottom)) {
                return true;
            }
            boolean passes = ys[i] > y != ys[j] > y;
            if (passes && xs[i] + (xs[j] - xs[i]) * (y - ys[i]) / (ys[j] - ys[i]) > x) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Clipping of a stretch to a box, by the shares of it that lie on the right side of each border (Liang-Barsky). */
    private static final class Clip {
        static boolean meets(
                double x0, double y0, double x1, double y1, double left, double top, double right, double bottom) {
            if (Math.max(x0, x1) < left
                    || Math.min(x0, x1) > right
                    || Math.max(y0, y1) < top
                    || Math.min(y0, y1) > bottom) {
                return false;
            }
            double dx = x1 - x0;
            double dy = y1 - y0;
            double from = Math.max(
                    0,
                    Math.max(share(dx > 0 ? left - x0 : right - x0, dx), share(dy > 0 ? top - y0 : bottom - y0, dy)));
            double to = Math.min(
                    1, Math.min(last(dx > 0 ? right - x0 : left - x0, dx), last(dy > 0 ? bottom - y0 : top - y0, dy)));
            return from <= to;
        }

        private static double share(double way, double whole) {
            return whole == 0 ? 0 : way / whole;
        }

        private static double last(double way, double whole) {
            return whole == 0 ? 1 : way / whole;
        }
    }
}
