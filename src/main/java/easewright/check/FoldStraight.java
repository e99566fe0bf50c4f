package easewright.check;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** Cloth folds along a straight line, and that line lies on the grain. */
final class FoldStraight implements Rule {
    /** Half of what a careful maker keeps to, 1/16 in (docs/sources.md 3); both halves are cut together. */
    private static final double STRAIGHT_WITHIN = 0.75;

    /** 1 in 200: what a drawing may lean without a maker seeing it, common practice. */
    private static final double ON_GRAIN_WITHIN = Math.toDegrees(Math.atan(1 / 200.0));

    private static final int PLACES = 8;

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : sight.pieces()) {
            boolean anyFold = false;
            for (Edge edge : piece.edges()) {
                if (edge.role() == EdgeRole.FOLD) {
                    anyFold = true;
                    look(piece, edge, findings);
                }
            }
            if (piece.onFold() && !anyFold && !piece.edges().isEmpty()) {
                findings.add(Finding.of("fold-edge-missing", Severity.CAUTION, piece.name()));
            }
        }
        return findings;
    }

    private static void look(Piece piece, Edge edge, List<Finding> findings) {
        Curve run = edge.on(piece.outline());
        if (run.start().equals(run.end())) {
            return;
        }
        Point line = run.end().minus(run.start()).unit();
        double off = 0;
        for (Segment s : run.segments()) {
            for (int i = 0; i <= PLACES; i++) {
                off = Math.max(
                        off, Math.abs(line.cross(s.at(i / (double) PLACES).minus(run.start()))));
            }
        }
        if (off > STRAIGHT_WITHIN) {
            findings.add(Finding.of("fold-not-straight", Severity.FAULT, piece.name())
                    .with("edge", edge.name())
                    .with("off", off));
        }
        double lean = Math.toDegrees(Math.asin(Math.min(1, Math.abs(line.cross(piece.grainDirection())))));
        // A fold across the grain (a cuff, a yoke) is meant to be so.
        if (piece.grain().isPresent() && lean > ON_GRAIN_WITHIN && lean < 45) {
            findings.add(Finding.of("fold-off-grain", Severity.CAUTION, piece.name())
                    .with("edge", edge.name())
                    .with("lean.degrees", lean));
        }
    }
}
