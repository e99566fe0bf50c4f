package easewright.alter;

import easewright.geom.Crossing;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** Finds where slashes meet the outline, and says whether they may. */
final class SlashPlaces {
    /** A place named by the user must lie this close to the outline, mm. */
    private static final double REACH = 5;

    private static final double AT_END = 1e-6;

    /** Outside a hinge on the stitching line the cutting line's corner lies no farther than this from where it was, mm. */
    private static final double CORNER_NEAR = 2.5;

    /**
     * A corner this close to a line lies on it, mm: what was moved and moved back. A file keeps six decimals of its unit,
     * which may be the centimetre.
     */
    static final double ON_LINE = 1e-5;

    private SlashPlaces() {}

    static Place onOutline(Piece piece, Point p) throws Refusal {
        Nearest nearest = piece.outline().nearest(p);
        if (nearest.distance() > REACH) {
            throw Refusal.of("slash-off-outline").with("piece", piece.name());
        }
        return atNode(piece.outline(), nearest.place());
    }

    /**
     * The place of a hinge. On a cutting line it is the corner there, if there is one: that is where a slash that was
     * opened before has its hinge now.
     */
    static Place hinge(Piece piece, Point p) throws Refusal {
        Place place = onOutline(piece, p);
        Place best = place;
        double least = piece.drawn() == LineKind.CUTTING ? CORNER_NEAR : 0;
        List<Segment> all = piece.outline().segments();
        for (int i = 0; i < all.size(); i++) {
            double away = all.get(i).start().distance(p);
            if (away < least) {
                least = away;
                best = new Place(i, 0);
            }
        }
        return best;
    }

    /** The nearest place of the outline, however far it is. */
    static Place near(Piece piece, Point p) {
        return near(piece.outline(), p);
    }

    static Place near(Outline outline, Point p) {
        return atNode(outline, outline.nearest(p).place());
    }

    /** A place next to an end of segments is that end: it was moved and moved back. */
    private static Place atNode(Outline outline, Place place) {
        Segment segment = outline.segments().get(place.segment());
        Point p = segment.at(place.t());
        if (p.distance(segment.start()) <= ON_LINE) {
            return new Place(place.segment(), 0);
        }
        return p.distance(segment.end()) <= ON_LINE
                ? new Place((place.segment() + 1) % outline.segments().size(), 0)
                : place;
    }

    /** The meeting of the endless line with the outline that lies nearest to {@code near}. */
    static Place meeting(Piece piece, Point through, Point direction, Point near) throws Refusal {
        Crossing best = null;
        for (Crossing c : piece.outline().crossings(through, direction)) {
            if (best == null || c.point().distance(near) < best.point().distance(near)) {
                best = c;
            }
        }
        if (best == null) {
            throw Refusal.of("slash-off-outline").with("piece", piece.name());
        }
        return atNode(piece.outline(), best.place());
    }

    /**
     * Refuses to open or fold a protected edge, unless accepted. A fold or centre line that is merely lengthened in
     * its own direction keeps its shape and may be.
     *
     * @param shift unit direction in which the cut opens
     */
    static void requireMayOpen(Piece piece, Place at, Point shift, boolean accepted) throws Refusal {
        Outline outline = piece.outline();
        Point p = outline.point(at);
        for (Edge edge : piece.edges()) {
            if (!new EdgeRun(piece, edge).holds(at)) {
                continue;
            }
            if (p.distance(edge.from()) <= AT_END || p.distance(edge.to()) <= AT_END) {
                throw Refusal.of("slash-through-corner")
                        .with("piece", piece.name())
                        .with("edge", edge.name());
            }
            Point tangent = outline.segments().get(at.segment()).tangent(at.t());
            boolean onlyLonger = (edge.role() == EdgeRole.FOLD || edge.role() == EdgeRole.CENTRE)
                    && Math.abs(tangent.cross(shift)) < 1e-3;
            if (edge.isProtected() && !accepted && !onlyLonger) {
                throw Refusal.of("edge-protected").with("piece", piece.name()).with("edge", edge.name());
            }
        }
    }

    /**
     * Where a tuck's second line meets a run that starts (or, reversed, ends) at its first line: the first meeting.
     *
     * @return the run without what the tuck takes, and what it takes
     */
    static Trimmed trimStart(List<Segment> run, Point through, Point direction) throws Refusal {
        for (int i = 0; i < run.size(); i++) {
            Optional<Double> at = firstOn(run.get(i), through, direction);
            if (at.isEmpty()) {
                continue;
            }
            double t = at.get();
            List<Segment> taken = new java.util.ArrayList<>(run.subList(0, i));
            List<Segment> left = new java.util.ArrayList<>();
            if (t > 0) {
                taken.add(run.get(i).between(0, t));
            }
            if (t < 1) {
                left.add(run.get(i).between(t, 1));
            }
            left.addAll(run.subList(i + 1, run.size()));
            if (left.isEmpty()) {
                break;
            }
            return new Trimmed(left, taken);
        }
        throw Refusal.of("tuck-too-wide");
    }

    /** A corner on the line is met at the corner, though rounding may have put it beside the line. */
    private static Optional<Double> firstOn(Segment segment, Point through, Point direction) {
        boolean endsOn = Math.abs(direction.unit().cross(segment.end().minus(through))) <= ON_LINE;
        for (double t : segment.crossings(through, direction)) {
            Point p = segment.at(t);
            if (p.distance(segment.start()) > ON_LINE) {
                return Optional.of(endsOn && p.distance(segment.end()) <= ON_LINE ? 1.0 : t);
            }
        }
        return endsOn ? Optional.of(1.0) : Optional.empty();
    }

    static Trimmed trimEnd(List<Segment> run, Point through, Point direction) throws Refusal {
        Trimmed back = trimStart(reversed(run), through, direction);
        return new Trimmed(reversed(back.left()), reversed(back.taken()));
    }

    /** A run after a tuck. */
    record Trimmed(List<Segment> left, List<Segment> taken) {}

    private static List<Segment> reversed(List<Segment> run) {
        return run.isEmpty() ? run : new easewright.geom.Curve(run).reversed().segments();
    }
}
