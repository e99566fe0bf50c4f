package easewright.editor.model;

import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Stretch;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A place where a seam can be taken hold of: where a level meets a seam edge.
 *
 * @param at      on the stitching line
 * @param outward unit direction along the level, away from the cloth
 * @param count   how often the drawn edge is sewn in one garment at this level
 */
public record Hold(String pieceId, EdgeRef edge, Point at, Point outward, int count) {
    /** As near to a corner as this the level may belong to either edge, mm. */
    private static final double CORNER = 1;

    /** Of distances that are worked out in two ways, mm. */
    private static final double ROUNDING = 1e-6;

    /** All places at which the level can be made wider or narrower by its seams. */
    public static List<Hold> of(Pattern pattern, Girth girth) {
        List<Hold> holds = new ArrayList<>();
        for (LevelWidth part : girth.parts()) {
            pattern.piece(part.pieceId()).ifPresent(piece -> addHolds(piece, part, holds));
        }
        return List.copyOf(holds);
    }

    /** The same on one side: a piece that is cut alike for both has half of its seams there. */
    static List<Hold> on(Side side, Pattern pattern, Girth girth) {
        List<Hold> holds = new ArrayList<>();
        for (Hold hold : of(pattern, girth)) {
            Side own = pattern.piece(hold.pieceId()).map(Piece::side).orElse(Side.BOTH);
            boolean half = side != Side.BOTH && own == Side.BOTH;
            if (own.belongsTo(side)) {
                int count = half ? Math.max(1, hold.count / 2) : hold.count;
                holds.add(new Hold(hold.pieceId, hold.edge, hold.at, hold.outward, count));
            }
        }
        return List.copyOf(holds);
    }

    private static void addHolds(Piece piece, LevelWidth part, List<Hold> holds) {
        for (Span span : part.spans()) {
            Line line = new Line(span.from(), span.to());
            if (line.length() == 0) {
                continue;
            }
            Point along = line.tangent(0);
            seamAt(piece, span.from())
                    .ifPresent(e -> holds.add(new Hold(
                            piece.id(), EdgeRef.of(piece.id(), e.name()), span.from(), along.times(-1), part.count())));
            seamAt(piece, span.to())
                    .ifPresent(e -> holds.add(
                            new Hold(piece.id(), EdgeRef.of(piece.id(), e.name()), span.to(), along, part.count())));
        }
    }

    /** The seam that may move at the place. At a corner with another edge, such as a hem, the seam is meant. */
    static Optional<Edge> seamAt(Piece piece, Point at) {
        List<Edge> edges = near(piece, at);
        if (edges.size() < 2) {
            return edges.stream().filter(Hold::mayMove).findFirst();
        }
        Map<Edge, Double> distances = new IdentityHashMap<>();
        double nearest = Double.POSITIVE_INFINITY;
        for (Edge edge : edges) {
            double away = edge.on(piece.outline()).nearest(at).distance();
            distances.put(edge, away);
            nearest = Math.min(nearest, away);
        }
        double near = nearest + CORNER;
        return edges.stream()
                .filter(Hold::mayMove)
                .filter(e -> distances.get(e) <= near)
                .min(Comparator.comparingDouble(distances::get));
    }

    private static boolean mayMove(Edge edge) {
        return edge.role() == EdgeRole.SEAM && !edge.isProtected();
    }

    /**
     * The edges among which the nearest is, and all that come nearly as near to the place: mostly the one that it lies
     * on, so that no distance has to be worked out.
     */
    private static List<Edge> near(Piece piece, Point at) {
        Outline outline = piece.outline();
        Nearest nearest = outline.nearest(at);
        List<Integer> close = new ArrayList<>();
        outline.boxes().near(at.x(), at.y(), at.x(), at.y(), nearest.distance() + CORNER + ROUNDING, close::add);
        List<Edge> near = new ArrayList<>();
        boolean found = false;
        for (Edge edge : piece.edges()) {
            Stretch run = new Stretch(
                    outline,
                    outline.nearest(edge.from()).place(),
                    outline.nearest(edge.to()).place());
            if (close.stream().anyMatch(run::has)) {
                near.add(edge);
            }
            found |= run.has(nearest.place());
        }
        return found ? near : piece.edges();
    }

    /** By how much the finished girth grows when each of these seams moves outward by 1 mm. */
    public static int sewn(List<Hold> holds) {
        return holds.stream().mapToInt(Hold::count).sum();
    }
}
