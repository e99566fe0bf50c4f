package easewright.geom;

import java.util.List;

/** What open curves and closed outlines share: segments joined end to start. */
public sealed interface Chain permits Curve, Outline {
    List<Segment> segments();

    default Point point(Place place) {
        return segments().get(place.segment()).at(place.t());
    }

    /** Length along the chain, mm. */
    default double length() {
        double sum = 0;
        for (Segment segment : segments()) {
            sum += segment.length();
        }
        return sum;
    }

    default Box box() {
        Box box = segments().get(0).box();
        for (Segment segment : segments()) {
            box = box.union(segment.box());
        }
        return box;
    }

    /** The nearest place on the chain; a corner is returned as the start of the segment that leaves it. */
    default Nearest nearest(Point wanted) {
        List<Segment> all = segments();
        // The nearest start first: marks mostly lie on one, and its distance rules out nearly all segments.
        int first = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < all.size() && least > 0; i++) {
            Point start = all.get(i).start();
            double dx = start.x() - wanted.x();
            double dy = start.y() - wanted.y();
            double square = dx * dx + dy * dy;
            if (square < least) {
                least = square;
                first = i;
            }
        }
        Point corner = all.get(first).start();
        Nearest best = new Nearest(new Place(first, 0), corner, corner.distance(wanted));
        for (int i = 0; i < all.size() && best.distance() > 0; i++) {
            Segment segment = all.get(i);
            if (segment.atLeastFrom(wanted) < best.distance()) {
                double t = segment.nearest(wanted);
                Point point = segment.at(t);
                double away = point.distance(wanted);
                if (away < best.distance()) {
                    best = new Nearest(new Place(i, t), point, away);
                }
            }
        }
        return best;
    }

    /** Checks that the segments join without a gap. */
    static void requireJoined(List<Segment> segments) {
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("A curve needs at least one segment");
        }
        for (int i = 1; i < segments.size(); i++) {
            if (!segments.get(i - 1).end().equals(segments.get(i).start())) {
                throw new IllegalArgumentException("Segment " + i + " does not start where the one before it ends");
            }
        }
    }
}
