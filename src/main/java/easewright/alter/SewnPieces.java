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

    SewnPieces(Pattern pattern, GarmentMeasures measures) {
        for (PieceMeasures piece : measures.pieces()) {
            known.put(piece.pieceId(), new SewnPiece(piece.stitch(), pattern.levels()));
        }
    }

    SewnPiece of(Piece piece) {
        return known.get(piece.id());
    }
}
