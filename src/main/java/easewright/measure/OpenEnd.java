package easewright.measure;

import easewright.geom.Curve;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.Optional;

/**
 * The edge of an opening to which a level comes on a piece. Where the edges of an opening lie over each other, as at a
 * button stand, what reaches over is worn twice and is part of the girth once (common practice: girths are measured
 * from the centre line).
 */
public final class OpenEnd {
    /** A level ends on an edge if it comes this near to it, mm. */
    private static final double ON_EDGE = 0.5;

    private OpenEnd() {}

    /**
     * Where a level comes to an opening.
     *
     * @param edge  the edge, the first where it comes to several
     * @param cloth how wide the piece is there, darts folded, mm: what reaches over is less
     */
    public record End(Edge edge, double cloth) {}

    /** Empty where the level comes to none, or cannot be measured. */
    public static Optional<End> of(Piece piece, LevelMark mark, Level level) {
        if (piece.edges().stream().noneMatch(e -> e.role() == EdgeRole.OPENING)) {
            return Optional.empty();
        }
        StitchOutline stitch = StitchOutline.of(piece);
        return new PieceTape(stitch)
                .width(mark, level)
                .flatMap(width -> of(stitch, width).map(edge -> new End(edge, width.width() - width.dartIntake())));
    }

    /** The same of what has been measured. */
    public static Optional<Edge> of(PieceMeasures measured, String level) {
        return measured.level(level).flatMap(width -> of(measured.stitch(), width));
    }

    private static Optional<Edge> of(StitchOutline stitch, LevelWidth width) {
        return stitch.piece().edges().stream()
                .filter(e -> e.role() == EdgeRole.OPENING)
                .filter(e -> isEnd(stitch.edge(e), width))
                .findFirst();
    }

    private static boolean isEnd(Curve edge, LevelWidth width) {
        return width.spans().stream()
                .anyMatch(s -> edge.nearest(s.from()).distance() < ON_EDGE
                        || edge.nearest(s.to()).distance() < ON_EDGE);
    }
}
