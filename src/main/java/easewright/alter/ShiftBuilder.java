package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;

/**
 * Lays weights on runs of an outline. First every place at which a run ends is {@linkplain #split made a node}, then
 * the runs are given their weights; a run may be given weights once. Not thread-safe.
 */
final class ShiftBuilder {
    /**
     * A place this close to a node is that node, found again after rounding, mm: a change taken back must use the nodes
     * that it made, and a shorter segment than this would be no use to anyone.
     */
    private static final double SAME_NODE = 0.01;

    /** A run that extends less than this square to the level has no room to taper, mm. */
    private static final double NO_EXTENT = 0.5;

    private final Outline whole;
    private Outline outline;
    private final Point along;
    private final Point square;
    private double[][] weights;

    /**
     * @param along unit direction of the displacement
     */
    ShiftBuilder(Outline outline, Point along) {
        this.whole = outline;
        this.outline = outline;
        this.along = along;
        this.square = along.quarterTurned();
    }

    /** Makes the place of the outline nearest to {@code p} the end of segments and returns it exactly. */
    Point split(Point p) {
        Place place = nearest(p).place();
        Point exact = outline.point(place);
        Segment segment = outline.segments().get(place.segment());
        if (segment.start().distance(exact) <= SAME_NODE) {
            return segment.start();
        }
        if (segment.end().distance(exact) <= SAME_NODE) {
            return segment.end();
        }
        outline = outline.splitAt(place);
        return exact;
    }

    /** An outline between two splits is asked once: what makes a search quick would take longer to make. */
    private Nearest nearest(Point p) {
        return outline == whole ? outline.nearest(p) : new Curve(outline.segments()).nearest(p);
    }

    /** How far the run extends square to the displacement: what its taper is spread over, mm. */
    double extent(Point from, Point to) {
        int end = node(to);
        int i = node(from);
        double sum = 0;
        do {
            sum += Math.abs(rise(i));
            i = next(i);
        } while (i != end);
        return sum;
    }

    /** Weights that run from one value to another along the run from one node to another, in drawn direction. */
    void taper(Point from, Point to, double first, double last, Taper how) throws Refusal {
        double whole = extent(from, to);
        if (whole < NO_EXTENT) {
            throw Refusal.of("no-room-to-taper");
        }
        int end = node(to);
        double done = 0;
        int i = node(from);
        do {
            double rise = rise(i);
            double before = done / whole;
            done += Math.abs(rise);
            double after = next(i) == end ? 1 : done / whole;
            lay(i, how == Taper.STRAIGHT ? shear(i, before, after) : smooth(i, before, after, whole), first, last);
            i = next(i);
        } while (i != end);
    }

    /**
     * Weights along a run by the cubic that has the given values at its ends and the given slopes there, the slopes
     * counted over the whole extent of the run.
     */
    void cubic(Point from, Point to, double first, double slopeFirst, double last, double slopeLast) throws Refusal {
        double whole = extent(from, to);
        if (whole < NO_EXTENT) {
            throw Refusal.of("no-room-to-taper");
        }
        double square = 3 * (last - first) - 2 * slopeFirst - slopeLast;
        double third = 2 * (first - last) + slopeFirst + slopeLast;
        int end = node(to);
        double done = 0;
        int i = node(from);
        do {
            double before = done / whole;
            done += Math.abs(rise(i));
            double after = next(i) == end ? 1 : done / whole;
            Point[] c = controls(outline.segments().get(i));
            double sign = Math.signum(square(c[3].minus(c[0])));
            double in = slopeFirst + before * (2 * square + before * 3 * third);
            double out = slopeFirst + after * (2 * square + after * 3 * third);
            double start = first + before * (slopeFirst + before * (square + before * third));
            double stop = next(i) == end ? last : first + after * (slopeFirst + after * (square + after * third));
            double[] w = {
                start,
                start + in * sign * square(c[1].minus(c[0])) / whole,
                stop - out * sign * square(c[3].minus(c[2])) / whole,
                stop
            };
            lay(i, w, 0, 1);
            i = next(i);
        } while (i != end);
    }

    private double square(Point p) {
        return square.dot(p);
    }

    /** Weights even in the parameter of each segment, from one value to another in proportion to its chord. */
    void even(Point from, Point to, double first, double last) throws Refusal {
        if (from.equals(to)) {
            return;
        }
        int end = node(to);
        double whole = 0;
        int i = node(from);
        do {
            whole += chord(i);
            i = next(i);
        } while (i != end);
        double done = 0;
        i = node(from);
        do {
            double before = first + (last - first) * done / whole;
            done += chord(i);
            // To the last bit: the next segment starts just there.
            double after = next(i) == end ? last : first + (last - first) * done / whole;
            lay(i, new double[] {before, (2 * before + after) / 3, (before + 2 * after) / 3, after}, 0, 1);
            i = next(i);
        } while (i != end);
    }

    private double chord(int i) {
        Segment s = outline.segments().get(i);
        return s.start().distance(s.end());
    }

    /** Weight 1 over the whole run, if it is more than one node. */
    void rigid(Point from, Point to) throws Refusal {
        if (from.equals(to)) {
            return;
        }
        int end = node(to);
        int i = node(from);
        do {
            lay(i, new double[] {1, 1, 1, 1}, 0, 1);
            i = next(i);
        } while (i != end);
    }

    /** Weights in proportion to the position along the displacement, from one value to another. */
    void stretch(Point from, Point to, double first, double last) throws Refusal {
        double start = along.dot(from);
        double length = along.dot(to) - start;
        if (Math.abs(length) < NO_EXTENT) {
            throw Refusal.of("no-room-to-stretch");
        }
        int end = node(to);
        int i = node(from);
        do {
            Point[] c = controls(outline.segments().get(i));
            double[] w = new double[4];
            for (int k = 0; k < 4; k++) {
                w[k] = (along.dot(c[k]) - start) / length;
            }
            lay(i, w, first, last);
            i = next(i);
        } while (i != end);
    }

    Shift build() {
        return new Shift(
                outline, along, weights == null ? new double[outline.segments().size()][] : weights);
    }

    private void lay(int segment, double[] fractions, double first, double last) throws Refusal {
        if (weights == null) {
            weights = new double[outline.segments().size()][];
        }
        if (weights[segment] != null) {
            throw Refusal.of("runs-overlap");
        }
        double[] w = new double[4];
        boolean moves = false;
        for (int k = 0; k < 4; k++) {
            w[k] = fractions[k] == 1 ? last : first + (last - first) * fractions[k];
            moves |= w[k] != 0;
        }
        weights[segment] = moves ? w : null;
    }

    /** Linear in the extent: an exact shear of the curve where it rises all the way, else even in its parameter. */
    private double[] shear(int i, double before, double after) {
        Point[] c = controls(outline.segments().get(i));
        double start = square.dot(c[0]);
        double rise = square.dot(c[3]) - start;
        double[] w = {before, before + (after - before) / 3, before + (after - before) * 2 / 3, after};
        if (risesThroughout(c)) {
            w[1] = before + (after - before) * (square.dot(c[1]) - start) / rise;
            w[2] = before + (after - before) * (square.dot(c[2]) - start) / rise;
        }
        return w;
    }

    private boolean risesThroughout(Point[] c) {
        double rise = square.dot(c[3].minus(c[0]));
        double slack = -1e-9 * (c[0].distance(c[1]) + c[1].distance(c[2]) + c[2].distance(c[3]));
        double sign = Math.signum(rise);
        return Math.abs(rise) > 1e-6
                && sign * square.dot(c[1].minus(c[0])) >= slack
                && sign * square.dot(c[2].minus(c[1])) >= slack
                && sign * square.dot(c[3].minus(c[2])) >= slack;
    }

    /** The Hermite cubic in the segment's own parameter that has the values and slopes of 3τ² − 2τ³ at its ends. */
    private double[] smooth(int i, double before, double after, double whole) {
        Point[] c = controls(outline.segments().get(i));
        double sign = Math.signum(square.dot(c[3].minus(c[0])));
        double first = ease(before);
        double last = ease(after);
        double slopeIn = 6 * before * (1 - before) * sign * square.dot(c[1].minus(c[0])) / whole;
        double slopeOut = 6 * after * (1 - after) * sign * square.dot(c[3].minus(c[2])) / whole;
        return new double[] {first, first + slopeIn, last - slopeOut, last};
    }

    private static double ease(double t) {
        return t == 1 ? 1 : t * t * (3 - 2 * t);
    }

    private double rise(int i) {
        Segment s = outline.segments().get(i);
        return square.dot(s.end().minus(s.start()));
    }

    private int next(int i) {
        return (i + 1) % outline.segments().size();
    }

    private int node(Point p) {
        List<Segment> all = outline.segments();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).start().equals(p)) {
                return i;
            }
        }
        throw new IllegalArgumentException("Not a node of the outline: " + p);
    }

    /** The four Bernstein places of a segment; a line's lie at its thirds. */
    private static Point[] controls(Segment s) {
        if (s instanceof Cubic c) {
            return new Point[] {c.start(), c.control1(), c.control2(), c.end()};
        }
        return new Point[] {
            s.start(), s.start().towards(s.end(), 1 / 3.0), s.start().towards(s.end(), 2 / 3.0), s.end()
        };
    }
}
