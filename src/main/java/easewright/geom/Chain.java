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
        Nearest best = null;
        List<Segment> all = segments();
        for (int i = 0; i < all.size(); i++) {
            Segment segment = all.get(i);
            if (best != null && segment.atLeastFrom(wanted) > best.distance()) {
                continue;
            }
            double t = segment.nearest(wanted);
            Point point = segment.at(t);
            double distance = point.distance(wanted);
            if (best == null || distance < best.distance() || (distance == best.distance() && t == 0)) {
                best = new Nearest(new Place(i, t), point, distance);
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
