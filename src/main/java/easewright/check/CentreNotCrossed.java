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

/** Removing must not take a piece past its own centre line (docs/sources.md 4.3, common practice). */
final class CentreNotCrossed implements ChangeRule {
    private static final double ROUNDING = 0.05;

    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        for (Sight.Remade remade : before.remade(after)) {
            Piece piece = remade.now();
            for (Edge edge : piece.edges()) {
                boolean centre = edge.role() == EdgeRole.FOLD || edge.role() == EdgeRole.CENTRE;
                if (centre && beyond(piece, edge) > ROUNDING + wasBeyond(remade.then(), edge.name())) {
                    findings.add(Finding.of("piece-past-centre", Severity.FAULT, piece.name())
                            .with("edge", edge.name())
                            .with("beyond", beyond(piece, edge)));
                }
            }
        }
        return findings;
    }

    private static double wasBeyond(Piece piece, String edge) {
        return piece.edge(edge).map(e -> beyond(piece, e)).orElse(0.0);
    }

    /** How far corners of the outline lie on the far side of the line from end to end of the centre edge, mm. */
    private static double beyond(Piece piece, Edge edge) {
        Curve run = edge.on(piece.outline());
        if (run.start().equals(run.end())) {
            return 0;
        }
        Point line = run.end().minus(run.start()).unit();
        double side = piece.outline().signedArea() > 0 ? 1 : -1;
        double most = 0;
        for (Segment s : piece.outline().segments()) {
            most = Math.max(most, -side * line.cross(s.start().minus(run.start())));
        }
        return most;
    }
}
