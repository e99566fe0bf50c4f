package easewright.measure;

import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The stitching lines of pieces, each found once: a piece that is the same object has the same line. For one change and
 * the measuring of what comes of it. Not thread-safe.
 */
public final class StitchLines {
    private final Map<Piece, StitchOutline> known = new IdentityHashMap<>();
    private final Map<String, StitchOutline> last = new HashMap<>();
    private final Optional<GarmentMeasures> measured;

    /** Nothing known yet. */
    public StitchLines() {
        measured = Optional.empty();
    }

    /** Those of a measured pattern. */
    public StitchLines(GarmentMeasures measures) {
        measured = Optional.of(measures);
    }

    /** A change goes on from what it made of a piece last. */
    private StitchOutline changed(Piece piece) {
        Optional<StitchOutline> like = Optional.ofNullable(last.get(piece.id()))
                .or(() -> measured.flatMap(m -> m.piece(piece.id())).map(PieceMeasures::stitch));
        StitchOutline stitch = StitchOutline.of(piece, like);
        last.put(piece.id(), stitch);
        return stitch;
    }

    public StitchOutline of(Piece piece) {
        return measured.flatMap(m -> m.piece(piece.id()))
                .map(PieceMeasures::stitch)
                .filter(s -> s.piece() == piece)
                .orElseGet(() -> known.computeIfAbsent(piece, this::changed));
    }
}
