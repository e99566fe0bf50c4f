package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Hold;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** The run of an edge on its piece's outline, and the stops on it at which a change may end. */
final class EdgeRun {
    /** A mark this close to an end of segments means that end: coordinates are rounded on the way, mm. */
    private static final double ROUNDING = 0.05;

    private final Piece piece;
    private final Edge edge;
    private final Outline outline;
    private final double from;
    private final double extent;

    EdgeRun(Piece piece, Edge edge) {
        this.piece = piece;
        this.edge = edge;
        this.outline = piece.outline();
        this.from = key(place(edge.from()));
        double to = beyond(key(place(edge.to())));
        this.extent = to == 0 ? outline.segments().size() : to;
    }

    Edge edge() {
        return edge;
    }

    Point start() {
        return outline.point(place(edge.from()));
    }

    Point end() {
        return outline.point(place(edge.to()));
    }

    private Place place(Point mark) {
        Place near = outline.nearest(mark).place();
        Segment segment = outline.segments().get(near.segment());
        Point exact = segment.at(near.t());
        if (segment.start().distance(exact) <= ROUNDING) {
            return new Place(near.segment(), 0);
        }
        return segment.end().distance(exact) <= ROUNDING
                ? new Place((near.segment() + 1) % outline.segments().size(), 0)
                : near;
    }

    /** Whether a place of the outline lies on the edge, ends included. */
    boolean holds(Place place) {
        double at = beyond(key(place));
        return at <= extent;
    }

    /** Whether a mark lies on the edge; ends included. */
    boolean holds(Point mark) {
        return outline.nearest(mark).distance() <= Shift.ON_OUTLINE && holds(place(mark));
    }

    /** The first of the stops met from a place of the edge, going with or against the drawn direction. */
    Optional<Hold> stop(Hold from, boolean forward, List<SewnPiece.Mark> stops) {
        double here = position(from.across(forward), !forward);
        double least = Double.POSITIVE_INFINITY;
        Hold best = null;
        for (SewnPiece.Mark mark : stops) {
            Hold stop = mark.hold();
            Point near = stop.across(!forward);
            if (!holds(mark.drawn()) || !holds(near) || stop.sewn().distance(from.sewn()) <= Shift.ON_OUTLINE) {
                continue;
            }
            double way = (position(near, forward) - here) * (forward ? 1 : -1);
            if (way > 0 && way < least) {
                best = stop;
                least = way;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The dart whose mouth lies between two places of the edge, if there is one. */
    Optional<Dart> dartBetween(Point one, Point two, List<SewnPiece.Mouth> mouths) {
        double low = Math.min(position(one, false), position(two, true));
        double high = Math.max(position(one, false), position(two, true));
        for (SewnPiece.Mouth mouth : mouths) {
            if (!holds(mouth.one().before()) || !holds(mouth.two().after())) {
                continue;
            }
            double a = position(mouth.one().before(), false);
            double b = position(mouth.two().after(), false);
            if (Math.min(a, b) < high - 1e-9 && Math.max(a, b) > low + 1e-9) {
                return Optional.of(mouth.dart());
            }
        }
        return Optional.empty();
    }

    /** Place along the edge in segments from its start; on a closed edge the start may also be meant as its end. */
    private double position(Point p, boolean lastIfBoth) {
        double at = beyond(key(place(p)));
        return at == 0 && lastIfBoth && extent == outline.segments().size() ? extent : at;
    }

    private double beyond(double key) {
        double n = outline.segments().size();
        double d = (key - from) % n;
        return d < 0 ? d + n : d;
    }

    private double key(Place place) {
        return place.segment() + place.t();
    }
}
