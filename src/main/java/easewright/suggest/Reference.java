package easewright.suggest;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.Comparator;

/** From where the distance of a level on a piece is best stated. */
public final class Reference {
    private Reference() {}

    /**
     * The end of the waist or neck edge at the fold or centre, of several the highest; without such an edge the highest
     * place of the piece. A crotch stands for the centre.
     */
    public static Point of(Piece piece) {
        Run.Frame frame = Run.Frame.along(piece.grainDirection());
        return piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.WAIST || e.role() == EdgeRole.NECK)
                .map(e -> centreEnd(piece, e))
                .min(Comparator.comparingDouble(p -> frame.of(p).y()))
                .orElseGet(() -> highest(piece));
    }

    /** The end at the fold or centre of one edge, else the one farther up the grain. */
    public static Point of(Piece piece, Edge edge) {
        return centreEnd(piece, edge);
    }

    private static Point centreEnd(Piece piece, Edge edge) {
        for (Edge other : piece.edges()) {
            boolean centre =
                    other.role() == EdgeRole.FOLD || other.role() == EdgeRole.CENTRE || other.role() == EdgeRole.CROTCH;
            if (centre && (meets(other, edge.from()))) {
                return edge.from();
            }
            if (centre && meets(other, edge.to())) {
                return edge.to();
            }
        }
        double one = edge.from().dot(piece.grainDirection());
        double two = edge.to().dot(piece.grainDirection());
        return one <= two ? edge.from() : edge.to();
    }

    private static boolean meets(Edge edge, Point at) {
        return edge.from().distance(at) < 1 || edge.to().distance(at) < 1;
    }

    /** The place farthest up the grain, the page showing which way is up. */
    private static Point highest(Piece piece) {
        Run.Frame frame = Run.Frame.along(piece.grainDirection());
        return piece.outline().segments().stream()
                .map(Segment::start)
                .min(Comparator.comparingDouble(p -> frame.of(p).y()))
                .orElseThrow();
    }
}
