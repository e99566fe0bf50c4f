package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;

/**
 * An edge that runs down a piece made longer or shorter at one of its ends, in its own direction: what lies beside it
 * follows, and nothing else moves. As one does who walks two side seams and finds one longer at the hem (common practice).
 */
final class EdgeAtEnd implements EdgeLength.Stretch {
    private final SeamEnd end;

    /**
     * @param lower at the end nearer to the wearer's feet, else at the other
     */
    EdgeAtEnd(Piece piece, Edge edge, boolean lower, boolean acceptProtected) throws Refusal {
        this.end = end(piece, edge, lower);
        if (end.beside().isProtected() && !acceptProtected) {
            throw Refusal.of("edge-protected")
                    .with("piece", piece.name())
                    .with("edge", end.beside().name());
        }
    }

    private static SeamEnd end(Piece piece, Edge edge, boolean lower) throws Refusal {
        EdgeRun run = new EdgeRun(piece, edge);
        Point way = run.end().minus(run.start());
        Point down = piece.downGrain();
        if (Math.abs(way.dot(down)) <= Math.abs(way.cross(down))) {
            throw Refusal.of("edge-runs-across").with("piece", piece.name()).with("edge", edge.name());
        }
        return new SeamEnd(piece, edge, way.dot(down) > 0 == lower);
    }

    /** Whether the lower end of an edge is at the hem. */
    static boolean isAtHem(Piece piece, Edge edge) {
        try {
            return end(piece, edge, true).beside().role() == EdgeRole.HEM;
        } catch (Refusal noSuchEnd) {
            return false;
        }
    }

    @Override
    public Piece by(double mm) {
        return end.longer(mm);
    }
}
