package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.StitchOutline;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.Map;

/** The pieces of a measured pattern seen along their stitching lines, each looked at once. */
final class SewnPieces {
    private final Map<String, SewnPiece> known = new HashMap<>();
    private final GarmentMeasures measured;
    private final Pattern pattern;

    /**
     * @param measures of the pattern, or of the one that it was copied from
     */
    SewnPieces(Pattern pattern, GarmentMeasures measures) {
        this.pattern = pattern;
        this.measured = measures;
    }

    SewnPiece of(Piece piece) {
        StitchOutline stitch = measured.piece(piece.id()).orElseThrow().stitch();
        return known.computeIfAbsent(
                piece.id(),
                id -> stitch.piece() == piece
                        ? new SewnPiece(stitch, pattern.levels())
                        : new SewnPiece(piece, pattern.levels()));
    }
}
