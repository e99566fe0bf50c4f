package easewright.measure;

import easewright.pattern.Side;
import java.util.List;

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
}
