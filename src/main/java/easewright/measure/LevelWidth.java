package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;

/**
 * The width of one piece at a level, mm.
 *
 * @param width      stitching line to stitching line, darts cut out of the outline closed over
 * @param dartIntake what darts and pleats fold away at this level
 * @param overlap    width beyond the centre line
 * @param net        width − dartIntake − overlap: what one shape adds to the girth
 * @param count      how often it is added; 0 where the piece does not count at this level
 * @param spans      the stretches measured
 * @param side       the side that the piece is cut for
 */
public record LevelWidth(
        String pieceId,
        String level,
        double width,
        double dartIntake,
        double overlap,
        double net,
        int count,
        List<Span> spans,
        Side side) {
    public LevelWidth {
        spans = List.copyOf(spans);
    }

    /** What the piece adds to the girth, mm. */
    public double counted() {
        return net * count;
    }

    /**
     * The stretches of cloth that are measured, as they lie: along the edge that the level is, else straight.
     *
     * @param stitch of the piece
     */
    public List<Curve> cloth(StitchOutline stitch) {
        Optional<Edge> along =
                stitch.piece().level(level).flatMap(LevelMark::along).flatMap(stitch.piece()::edge);
        return along.map(stitch::cloth)
                .orElseGet(() -> spans.stream()
                        .filter(span -> !span.from().equals(span.to()))
                        .map(span -> new Curve(List.of(new Line(span.from(), span.to()))))
                        .toList());
    }
}
