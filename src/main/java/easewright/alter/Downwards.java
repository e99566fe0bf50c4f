package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;

/** Which way along the grain the wearer's feet are. */
public final class Downwards {
    private Downwards() {}

    /** Unit direction along the grain towards the hem; without a marked hem, down the page. */
    public static Point of(Piece piece) {
        Point grain = piece.grainDirection();
        Point middle = piece.outline().box().centre();
        for (Edge edge : piece.edges()) {
            if (edge.role() == EdgeRole.HEM) {
                Point hem = edge.from().towards(edge.to(), 0.5);
                return grain.dot(hem.minus(middle)) < 0 ? grain.times(-1) : grain;
            }
        }
        return grain.y() < 0 ? grain.times(-1) : grain;
    }
}
