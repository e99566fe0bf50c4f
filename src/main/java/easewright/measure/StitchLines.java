package easewright.measure;

import easewright.pattern.Piece;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The stitching lines of pieces, each found once: a piece that is the same object has the same line. For one change and
 * the measuring of what comes of it. Not thread-safe.
 */
public final class StitchLines {
    private final Map<Piece, StitchOutline> known = new IdentityHashMap<>();
    private final Optional<GarmentMeasures> measured;

    /** Nothing known yet. */
    public StitchLines() {
        measured = Optional.empty();
    }

    /** Those of a measured pattern. */
    public StitchLines(GarmentMeasures measures) {
        measured = Optional.of(measures);
    }

    public StitchOutline of(Piece piece) {
        return measured.flatMap(m -> m.piece(piece.id()))
                .map(PieceMeasures::stitch)
                .filter(s -> s.piece() == piece)
                .orElseGet(() -> known.computeIfAbsent(piece, StitchOutline::of));
    }
}
