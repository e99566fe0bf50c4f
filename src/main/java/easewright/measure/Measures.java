package easewright.measure;

import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The one door to measuring. */
public final class Measures {
    private Measures() {}

    /** Measures the whole pattern. */
    public static GarmentMeasures of(Pattern pattern) {
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            pieces.add(of(piece, pattern.levels()));
        }
        return together(pattern, pieces);
    }

    /**
     * Measures a changed pattern; pieces that are the same objects as before are not measured again.
     *
     * @param before   the pattern that was measured
     * @param measured what it measured
     */
    public static GarmentMeasures again(Pattern pattern, Pattern before, GarmentMeasures measured) {
        if (!pattern.levels().equals(before.levels())) {
            return of(pattern);
        }
        Map<String, PieceMeasures> known = new HashMap<>();
        for (int i = 0; i < before.pieces().size(); i++) {
            known.put(before.pieces().get(i).id(), measured.pieces().get(i));
        }
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            PieceMeasures old = known.get(piece.id());
            boolean same = old != null && old.stitch().piece() == piece;
            pieces.add(same ? old : of(piece, pattern.levels()));
        }
        return together(pattern, pieces);
    }

    /** Measures one piece at those of the levels that are marked on it. */
    public static PieceMeasures of(Piece piece, List<Level> levels) {
        return new PieceTape(piece).all(levels);
    }

    /** The width of one piece at a level; empty where the level is not marked on it or not reached by it. */
    public static Optional<LevelWidth> width(Piece piece, Level level) {
        return piece.level(level.name()).flatMap(mark -> new PieceTape(piece).width(mark, level));
    }

    /** The same where the stitching line of the piece is known already. */
    public static Optional<LevelWidth> width(StitchOutline stitch, Level level) {
        return stitch.piece().level(level.name()).flatMap(mark -> new PieceTape(stitch).width(mark, level));
    }

    private static GarmentMeasures together(Pattern pattern, List<PieceMeasures> pieces) {
        Map<String, PieceMeasures> byId = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (PieceMeasures piece : pieces) {
            byId.put(piece.pieceId(), piece);
            findings.addAll(piece.findings());
        }
        List<Girth> girths = new ArrayList<>();
        for (Level level : pattern.levels()) {
            Girth girth = girth(level, pieces);
            girths.add(girth);
            if (girth.parts().isEmpty()) {
                findings.add(
                        Finding.of("level-without-piece", Severity.CAUTION, "").with("level", level.name()));
            }
        }
        MateTape tape = new MateTape(pattern, byId);
        List<MateWalk> walks = new ArrayList<>();
        for (Mate mate : pattern.mates()) {
            Optional<MateWalk> walk = tape.walk(mate);
            if (walk.isPresent()) {
                walks.add(walk.get());
            }
        }
        findings.addAll(tape.findings());
        return new GarmentMeasures(pieces, girths, walks, findings);
    }

    private static Girth girth(Level level, List<PieceMeasures> pieces) {
        List<LevelWidth> parts = new ArrayList<>();
        double sum = 0;
        for (PieceMeasures piece : pieces) {
            Optional<LevelWidth> width = piece.level(level.name());
            if (width.isPresent() && width.get().count() > 0) {
                parts.add(width.get());
                sum += width.get().counted();
            }
        }
        return new Girth(level, sum, parts);
    }
}
