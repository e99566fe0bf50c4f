package easewright.geom;

import java.util.List;

/** A straight segment. */
public record Line(Point start, Point end) implements Segment {
    @Override
    public Point at(double t) {
        return start.towards(end, t);
    }

    @Override
    public Point derivative(double t) {
        return end.minus(start);
    }

    @Override
    public Point tangent(double t) {
        return end.minus(start).unit();
    }

    @Override
    public double length() {
        return start.distance(end);
    }

    @Override
    public boolean hasLength() {
        return !start.equals(end);
    }

    @Override
    public List<Segment> parallel(double distance) {
        return distance == 0 ? List.of(this) : List.of(new Line(beside(0, distance), beside(1, distance)));
    }

    @Override
    public double lengthTo(double t) {
        return t * length();
    }

    @Override
    public Segment between(double t0, double t1) {
        return t0 == 0 && t1 == 1 ? this : new Line(at(t0), at(t1));
    }

    @Override
    public Segment reversed() {
        return new Line(end, start);
    }

    @Override
    public Segment transformed(Affine map) {
        return new Line(map.apply(start), map.apply(end));
    }

    @Override
    public double nearest(Point p) {
        Point run = end.minus(start);
        double square = run.dot(run);
        return square == 0 ? 0 : Math.min(1, Math.max(0, p.minus(start).dot(run) / square));
    }

    @Override
    public Box box() {
        return Box.around(List.of(start, end));
    }

    @Override
    public List<Double> crossings(Point through, Point direction) {
        double from = direction.cross(start.minus(through));
        double to = direction.cross(end.minus(through));
        if (from == to) {
            return List.of();
        }
        double t = from / (from - to);
        return t >= 0 && t <= 1 ? List.of(t) : List.of();
    }

    @Override
    public List<Double> passages(Point through, Point direction, boolean onLineIsClockwise) {
        double from = Roots.side(start, through, direction);
        double to = Roots.side(end, through, direction);
        if (Roots.clockwise(from, onLineIsClockwise) == Roots.clockwise(to, onLineIsClockwise)) {
            return List.of();
        }
        return List.of(from / (from - to));
    }

    @Override
    public double atLeastFrom(Point p) {
        return Box.gap(
                p,
                Math.min(start.x(), end.x()),
                Math.min(start.y(), end.y()),
                Math.max(start.x(), end.x()),
                Math.max(start.y(), end.y()));
    }

    @Override
    public double sweptArea(Point from) {
        double x = from.x();
        double y = from.y();
        return ((start.x() - x) * (end.y() - y) - (start.y() - y) * (end.x() - x)) / 2;
    }

    /** Spelt out for a short run, as in {@link Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Line l && start.equals(l.start) && end.equals(l.end);
    }

    @Override
    public int hashCode() {
        return 31 * start.hashCode() + end.hashCode();
    }
}
