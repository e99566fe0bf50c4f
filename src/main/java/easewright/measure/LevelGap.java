package easewright.measure;

import easewright.geom.Point;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
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
        Map<List<Object>, Piece> having = new HashMap<>();
        Set<List<String>> girths = new HashSet<>();
        for (Piece piece : pattern.pieces()) {
            for (LevelMark mark : piece.levels()) {
                if (piece.size().isPresent() && mark.counts()) {
                    having.putIfAbsent(called(piece, mark.level()), piece);
                    girths.add(List.of(mark.level(), piece.size().get()));
                }
            }
        }
        for (Piece piece : pattern.pieces()) {
            for (List<String> girth : girths) {
                String level = girth.get(0);
                Piece other = having.get(called(piece, level));
                if (other != null
                        && piece.size().equals(Optional.of(girth.get(1)))
                        && piece.level(level).isEmpty()
                        && told.add(List.of(level, piece.id()))) {
                    gaps.add(new LevelGap(level, piece.size(), piece.id(), other.id(), Optional.empty()));
                }
            }
        }
    }

    private static List<Object> called(Piece piece, String level) {
        return List.of(level, piece.plainName().toLowerCase(Locale.ROOT), piece.side());
    }
}
