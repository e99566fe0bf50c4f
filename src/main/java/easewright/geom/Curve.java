package easewright.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** An open run of segments, each starting exactly where the one before it ends. */
public record Curve(List<Segment> segments) implements Chain {
    /**
     * @throws IllegalArgumentException if there is no segment or a gap between two
     */
    public Curve {
        segments = List.copyOf(segments);
        Chain.requireJoined(segments);
    }

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    public Curve reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            back.add(segment.reversed());
        }
        Collections.reverse(back);
        return new Curve(back);
    }

    public Curve transformed(Affine map) {
        return new Curve(segments.stream().map(s -> s.transformed(map)).toList());
    }

    /** Length along the curve from its start to a place on it, mm. */
    public double lengthTo(Place place) {
        double sum = segments.get(place.segment()).lengthTo(place.t());
        for (int i = 0; i < place.segment(); i++) {
            sum += segments.get(i).length();
        }
        return sum;
    }

    /** The point at a length along the curve from its start (clamped), mm. */
    public Point pointAtLength(double length) {
        double left = length;
        for (Segment segment : segments) {
            double own = segment.length();
            if (left <= own) {
                return segment.at(segment.parameterAtLength(left));
            }
            left -= own;
        }
        return end();
    }

    /** Spelt out for a short run, as in {@link Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Curve c && segments.equals(c.segments);
    }

    @Override
    public int hashCode() {
        return segments.hashCode();
    }
}
