package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.PieceMeasures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.Map;

/** The pieces of a measured pattern seen along their stitching lines, each looked at once. */
final class SewnPieces {
    private final Map<String, SewnPiece> known = new HashMap<>();
    private final Map<String, PieceMeasures> measured = new HashMap<>();
    private final Pattern pattern;

    SewnPieces(Pattern pattern, GarmentMeasures measures) {
        this.pattern = pattern;
        for (PieceMeasures piece : measures.pieces()) {
            measured.put(piece.pieceId(), piece);
        }
    }

    SewnPiece of(Piece piece) {
        return known.computeIfAbsent(
                piece.id(), id -> new SewnPiece(measured.get(id).stitch(), pattern.levels()));
    }
}
