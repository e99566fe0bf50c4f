package easewright.measure;

import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The one door to measuring. */
public final class Measures {
    private Measures() {}

    /** Measures the whole pattern. */
    public static GarmentMeasures of(Pattern pattern) {
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            pieces.add(of(piece, pattern.levels()));
        }
        return together(pattern, pieces, KnownWalks.NONE);
    }

    /**
     * Measures a changed pattern; pieces that are the same objects as before are not measured again.
     *
     * @param before   the pattern that was measured
     * @param measured what it measured
     */
    public static GarmentMeasures again(Pattern pattern, Pattern before, GarmentMeasures measured) {
        return again(pattern, before, measured, new StitchLines());
    }

    /** The same where stitching lines of the changed pieces are known already. */
    public static GarmentMeasures again(Pattern pattern, Pattern before, GarmentMeasures measured, StitchLines lines) {
        boolean sameLevels = pattern.levels().equals(before.levels());
        Map<Piece, PieceMeasures> known = new IdentityHashMap<>();
        for (PieceMeasures piece : measured.pieces()) {
            if (sameLevels || sameLevels(piece.stitch().piece(), before, pattern)) {
                known.put(piece.stitch().piece(), piece);
            }
        }
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            PieceMeasures old = known.get(piece);
            pieces.add(old != null ? old : new PieceTape(lines.of(piece)).all(pattern.levels()));
        }
        return together(pattern, pieces, new KnownWalks(measured, pieces));
    }

    private static boolean sameLevels(Piece piece, Pattern before, Pattern now) {
        for (LevelMark mark : piece.levels()) {
            if (!before.level(mark.level()).equals(now.level(mark.level()))) {
                return false;
            }
        }
        return true;
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

    private static GarmentMeasures together(Pattern pattern, List<PieceMeasures> pieces, KnownWalks known) {
        Map<String, PieceMeasures> byId = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (PieceMeasures piece : pieces) {
            byId.put(piece.pieceId(), piece);
            findings.addAll(piece.findings());
        }
        List<Girth> girths = new ArrayList<>();
        List<MateWalk> walks = new ArrayList<>();
        if (PatternPart.severalSizes(pattern)) {
            bySize(pattern, byId, known, girths, walks, findings);
        } else {
            garment(pattern, Optional.empty(), byId, known, girths, walks, findings);
        }
        return new GarmentMeasures(pieces, girths, walks, findings);
    }

    private static void bySize(
            Pattern pattern,
            Map<String, PieceMeasures> byId,
            KnownWalks known,
            List<Girth> girths,
            List<MateWalk> walks,
            List<Finding> findings) {
        Set<Mate> walked = new HashSet<>();
        for (String size : PatternPart.sizes(pattern)) {
            Pattern garment = PatternPart.ofSize(pattern, size).alone();
            garment(garment, Optional.of(size), byId, known, girths, walks, findings);
            walked.addAll(garment.mates());
        }
        for (Mate mate : pattern.mates()) {
            if (!walked.contains(mate)) {
                findings.add(Finding.of("mate-across-sizes", Severity.FAULT, "").with("mate", mate.name()));
            }
        }
    }

    /** What one garment measures: its girths and its seams. */
    private static void garment(
            Pattern garment,
            Optional<String> size,
            Map<String, PieceMeasures> byId,
            KnownWalks known,
            List<Girth> girths,
            List<MateWalk> walks,
            List<Finding> findings) {
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            pieces.add(byId.get(piece.id()));
        }
        for (Level level : garment.levels()) {
            for (Girth girth : GirthTape.at(level, size, pieces)) {
                girths.add(girth);
                if (girth.parts().isEmpty()) {
                    add(
                            findings,
                            Finding.of("level-without-piece", Severity.CAUTION, "")
                                    .with("level", level.name()));
                }
            }
        }
        MateTape tape = new MateTape(garment, size, byId);
        for (Mate mate : garment.mates()) {
            Optional<MateWalk> walk = known.walk(mate, size).or(() -> tape.walk(mate));
            if (walk.isPresent()) {
                walks.add(walk.get());
            }
        }
        for (Finding finding : tape.findings()) {
            add(findings, finding);
        }
    }

    private static void add(List<Finding> findings, Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }
}
