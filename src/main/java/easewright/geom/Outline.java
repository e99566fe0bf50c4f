package easewright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A closed outline in the direction in which it was drawn. The last segment ends exactly where the first starts.
 * Segments that a change leaves alone stay the same objects.
 */
public record Outline(List<Segment> segments) implements Chain {
    /**
     * @throws IllegalArgumentException if there is no segment, a gap between two, or the ends do not meet
     */
    public Outline {
        segments = List.copyOf(segments);
        Chain.requireJoined(segments);
        if (!segments.get(segments.size() - 1).end().equals(segments.get(0).start())) {
            throw new IllegalArgumentException("The outline does not close");
        }
    }

    /** A closed outline of straight lines through the corners. */
    public static Outline polygon(List<Point> corners) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            lines.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return new Outline(lines);
    }

    /** Exact area with a sign: positive where the outline runs clockwise on screen, mm². */
    public double signedArea() {
        // Measured from a corner, not from the far origin, to keep the digits.
        Affine home = Affine.translation(Point.ORIGIN.minus(segments.get(0).start()));
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.transformed(home).sweptArea();
        }
        return sum;
    }

    public Outline transformed(Affine map) {
        return new Outline(segments.stream().map(s -> s.transformed(map)).toList());
    }

    public Outline reversed() {
        return new Outline(new Curve(segments).reversed().segments());
    }

    /** The run from one place to another in the drawn direction; the whole outline if they are the same place. */
    public Curve run(Place from, Place to) {
        Place first = from.t() == 1 ? new Place((from.segment() + 1) % segments.size(), 0) : from;
        Place last = to.t() == 0 ? new Place((to.segment() + segments.size() - 1) % segments.size(), 1) : to;
        List<Segment> parts = new ArrayList<>();
        if (first.segment() == last.segment() && first.t() < last.t()) {
            parts.add(segments.get(first.segment()).between(first.t(), last.t()));
            return new Curve(parts);
        }
        int i = first.segment();
        parts.add(segments.get(i).between(first.t(), 1));
        for (i = (i + 1) % segments.size(); i != last.segment(); i = (i + 1) % segments.size()) {
            parts.add(segments.get(i));
        }
        parts.add(segments.get(i).between(0, last.t()));
        return new Curve(parts);
    }

    /** The same outline with the place made an end of segments; this very object where it is one already. */
    public Outline splitAt(Place place) {
        if (place.t() == 0 || place.t() == 1) {
            return this;
        }
        List<Segment> parts = new ArrayList<>(segments);
        Segment whole = parts.remove(place.segment());
        parts.add(place.segment(), whole.between(0, place.t()));
        parts.add(place.segment() + 1, whole.between(place.t(), 1));
        return new Outline(parts);
    }

    /**
     * All meetings with the endless line through {@code through} along {@code direction}, in order along it; a
     * corner on the line counts once. {@code along} is measured from {@code through}.
     */
    public List<Crossing> crossings(Point through, Point direction) {
        Point unit = direction.unit();
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            for (double t : segments.get(i).crossings(through, unit)) {
                Point p = segments.get(i).at(t);
                found.add(new Crossing(new Place(i, t), p, p.minus(through).dot(unit)));
            }
        }
        found.sort(Comparator.comparingDouble(Crossing::along));
        List<Crossing> distinct = new ArrayList<>();
        for (Crossing crossing : found) {
            boolean repeats = !distinct.isEmpty()
                    && distinct.get(distinct.size() - 1).point().distance(crossing.point()) < 1e-9;
            if (!repeats) {
                distinct.add(crossing);
            }
        }
        return List.copyOf(distinct);
    }

    /** Whether the point lies inside (even–odd rule); points within 1e-9 mm of the outline may fall either way. */
    public boolean contains(Point p) {
        Point across = new Point(1, 0);
        boolean inside = false;
        for (Segment segment : segments) {
            for (double t : segment.passages(p, across, true)) {
                if (segment.at(t).x() > p.x()) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }
}
