package easewright.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A cubic Bézier curve. Immutable; its length is worked out when first asked for, and kept. */
public final class Cubic implements Segment {
    private static final double UNKNOWN = -1;

    private final Point start;
    private final Point control1;
    private final Point control2;
    private final Point end;

    /** Whoever works it out finds the same, so that nobody has to wait for anybody. */
    private volatile double length = UNKNOWN;

    public Cubic(Point start, Point control1, Point control2, Point end) {
        this.start = Objects.requireNonNull(start);
        this.control1 = Objects.requireNonNull(control1);
        this.control2 = Objects.requireNonNull(control2);
        this.end = Objects.requireNonNull(end);
    }

    @Override
    public Point start() {
        return start;
    }

    public Point control1() {
        return control1;
    }

    public Point control2() {
        return control2;
    }

    @Override
    public Point end() {
        return end;
    }

    /** The cubic with the given ends and derivatives at them. */
    public static Cubic hermite(Point start, Point startDerivative, Point end, Point endDerivative) {
        return new Cubic(
                start, start.plus(startDerivative.times(1 / 3.0)), end.minus(endDerivative.times(1 / 3.0)), end);
    }

    /** The cubic that runs along the quadratic with control place {@code control}. */
    public static Cubic fromQuadratic(Point start, Point control, Point end) {
        return new Cubic(start, start.towards(control, 2 / 3.0), end.towards(control, 2 / 3.0), end);
    }

    @Override
    public Point at(double t) {
        if (t == 0) {
            return start;
        }
        if (t == 1) {
            return end;
        }
        double s = 1 - t;
        double w0 = s * s * s;
        double w1 = 3 * s * s * t;
        double w2 = 3 * s * t * t;
        double w3 = t * t * t;
        return new Point(
                w0 * start.x() + w1 * control1.x() + w2 * control2.x() + w3 * end.x(),
                w0 * start.y() + w1 * control1.y() + w2 * control2.y() + w3 * end.y());
    }

    @Override
    public Point derivative(double t) {
        double s = 1 - t;
        double w0 = 3 * s * s;
        double w1 = 6 * s * t;
        double w2 = 3 * t * t;
        return new Point(
                w0 * (control1.x() - start.x()) + w1 * (control2.x() - control1.x()) + w2 * (end.x() - control2.x()),
                w0 * (control1.y() - start.y()) + w1 * (control2.y() - control1.y()) + w2 * (end.y() - control2.y()));
    }

    @Override
    public Point tangent(double t) {
        Point d = derivative(t);
        double tiny = 1e-9 * (start.distance(control1) + control1.distance(control2) + control2.distance(end));
        if (d.norm() > tiny) {
            return d.unit();
        }
        // A control place on top of an end: the direction is that towards the next place that differs.
        double step = 1e-4;
        Point ahead = t + step <= 1 ? at(t + step).minus(at(t)) : at(t).minus(at(t - step));
        return ahead.unit();
    }

    @Override
    public double length() {
        double known = length;
        if (known == UNKNOWN) {
            known = ArcLength.of(this, 0, 1);
            length = known;
        }
        return known;
    }

    @Override
    public boolean hasLength() {
        return !(start.equals(end) && start.equals(control1) && start.equals(control2));
    }

    @Override
    public List<Segment> parallel(double distance) {
        return distance == 0 ? List.of(this) : Parallel.of(this, distance);
    }

    @Override
    public double lengthTo(double t) {
        return t == 1 ? length() : ArcLength.of(this, 0, t);
    }

    @Override
    public Segment between(double t0, double t1) {
        if (t0 == 0 && t1 == 1) {
            return this;
        }
        Point first = at(t0);
        Point last = at(t1);
        double third = (t1 - t0) / 3;
        return new Cubic(
                first,
                first.plus(derivative(t0).times(third)),
                last.minus(derivative(t1).times(third)),
                last);
    }

    @Override
    public Segment reversed() {
        return new Cubic(end, control2, control1, start);
    }

    @Override
    public Segment transformed(Affine map) {
        return new Cubic(map.apply(start), map.apply(control1), map.apply(control2), map.apply(end));
    }

    @Override
    public double nearest(Point p) {
        if (start.equals(p)) {
            return 0;
        }
        if (end.equals(p)) {
            return 1;
        }
        return new NearestOnCubic(this, p).find();
    }

    /** The second derivative of the place with t, in mm. */
    public Point secondDerivative(double t) {
        Point first = control2.minus(control1.times(2)).plus(start);
        Point second = end.minus(control2.times(2)).plus(control1);
        return first.times(6 * (1 - t)).plus(second.times(6 * t));
    }

    @Override
    public Box box() {
        double minX = Math.min(start.x(), end.x());
        double minY = Math.min(start.y(), end.y());
        double maxX = Math.max(start.x(), end.x());
        double maxY = Math.max(start.y(), end.y());
        Box ends = new Box(minX, minY, maxX, maxY);
        // The curve stays among its defining places, so that mostly its ends say it all.
        if (ends.contains(control1) && ends.contains(control2)) {
            return ends;
        }
        List<Point> places = new ArrayList<>(List.of(start, end));
        for (double t : extremes(start.x(), control1.x(), control2.x(), end.x())) {
            places.add(at(t));
        }
        for (double t : extremes(start.y(), control1.y(), control2.y(), end.y())) {
            places.add(at(t));
        }
        return Box.around(places);
    }

    /** The parameters strictly inside 0…1 at which x or y turns from rising to falling or stands still. */
    public List<Double> turningPoints() {
        List<Double> all = new ArrayList<>(extremes(start.x(), control1.x(), control2.x(), end.x()));
        all.addAll(extremes(start.y(), control1.y(), control2.y(), end.y()));
        return all;
    }

    private static List<Double> extremes(double p0, double p1, double p2, double p3) {
        return Roots.unitQuadratic(3 * (p3 - 3 * p2 + 3 * p1 - p0), 6 * (p2 - 2 * p1 + p0), 3 * (p1 - p0));
    }

    @Override
    public List<Double> crossings(Point through, Point direction) {
        double b0 = direction.cross(start.minus(through));
        double b1 = direction.cross(control1.minus(through));
        double b2 = direction.cross(control2.minus(through));
        double b3 = direction.cross(end.minus(through));
        return Roots.unitBernsteinCubic(b0, b1, b2, b3);
    }

    @Override
    public List<Double> passages(Point through, Point direction, boolean onLineIsClockwise) {
        return Roots.signChanges(
                Roots.side(start, through, direction),
                Roots.side(control1, through, direction),
                Roots.side(control2, through, direction),
                Roots.side(end, through, direction),
                onLineIsClockwise);
    }

    @Override
    public double atLeastFrom(Point p) {
        return Box.gap(
                p,
                Math.min(Math.min(start.x(), control1.x()), Math.min(control2.x(), end.x())),
                Math.min(Math.min(start.y(), control1.y()), Math.min(control2.y(), end.y())),
                Math.max(Math.max(start.x(), control1.x()), Math.max(control2.x(), end.x())),
                Math.max(Math.max(start.y(), control1.y()), Math.max(control2.y(), end.y())));
    }

    /** Exact signed area term: [6 P0×P1 + 3 P0×P2 + P0×P3 + 3 P1×P2 + 3 P1×P3 + 6 P2×P3] / 20. */
    @Override
    public double sweptArea(Point from) {
        double x0 = start.x() - from.x();
        double y0 = start.y() - from.y();
        double x1 = control1.x() - from.x();
        double y1 = control1.y() - from.y();
        double x2 = control2.x() - from.x();
        double y2 = control2.y() - from.y();
        double x3 = end.x() - from.x();
        double y3 = end.y() - from.y();
        return (6 * (x0 * y1 - y0 * x1)
                        + 3 * (x0 * y2 - y0 * x2)
                        + (x0 * y3 - y0 * x3)
                        + 3 * (x1 * y2 - y1 * x2)
                        + 3 * (x1 * y3 - y1 * x3)
                        + 6 * (x2 * y3 - y2 * x3))
                / 20;
    }

    @Override
    public boolean equals(Object other) {
        return other == this
                || (other instanceof Cubic c
                        && start.equals(c.start)
                        && control1.equals(c.control1)
                        && control2.equals(c.control2)
                        && end.equals(c.end));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * start.hashCode() + control1.hashCode()) + control2.hashCode()) + end.hashCode();
    }

    @Override
    public String toString() {
        return "Cubic[" + start + ", " + control1 + ", " + control2 + ", " + end + "]";
    }
}
