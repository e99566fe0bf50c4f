package easewright.alter;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A displacement of part of an outline along one direction: each moved segment carries the four Bernstein
 * coefficients of its weight, so that a curve displaced by {@code amount · weight} is a curve of the same kind, and
 * the whole is linear in the amount. Because nothing moves square to the direction, the weights read from the
 * displaced outline are the same as from this one, and a change can be taken back exactly.
 */
final class Shift {
    /** Marks farther than this from the outline are not on it, mm. */
    static final double ON_OUTLINE = 0.5;

    /** A mark found beside a fixed point by rounding does not move. */
    private static final double ROUNDING = 1e-9;

    /** A line beside the outline that misses its weight by no more follows it: 0.1 mm of 10. */
    private static final double FOLLOWS = 0.01;

    /** Between places of so short a line that stay, nothing goes, mm. */
    private static final double SHORT = 30;

    /** A line beside the outline is parted into nothing shorter, as a share of its segment. */
    private static final double LEAST_PART = 0.02;

    private final Outline base;
    private final Point direction;
    private final double[][] weights;
    private final Box reach;
    private final Map<Point, Double> beside = new ConcurrentHashMap<>();

    /** Lines beside the outline, and the parts in which they follow it. */
    private final Map<Segment, List<Segment>> parts = new ConcurrentHashMap<>();

    Shift(Outline base, Point direction, double[][] weights) {
        this.base = base;
        this.direction = direction;
        this.weights = weights;
        this.reach = reach(base, weights);
    }

    /** Whether the other one moves the same outline by the same: what was found out for it holds here. */
    boolean isAlike(Shift other) {
        return direction.equals(other.direction)
                && Arrays.deepEquals(weights, other.weights)
                && base.equals(other.base);
    }

    Outline base() {
        return base;
    }

    Outline at(double amount) {
        List<Segment> moved = new ArrayList<>(weights.length);
        for (int i = 0; i < weights.length; i++) {
            Segment segment = base.segments().get(i);
            // Where two meet, one place serves both: outlines are many while a change is tried, and kept to be undone.
            Point start = i > 0 ? moved.get(i - 1).end() : null;
            moved.add(weights[i] == null ? segment : displaced(segment, start, weights[i], amount));
        }
        return new Outline(moved);
    }

    private Segment displaced(Segment segment, double[] w, double amount) {
        return displaced(segment, null, w, amount);
    }

    /**
     * @param from where it starts, if that is known
     */
    private Segment displaced(Segment segment, Point from, double[] w, double amount) {
        Point start = from != null ? from : moved(segment.start(), w[0], amount);
        Point end = moved(segment.end(), w[3], amount);
        if (segment instanceof Cubic c) {
            return new Cubic(start, moved(c.control1(), w[1], amount), moved(c.control2(), w[2], amount), end);
        }
        if (isLinear(w)) {
            return new Line(start, end);
        }
        Point control1 = segment.start().towards(segment.end(), 1 / 3.0);
        Point control2 = segment.start().towards(segment.end(), 2 / 3.0);
        return new Cubic(start, moved(control1, w[1], amount), moved(control2, w[2], amount), end);
    }

    private static boolean isLinear(double[] w) {
        return Math.abs(w[1] - (2 * w[0] + w[3]) / 3) < 1e-12 && Math.abs(w[2] - (w[0] + 2 * w[3]) / 3) < 1e-12;
    }

    private Point moved(Point p, double weight, double amount) {
        return weight == 0 ? p : p.plus(direction.times(amount * weight));
    }

    /** The weight at a place of the base outline. */
    double weight(Place place) {
        double[] w = weights[place.segment()];
        if (w == null) {
            return 0;
        }
        double t = place.t();
        if (t == 0) {
            return w[0];
        }
        return t == 1 ? w[3] : bernstein(w, t);
    }

    private static double bernstein(double[] w, double t) {
        double s = 1 - t;
        return s * s * s * w[0] + 3 * s * s * t * w[1] + 3 * s * t * t * w[2] + t * t * t * w[3];
    }

    /** Where a mark goes: with its place if it lies on the outline, else nowhere. */
    Point carry(Point mark, double amount) {
        Place place = base.nearest(mark).place();
        if (base.point(place).distance(mark) > ON_OUTLINE) {
            return mark;
        }
        double weight = weight(place);
        return Math.abs(weight) < ROUNDING ? mark : moved(mark, weight, amount);
    }

    /**
     * A line drawn beside the outline: it goes with the nearest place, sampled at thirds of each segment. A segment is
     * parted where the outline beside it is, if it could not follow that in one curve.
     */
    List<Segment> carryBeside(Segment segment, double amount) {
        List<Segment> carried = new ArrayList<>();
        for (Segment part : parts.computeIfAbsent(segment, this::parted)) {
            double[] w = weightsBeside(part);
            Point from =
                    carried.isEmpty() ? null : carried.get(carried.size() - 1).end();
            carried.add(isStill(w) ? part : displaced(part, from, w, amount));
        }
        return carried;
    }

    /** The cubic through four samples of the weights beside a segment, in Bernstein form. */
    private double[] weightsBeside(Segment segment) {
        double w0 = weightBeside(segment.start());
        double w1 = weightBeside(segment.at(1 / 3.0));
        double w2 = weightBeside(segment.at(2 / 3.0));
        double w3 = weightBeside(segment.end());
        return new double[] {w0, (-5 * w0 + 18 * w1 - 9 * w2 + 2 * w3) / 6, (2 * w0 - 9 * w1 + 18 * w2 - 5 * w3) / 6, w3
        };
    }

    private List<Segment> parted(Segment segment) {
        if (follows(segment)) {
            return List.of(segment);
        }
        TreeSet<Double> cuts = new TreeSet<>();
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] != null) {
                addCut(segment, base.segments().get(i).start(), cuts);
                addCut(segment, base.segments().get(i).end(), cuts);
            }
        }
        List<Segment> all = new ArrayList<>();
        double from = 0;
        for (double cut : cuts) {
            if (cut - from > LEAST_PART) {
                all.add(segment.between(from, cut));
                from = cut;
            }
        }
        all.add(from == 0 ? segment : segment.between(from, 1));
        return List.copyOf(all);
    }

    /** Where an end of segments of the outline lies beside a line, if it is what lies nearest there. */
    private void addCut(Segment segment, Point node, TreeSet<Double> cuts) {
        double t = segment.nearest(node);
        Point at = segment.at(t);
        boolean beside = at.distance(node) <= 1.2 * base.nearest(at).distance() + ON_OUTLINE;
        if (beside && t > LEAST_PART && t < 1 - LEAST_PART) {
            cuts.add(t);
        }
    }

    private static boolean isStill(double[] w) {
        return w[0] == 0 && w[1] == 0 && w[2] == 0 && w[3] == 0;
    }

    private boolean follows(Segment segment) {
        double[] w = weightsBeside(segment);
        if (isStill(w) && segment.start().distance(segment.end()) < SHORT) {
            return true;
        }
        for (double t : new double[] {1 / 6.0, 0.5, 5 / 6.0}) {
            if (Math.abs(bernstein(w, t) - weightBeside(segment.at(t))) > FOLLOWS) {
                return false;
            }
        }
        return true;
    }

    /** A mark drawn at the outline: each end goes with the place nearest to it, and what lies between in proportion. */
    Segment carryEnds(Segment segment, double amount) {
        double w0 = weightBeside(segment.start());
        double w3 = weightBeside(segment.end());
        if (w0 == 0 && w3 == 0) {
            return segment;
        }
        return displaced(segment, new double[] {w0, (2 * w0 + w3) / 3, (w0 + 2 * w3) / 3, w3}, amount);
    }

    /** The weight at the place of the outline nearest to a point. It is asked for again with every amount tried. */
    private double weightBeside(Point p) {
        return beside.computeIfAbsent(p, this::weightNearest);
    }

    private double weightNearest(Point p) {
        double near = Double.POSITIVE_INFINITY;
        for (Segment segment : base.segments()) {
            near = Math.min(near, segment.start().distance(p));
        }
        // Something of the outline is nearer than all that moves: most places beside it are done with here.
        return reach.distance(p) > near ? 0 : weight(base.nearest(p).place());
    }

    /** Holds all that moves. */
    private static Box reach(Outline base, double[][] weights) {
        Box box = null;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] != null) {
                Box own = base.segments().get(i).box();
                box = box == null ? own : box.union(own);
            }
        }
        return box == null ? base.box() : box;
    }

    /** The stretches that move, each with its displaced self. */
    List<Moved> moved(String pieceId, double amount) {
        return moved(pieceId, at(amount));
    }

    /**
     * The same where the displaced outline is at hand.
     *
     * @param after as {@link #at} makes it
     */
    List<Moved> moved(String pieceId, Outline after) {
        int n = weights.length;
        int first = 0;
        while (first < n && weights[first] != null) {
            first++;
        }
        List<Moved> runs = new ArrayList<>();
        List<Segment> before = new ArrayList<>();
        List<Segment> now = new ArrayList<>();
        for (int k = 0; k <= n; k++) {
            int i = (first + k) % n;
            if (k < n && weights[i] != null) {
                before.add(base.segments().get(i));
                now.add(after.segments().get(i));
            } else if (!before.isEmpty()) {
                runs.add(new Moved(pieceId, new Curve(before), new Curve(now)));
                before = new ArrayList<>();
                now = new ArrayList<>();
            }
        }
        return runs;
    }
}
