package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A shape as the squares of a grid that it touches, with half the gap to its neighbours all round: row by row, the
 * runs of squares from first to last. Two stencils that share no square lie at least the gap apart.
 */
final class Stencil {
    private final int[][] rows;
    private final int columns;

    private Stencil(int[][] rows, int columns) {
        this.rows = rows;
        this.columns = columns;
    }

    static Stencil of(List<Point> corners, double cell, double gap) {
        Box box = Box.around(corners).grown(gap / 2);
        int height = cells(box.height(), cell);
        int width = cells(box.width(), cell);
        int[][] rows = new int[height][];
        for (int i = 0; i < height; i++) {
            BitSet touched = new BitSet(width);
            double top = box.minY() + i * cell;
            mark(touched, corners, box.minX(), cell, gap / 2, top, top + cell);
            rows[i] = runs(touched, width);
        }
        return new Stencil(rows, width);
    }

    static int cells(double length, double cell) {
        return (int) Math.ceil(length / cell - 1e-9);
    }

    private static void mark(
            BitSet touched, List<Point> corners, double left, double cell, double grown, double top, double bottom) {
        double from = top - grown;
        double to = bottom + grown;
        List<Double> middles = new ArrayList<>();
        double middle = (top + bottom) / 2;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double low = Math.max(from, Math.min(a.y(), b.y()));
            double high = Math.min(to, Math.max(a.y(), b.y()));
            if (low <= high) {
                double x0 = at(a, b, low, a.x());
                double x1 = at(a, b, high, b.x());
                double least = a.y() == b.y() ? Math.min(a.x(), b.x()) : Math.min(x0, x1);
                double most = a.y() == b.y() ? Math.max(a.x(), b.x()) : Math.max(x0, x1);
                set(touched, least - grown - left, most + grown - left, cell);
            }
            if (a.y() > middle != b.y() > middle) {
                middles.add(at(a, b, middle, a.x()));
            }
        }
        middles.sort(null);
        for (int i = 0; i + 1 < middles.size(); i += 2) {
            set(touched, middles.get(i) - left, middles.get(i + 1) - left, cell);
        }
    }

    private static double at(Point a, Point b, double y, double level) {
        return a.y() == b.y() ? level : a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
    }

    private static void set(BitSet touched, double from, double to, double cell) {
        int first = Math.max(0, (int) Math.floor(from / cell + 1e-9));
        touched.set(first, Math.max(first + 1, cells(to, cell)));
    }

    private static int[] runs(BitSet touched, int width) {
        List<Integer> ends = new ArrayList<>();
        for (int from = touched.nextSetBit(0); from >= 0 && from < width; ) {
            int end = Math.min(width, touched.nextClearBit(from));
            ends.add(from);
            ends.add(end - 1);
            from = touched.nextSetBit(end);
        }
        return ends.stream().mapToInt(Integer::intValue).toArray();
    }

    int columns() {
        return columns;
    }

    int height() {
        return rows.length;
    }

    /** First and last square of each run of a row, one after the other. */
    int[] row(int i) {
        return rows[i];
    }
}
