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
import java.util.Collections;
import java.util.HashMap;
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
        return together(pattern, pieces, KnownSizes.none());
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
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Optional<PieceMeasures> known = measured.piece(piece.id())
                    .filter(m -> m.stitch().piece() == piece && (sameLevels || sameLevels(piece, before, pattern)));
            pieces.add(known.orElseGet(() -> new PieceTape(lines.of(piece)).all(pattern.levels())));
        }
        return together(pattern, pieces, KnownSizes.of(before, measured, pattern, pieces));
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

    private static GarmentMeasures together(Pattern pattern, List<PieceMeasures> pieces, KnownSizes known) {
        List<Finding> findings = new ArrayList<>();
        for (PieceMeasures piece : pieces) {
            findings.addAll(piece.findings());
        }
        if (!PatternPart.severalSizes(pattern)) {
            SizeMeasures all = garment(pattern, Optional.empty(), pieces, known.walks());
            all.findings().forEach(f -> add(findings, f));
            return new GarmentMeasures(pieces, all.girths(), all.mates(), findings, List.of());
        }
        List<SizeMeasures> sizes = new ArrayList<>();
        List<Girth> girths = new ArrayList<>();
        List<MateWalk> walks = new ArrayList<>();
        Set<Mate> sewn = Collections.newSetFromMap(new IdentityHashMap<>());
        for (String size : PatternPart.sizes(pattern)) {
            SizeMeasures own = known.size(size).orElseGet(() -> {
                Pattern garment = PatternPart.ofSize(pattern, size).alone();
                return garment(garment, Optional.of(size), pieces, known.walks());
            });
            sizes.add(own);
            girths.addAll(own.girths());
            walks.addAll(own.mates());
            own.findings().forEach(f -> add(findings, f));
            sewn.addAll(own.seams());
        }
        for (Mate mate : pattern.mates()) {
            // A mate that was read anew is equal to the one sewn, if not the same.
            if (!sewn.contains(mate) && sizes.stream().noneMatch(s -> s.seams().contains(mate))) {
                findings.add(Finding.of("mate-across-sizes", Severity.FAULT, "").with("mate", mate.name()));
            }
        }
        return new GarmentMeasures(pieces, girths, walks, findings, sizes);
    }

    /**
     * What one garment measures: its girths and its seams.
     *
     * @param measured its pieces, and maybe others
     */
    private static SizeMeasures garment(
            Pattern garment, Optional<String> size, List<PieceMeasures> measured, KnownWalks known) {
        Map<String, PieceMeasures> byId = new HashMap<>();
        for (PieceMeasures piece : measured) {
            Optional<String> own = piece.stitch().piece().size();
            if (size.isEmpty() || own.isEmpty() || own.equals(size)) {
                byId.put(piece.pieceId(), piece);
            }
        }
        List<PieceMeasures> pieces = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            pieces.add(byId.get(piece.id()));
        }
        List<Girth> girths = new ArrayList<>();
        List<MateWalk> walks = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Level level : garment.levels()) {
            for (Girth girth : GirthTape.at(level, size, pieces)) {
                girths.add(girth);
                if (girth.parts().isEmpty()) {
                    findings.add(Finding.of("level-without-piece", Severity.CAUTION, "")
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
        findings.addAll(tape.findings());
        return new SizeMeasures(size.orElse(""), garment.mates(), girths, walks, findings);
    }

    private static void add(List<Finding> findings, Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }
}
