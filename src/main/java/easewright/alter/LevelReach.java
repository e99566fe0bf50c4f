package easewright.alter;

import easewright.geom.Place;
import easewright.geom.Point;
import easewright.measure.Hold;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.measure.StitchOutline;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/**
 * Where an edge meets the measured stretch of a level.
 *
 * @param hold    the sewn point of the edge on the level, or the corner of the edge where it lies within half a
 *                millimetre, and what of the drawn line holds it
 * @param outward unit direction of the level there, pointing away from the cloth
 * @param corner  whether the point is an end of the edge
 */
record LevelReach(Hold hold, Point outward, boolean corner) {
    /** A level this close to an end of an edge is taken to meet it at that end, mm. */
    private static final double AT_CORNER = 0.5;

    /** The same for one edge of a piece that is not otherwise looked at. */
    static Optional<LevelReach> of(Piece piece, Edge edge, Level level) {
        return of(new SewnPiece(piece, List.of(level)), edge, level);
    }

    /** The place of the drawn line square across from the sewn one. */
    Point drawn() {
        return hold.before();
    }

    /** How the edge meets the level; empty if it bounds no stretch that is measured there. */
    static Optional<LevelReach> of(SewnPiece sewn, Edge edge, Level level) {
        Optional<LevelMark> mark = sewn.piece().level(level.name());
        Optional<LevelWidth> width = sewn.width(level);
        if (mark.isEmpty() || width.isEmpty()) {
            return Optional.empty();
        }
        Point direction = direction(sewn.piece(), mark.get());
        if (mark.get().along().isPresent()) {
            return sewn.piece().edge(mark.get().along().get()).flatMap(along -> atAlong(sewn, edge, along, direction));
        }
        return across(sewn, edge, direction, width.get());
    }

    /** Unit direction of a level on a piece: square to the grain unless turned (common practice). */
    static Point direction(Piece piece, LevelMark mark) {
        Point grain = piece.grainDirection();
        Point square = new Point(grain.y(), -grain.x());
        return mark.turn() == 0 ? square : square.turned(Math.toRadians(mark.turn()));
    }

    /** The edge meets the level's own edge at a corner; outward is away from that edge's other end. */
    private static Optional<LevelReach> atAlong(SewnPiece sewn, Edge edge, Edge along, Point direction) {
        for (boolean end : new boolean[] {false, true}) {
            Hold corner = sewn.corner(edge, end);
            for (boolean first : new boolean[] {true, false}) {
                Hold near = sewn.corner(along, !first);
                Hold far = sewn.corner(along, first);
                if (near.sewn().equals(corner.sewn()) && !near.sewn().equals(far.sewn())) {
                    return Optional.of(new LevelReach(corner, away(direction, far.sewn(), corner.sewn()), true));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<LevelReach> across(SewnPiece sewn, Edge edge, Point direction, LevelWidth width) {
        for (Span span : width.spans()) {
            for (boolean first : new boolean[] {true, false}) {
                Point end = first ? span.from() : span.to();
                Point outward = away(direction, first ? span.to() : span.from(), end);
                for (boolean corner : new boolean[] {false, true}) {
                    Hold at = sewn.corner(edge, corner);
                    if (at.sewn().distance(end) <= AT_CORNER) {
                        return Optional.of(new LevelReach(at, outward, true));
                    }
                }
                if (holds(sewn.stitch(), edge, end)) {
                    return Optional.of(new LevelReach(sewn.sewnAt(end), outward, false));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean holds(StitchOutline stitch, Edge edge, Point sewn) {
        Place from = stitch.place(edge.from());
        Place to = stitch.place(edge.to());
        Place at = stitch.outline().nearest(sewn).place();
        if (from.compareTo(to) < 0) {
            return from.compareTo(at) <= 0 && at.compareTo(to) <= 0;
        }
        return from.compareTo(at) <= 0 || at.compareTo(to) <= 0;
    }

    private static Point away(Point direction, Point from, Point to) {
        return direction.dot(to.minus(from)) >= 0 ? direction : direction.times(-1);
    }
}
