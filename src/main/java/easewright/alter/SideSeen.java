package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which side of the body a half is for as it is drawn, seen from the outside of the cloth: of a front with its centre at
 * the left of the sheet the wearer's left, of such a back the wearer's right. Where neither the name says front or back
 * nor a centre line is marked, it cannot be known, and the right is taken.
 *
 * @param sure whether it was seen, and not taken
 */
public record SideSeen(Side side, boolean sure) {
    private static final Set<EdgeRole> TOP =
            Set.of(EdgeRole.NECK, EdgeRole.SHOULDER, EdgeRole.WAIST, EdgeRole.CAP, EdgeRole.ARMHOLE);

    public static SideSeen of(Piece piece) {
        String words =
                " " + (piece.name() + " " + piece.id()).toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        boolean front = words.contains(" front ");
        boolean back = words.contains(" back ");
        Optional<Edge> centre = centre(piece);
        if (front == back || centre.isEmpty()) {
            return new SideSeen(Side.RIGHT, false);
        }
        Point down = down(piece);
        // To the right of someone who looks at the sheet with the piece upright.
        Point rightwards = new Point(down.y(), -down.x());
        Point middle = middle(centre.get());
        double bulk = piece.outline().box().centre().minus(middle).dot(rightwards);
        boolean centreAtLeft = bulk > 0;
        return new SideSeen(centreAtLeft == front ? Side.LEFT : Side.RIGHT, true);
    }

    private static Optional<Edge> centre(Piece piece) {
        for (EdgeRole role : List.of(EdgeRole.FOLD, EdgeRole.CENTRE, EdgeRole.CROTCH)) {
            Optional<Edge> edge =
                    piece.edges().stream().filter(e -> e.role() == role).findFirst();
            if (edge.isPresent()) {
                return edge;
            }
        }
        return Optional.empty();
    }

    private static Point middle(Edge edge) {
        return edge.from().towards(edge.to(), 0.5);
    }

    /** Along the grain, from neck or waist to the hem where both are marked, else down the sheet. */
    private static Point down(Piece piece) {
        Point grain = piece.grainDirection();
        Optional<Edge> top =
                piece.edges().stream().filter(e -> TOP.contains(e.role())).findFirst();
        Optional<Edge> hem =
                piece.edges().stream().filter(e -> e.role() == EdgeRole.HEM).findFirst();
        double along = top.isPresent() && hem.isPresent()
                ? middle(hem.get()).minus(middle(top.get())).dot(grain)
                : grain.y();
        return along < 0 ? grain.times(-1) : grain;
    }
}
