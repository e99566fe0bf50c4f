package easewright.editor.model;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A place where a seam can be taken hold of: where a level meets a seam edge.
 *
 * @param at      on the stitching line
 * @param outward unit direction along the level, away from the cloth
 * @param count   how often the drawn edge is sewn in one garment at this level
 */
public record Hold(String pieceId, EdgeRef edge, Point at, Point outward, int count) {
    /** All places at which the level can be made wider or narrower by its seams. */
    public static List<Hold> of(Pattern pattern, Girth girth) {
        List<Hold> holds = new ArrayList<>();
        for (LevelWidth part : girth.parts()) {
            pattern.piece(part.pieceId()).ifPresent(piece -> addHolds(piece, part, holds));
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

    /** The edge the place belongs to, if it is a seam that may move. */
    private static Optional<Edge> seamAt(Piece piece, Point at) {
        return piece.edges().stream()
                .min(Comparator.comparingDouble(
                        (Edge e) -> e.on(piece.outline()).nearest(at).distance()))
                .filter(e -> e.role() == EdgeRole.SEAM && !e.isProtected());
    }

    /** By how much the finished girth grows when each of these seams moves outward by 1 mm. */
    public static int sewn(List<Hold> holds) {
        return holds.stream().mapToInt(Hold::count).sum();
    }
}
