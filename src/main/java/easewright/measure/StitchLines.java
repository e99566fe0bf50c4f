package easewright.measure;

import easewright.pattern.Piece;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The stitching lines of pieces, each found once: a piece that is the same object has the same line. For one change and
 * the measuring of what comes of it. Not thread-safe.
 */
public final class StitchLines {
    private final Map<Piece, StitchOutline> known = new IdentityHashMap<>();

    /** Nothing known yet. */
    public StitchLines() {}

    /** Those of a measured pattern. */
    public StitchLines(GarmentMeasures measures) {
        for (PieceMeasures piece : measures.pieces()) {
            known.put(piece.stitch().piece(), piece.stitch());
        }
    }

    public StitchOutline of(Piece piece) {
        return known.computeIfAbsent(piece, StitchOutline::of);
    }
}
