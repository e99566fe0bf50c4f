package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.Comparator;
import java.util.Optional;

/**
 * How much of an edge lies beyond the centre line, on the part of a piece that reaches over it, such as the neck of a button
 * stand. A collar is mostly set on from centre to centre and a band from edge to edge (common practice), so both lengths are
 * wanted.
 */
public final class PastCentre {
    /** Edges whose ends are this near to each other meet there, mm. */
    private static final double MEET = 0.5;

    private static final double EXACT = 1e-9;

    private PastCentre() {}

    /**
     * The sewn length of an edge beyond the centre line, mm; 0 where it begins at none, or no overlap is said of the level
     * nearest to it.
     */
    public static double mm(PieceMeasures measured, String edgeName) {
        StitchOutline stitch = measured.stitch();
        Optional<Edge> edge = stitch.piece().edge(edgeName);
        if (edge.isEmpty() || edge.get().role() == EdgeRole.OPENING) {
            return 0;
        }
        double past = 0;
        for (Edge opening : stitch.piece().edges()) {
            if (opening.role() == EdgeRole.OPENING) {
                past += past(measured, opening, stitch.edge(opening), stitch.edge(edge.get()));
            }
        }
        return past;
    }

    private static double past(PieceMeasures measured, Edge edge, Curve opening, Curve run) {
        boolean atStart = near(run.start(), opening);
        if (!atStart && !near(run.end(), opening)) {
            return 0;
        }
        Curve away = atStart ? run : run.reversed();
        Point corner = away.start();
        return overlap(measured, edge, corner)
                .map(width -> upTo(away, opening, corner, width))
                .orElse(0.0);
    }

    private static boolean near(Point end, Curve opening) {
        return end.distance(opening.start()) < MEET || end.distance(opening.end()) < MEET;
    }

    /** What was said of the level next to the corner, of those that come to the opening. */
    private static Optional<Double> overlap(PieceMeasures measured, Edge opening, Point corner) {
        Piece piece = measured.stitch().piece();
        return piece.levels().stream()
                .filter(m -> m.overlapSaid().isPresent())
                .filter(m -> OpenEnd.of(measured, m.level()).map(Edge::name).equals(Optional.of(opening.name())))
                .min(Comparator.comparingDouble(m -> away(piece, m, corner)))
                .map(LevelMark::overlap)
                .filter(mm -> mm > 0);
    }

    private static double away(Piece piece, LevelMark mark, Point corner) {
        return mark.through()
                .or(() -> mark.along().flatMap(piece::edge).map(Edge::from))
                .map(p -> Math.abs(p.minus(corner).dot(piece.grainDirection())))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The way along the edge until it is so far from the opening, which goes on as it begins at the corner. */
    private static double upTo(Curve away, Curve opening, Point corner, double width) {
        Point along = corner.distance(opening.start()) < corner.distance(opening.end())
                ? opening.segments().get(0).tangent(0)
                : opening.segments().get(opening.segments().size() - 1).tangent(1);
        Point across = along.quarterTurned();
        double length = away.length();
        double none = 0;
        double all = length;
        if (Math.abs(away.end().minus(corner).dot(across)) < width) {
            return 0;
        }
        while (all - none > EXACT) {
            double half = (none + all) / 2;
            if (Math.abs(away.pointAtLength(half).minus(corner).dot(across)) < width) {
                none = half;
            } else {
                all = half;
            }
        }
        return all;
    }
}
