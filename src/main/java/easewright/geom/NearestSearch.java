package easewright.geom;

import java.util.List;

/** One search for the place of a chain that lies nearest to a point. */
final class NearestSearch {
    private final List<Segment> segments;
    private final BoxTree tree;
    private final Point wanted;
    private final double x;
    private final double y;

    private int corner;
    private double cornerSquare = Double.POSITIVE_INFINITY;
    private Nearest best;

    NearestSearch(List<Segment> segments, BoxTree tree, Point wanted) {
        this.segments = segments;
        this.tree = tree;
        this.wanted = wanted;
        this.x = wanted.x();
        this.y = wanted.y();
    }

    /** The boxes around the defining places of each segment. */
    static BoxTree tree(List<Segment> segments) {
        double[] edges = new double[4 * segments.size()];
        int at = 0;
        for (Segment segment : segments) {
            Point a = segment.start();
            Point d = segment.end();
            Point b = segment instanceof Cubic c ? c.control1() : a;
            Point c = segment instanceof Cubic cubic ? cubic.control2() : d;
            edges[at++] = Math.min(Math.min(a.x(), b.x()), Math.min(c.x(), d.x()));
            edges[at++] = Math.min(Math.min(a.y(), b.y()), Math.min(c.y(), d.y()));
            edges[at++] = Math.max(Math.max(a.x(), b.x()), Math.max(c.x(), d.x()));
            edges[at++] = Math.max(Math.max(a.y(), b.y()), Math.max(c.y(), d.y()));
        }
        return new BoxTree(edges);
    }

    /** The nearest corner first: marks mostly lie on one, and its distance rules out nearly all segments. */
    Nearest find() {
        int guess = 0;
        for (int level = tree.depth() - 1; level > 0; level--) {
            guess = nearestBelow(level, guess);
        }
        tryCorner(guess);
        corners(tree.depth() - 1, 0);
        Point start = segments.get(corner).start();
        best = new Nearest(new Place(corner, 0), start, start.distance(wanted));
        between(tree.depth() - 1, 0);
        return best;
    }

    /** Whether any place lies no farther away. */
    boolean comesWithin(double distance) {
        return comesWithin(tree.depth() - 1, 0, distance);
    }

    private boolean comesWithin(int level, int index, double distance) {
        if (tree.squareGap(level, index, x, y) > distance * distance) {
            return false;
        }
        if (level == 0) {
            return comesWithin(segments.get(index), wanted, distance);
        }
        int end = tree.end(level, index);
        for (int i = BoxTree.begin(index); i < end; i++) {
            if (comesWithin(level - 1, i, distance)) {
                return true;
            }
        }
        return false;
    }

    static boolean comesWithin(Segment segment, Point wanted, double distance) {
        return segment instanceof Cubic cubic
                ? CubicReach.comesWithin(cubic, wanted, distance)
                : segment.at(segment.nearest(wanted)).distance(wanted) <= distance;
    }

    private int nearestBelow(int level, int index) {
        int nearest = BoxTree.begin(index);
        double least = Double.POSITIVE_INFINITY;
        int end = tree.end(level, index);
        for (int i = BoxTree.begin(index); i < end; i++) {
            double gap = tree.squareGap(level - 1, i, x, y);
            if (gap < least) {
                least = gap;
                nearest = i;
            }
        }
        return nearest;
    }

    private void corners(int level, int index) {
        if (tree.squareGap(level, index, x, y) > cornerSquare) {
            return;
        }
        if (level == 0) {
            tryCorner(index);
            return;
        }
        int end = tree.end(level, index);
        for (int i = BoxTree.begin(index); i < end; i++) {
            corners(level - 1, i);
        }
    }

    /** Of corners equally near the first is meant. */
    private void tryCorner(int i) {
        Point start = segments.get(i).start();
        double dx = start.x() - x;
        double dy = start.y() - y;
        double square = dx * dx + dy * dy;
        if (square < cornerSquare || (square == cornerSquare && i < corner)) {
            cornerSquare = square;
            corner = i;
        }
    }

    private void between(int level, int index) {
        if (Math.sqrt(tree.squareGap(level, index, x, y)) >= best.distance()) {
            return;
        }
        if (level == 0) {
            Segment segment = segments.get(index);
            double t = segment.nearest(wanted);
            Point point = segment.at(t);
            double away = point.distance(wanted);
            if (away < best.distance()) {
                best = new Nearest(new Place(index, t), point, away);
            }
            return;
        }
        int end = tree.end(level, index);
        for (int i = BoxTree.begin(index); i < end; i++) {
            between(level - 1, i);
        }
    }
}
