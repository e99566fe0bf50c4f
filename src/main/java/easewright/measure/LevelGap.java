package easewright.measure;

import easewright.geom.Point;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.PieceKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A piece that a girth leaves out although the level should go on over it: it is sewn at a side seam to a piece where the
 * level ends, or has the level in another size (common practice: a level is one line round the body).
 *
 * @param size  in which it is left out, where the pattern comes in several
 * @param lacks id of the piece that has not the level
 * @param has   id of the piece that tells so by having it
 * @param at    where the level would arrive on the piece at the seam; empty where another size tells
 */
public record LevelGap(String level, Optional<String> size, String lacks, String has, Optional<Point> at) {
    /** All of a pattern, each piece once at each level. */
    public static List<LevelGap> of(Pattern pattern, GarmentMeasures measures) {
        List<LevelGap> gaps = new ArrayList<>();
        Set<List<String>> told = new HashSet<>();
        PatternPart.bySize(pattern).forEach((size, part) -> {
            GarmentMeasures own = size.map(measures::inSize).orElse(measures);
            for (LevelSeams.End end : LevelSeams.ends(part.alone(), own)) {
                if (told.add(List.of(end.level(), end.lacks()))) {
                    gaps.add(new LevelGap(end.level(), size, end.lacks(), end.has(), Optional.of(end.at())));
                }
            }
        });
        if (PatternPart.severalSizes(pattern)) {
            ofSizes(pattern, told, gaps);
        }
        return List.copyOf(gaps);
    }

    /** Pieces without a level that has a girth in their size, and goes over the piece called alike in another. */
    private static void ofSizes(Pattern pattern, Set<List<String>> told, List<LevelGap> gaps) {
        Set<List<String>> girths = new LinkedHashSet<>();
        for (Piece piece : pattern.pieces()) {
            for (LevelMark mark : piece.levels()) {
                if (piece.size().isPresent() && mark.counts()) {
                    girths.add(List.of(mark.level(), piece.size().get()));
                }
            }
        }
        Map<PieceKind, List<Piece>> alike = PieceKind.inSizes(pattern);
        for (Piece piece : pattern.pieces()) {
            for (List<String> girth : girths) {
                String level = girth.get(0);
                if (piece.size().equals(Optional.of(girth.get(1)))
                        && piece.level(level).isEmpty()) {
                    alike.getOrDefault(piece.kind(), List.of()).stream()
                            .filter(p ->
                                    p.level(level).filter(LevelMark::counts).isPresent())
                            .findFirst()
                            .filter(p -> told.add(List.of(level, piece.id())))
                            .ifPresent(p ->
                                    gaps.add(new LevelGap(level, piece.size(), piece.id(), p.id(), Optional.empty())));
                }
            }
        }
    }
}
