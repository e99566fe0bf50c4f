package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
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
        Place near = Nodes.place(outline, mark);
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

    /** Notches and dart mouths on the edge: where a change ends unless the user says otherwise. */
    List<Point> marks() {
        List<Point> marks = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            marks.add(notch.at());
        }
        for (Dart dart : piece.darts()) {
            marks.add(dart.mouth1());
            marks.add(dart.mouth2());
        }
        marks.removeIf(m -> !holds(m));
        return marks;
    }

    /** The first of the stops met from a point of the edge, going with or against the drawn direction. */
    Optional<Point> stop(Point from, boolean forward, List<Point> stops) {
        double here = position(from, !forward);
        double least = Double.POSITIVE_INFINITY;
        Point best = null;
        for (Point stop : stops) {
            if (!holds(stop) || stop.distance(from) <= Shift.ON_OUTLINE) {
                continue;
            }
            double way = (position(stop, forward) - here) * (forward ? 1 : -1);
            if (way > 0 && way < least) {
                best = outline.point(place(stop));
                least = way;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Darts cut out of the outline, or only drawn, whose mouth lies between two points of the edge. */
    Optional<Dart> dartBetween(Point one, Point two) {
        double low = Math.min(position(one, false), position(two, true));
        double high = Math.max(position(one, false), position(two, true));
        for (Dart dart : piece.darts()) {
            if (!holds(dart.mouth1()) || !holds(dart.mouth2())) {
                continue;
            }
            double a = position(dart.mouth1(), false);
            double b = position(dart.mouth2(), false);
            if (Math.min(a, b) < high - 1e-9 && Math.max(a, b) > low + 1e-9) {
                return Optional.of(dart);
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
