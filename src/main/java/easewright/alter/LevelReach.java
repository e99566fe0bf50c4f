package easewright.alter;

import easewright.geom.Crossing;
import easewright.geom.Point;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.Span;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.Optional;

/**
 * Where an edge meets the measured stretch of a level.
 *
 * @param at      the point of the edge on the level, or the corner of the edge where it lies within half a millimetre
 * @param outward unit direction of the level there, pointing away from the cloth
 * @param corner  whether the point is an end of the edge
 */
record LevelReach(Point at, Point outward, boolean corner) {
    /** A level this close to an end of an edge is taken to meet it at that end, mm. */
    private static final double AT_CORNER = 0.5;

    /** How the edge meets the level; empty if it bounds no stretch that is measured there. */
    static Optional<LevelReach> of(Piece piece, Edge edge, Level level) {
        Optional<LevelMark> mark = piece.level(level.name());
        Optional<LevelWidth> width = Measures.width(piece, level);
        if (mark.isEmpty() || width.isEmpty()) {
            return Optional.empty();
        }
        Point direction = direction(piece, mark.get());
        if (mark.get().along().isPresent()) {
            return piece.edge(mark.get().along().get())
                    .flatMap(along -> atAlong(new EdgeRun(piece, edge), new EdgeRun(piece, along), direction));
        }
        return across(piece, new EdgeRun(piece, edge), mark.get().through().orElseThrow(), direction, width.get());
    }

    /** Unit direction of a level on a piece: square to the grain unless turned (common practice). */
    static Point direction(Piece piece, LevelMark mark) {
        Point grain = piece.grainDirection();
        Point square = new Point(grain.y(), -grain.x());
        return mark.turn() == 0 ? square : square.turned(Math.toRadians(mark.turn()));
    }

    /** The edge meets the level's own edge at a corner; outward is away from that edge's other end. */
    private static Optional<LevelReach> atAlong(EdgeRun edge, EdgeRun along, Point direction) {
        for (Point corner : new Point[] {edge.start(), edge.end()}) {
            for (boolean first : new boolean[] {true, false}) {
                Point near = first ? along.start() : along.end();
                Point far = first ? along.end() : along.start();
                if (near.equals(corner) && !near.equals(far)) {
                    return Optional.of(new LevelReach(corner, away(direction, far, corner), true));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<LevelReach> across(
            Piece piece, EdgeRun edge, Point through, Point direction, LevelWidth width) {
        LevelReach best = null;
        // The drawn line lies outside the measured stretch by the allowance, slantwise by a few times as much.
        double least = 1 + 4 * piece.allowanceInside(edge.edge());
        for (Span span : width.spans()) {
            for (boolean first : new boolean[] {true, false}) {
                Point end = first ? span.from() : span.to();
                Point outward = away(direction, first ? span.to() : span.from(), end);
                for (Crossing crossing : piece.outline().crossings(through, direction)) {
                    double distance = crossing.point().distance(end);
                    if (distance < least && edge.holds(crossing.place())) {
                        best = snapped(edge, crossing.point(), outward);
                        least = distance;
                    }
                }
                for (Point corner : new Point[] {edge.start(), edge.end()}) {
                    double off = Math.abs(direction.cross(corner.minus(through)));
                    if (off <= AT_CORNER && corner.distance(end) < least - AT_CORNER) {
                        best = new LevelReach(corner, outward, true);
                        least = corner.distance(end);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static LevelReach snapped(EdgeRun edge, Point at, Point outward) {
        for (Point corner : new Point[] {edge.start(), edge.end()}) {
            if (corner.distance(at) <= AT_CORNER) {
                return new LevelReach(corner, outward, true);
            }
        }
        return new LevelReach(at, outward, false);
    }

    private static Point away(Point direction, Point from, Point to) {
        return direction.dot(to.minus(from)) >= 0 ? direction : direction.times(-1);
    }
}
