package easewright.editor.mark;

import easewright.measure.GarmentMeasures;
import easewright.measure.LevelGap;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The pieces that a girth leaves out although its level should go on over them, and how it comes to lie there.
 *
 * @param pieces their names
 * @param sizes  in which there are such, where the pattern comes in several
 */
public record LevelLeftOut(List<String> pieces, Set<String> sizes) {
    static final LevelLeftOut NOTHING = new LevelLeftOut(List.of(), Set.of());

    public LevelLeftOut {
        pieces = List.copyOf(pieces);
        sizes = Set.copyOf(sizes);
    }

    /**
     * Of a level, in all sizes.
     *
     * @param all what all girths of the pattern leave out
     */
    static LevelLeftOut of(Pattern pattern, List<LevelGap> all, String level) {
        List<LevelGap> gaps = all.stream().filter(g -> g.level().equals(level)).toList();
        return new LevelLeftOut(
                gaps.stream()
                        .map(g -> EdgeEdits.piece(pattern, g.lacks()).name())
                        .toList(),
                gaps.stream().flatMap(g -> g.size().stream()).collect(Collectors.toSet()));
    }

    public boolean isAny() {
        return !pieces.isEmpty();
    }

    /** What is missing. */
    public String words(Words words) {
        return words.of("editor.level.left-out", Map.of("pieces", pieces));
    }

    /** What the press does. */
    public String hint(Words words) {
        return words.of("editor.level.put-there.hint", Map.of("pieces", pieces));
    }

    /**
     * The level on all that it was left off, from piece to piece: where it meets that of the piece sewn to it, else as on
     * the piece called alike of another size.
     */
    public static Pattern filled(Pattern pattern, String level) {
        Pattern now = pattern;
        Set<String> tried = new HashSet<>();
        Pattern alone = LevelMeetings.alone(now, level);
        GarmentMeasures measured = Measures.of(alone);
        Optional<LevelGap> next = next(alone, measured, level, tried);
        while (next.isPresent()) {
            LevelGap gap = next.get();
            tried.add(gap.lacks());
            Piece piece = EdgeEdits.piece(now, gap.lacks());
            now = gap.at().isPresent()
                    ? LevelEdits.place(now, piece.id(), level, gap.at().get())
                    : LevelInSizes.onto(now, level, EdgeEdits.piece(now, gap.has()), piece);
            Pattern before = alone;
            alone = LevelMeetings.alone(now, level);
            measured = Measures.again(alone, before, measured);
            next = next(alone, measured, level, tried);
        }
        return now;
    }

    /**
     * A gap that was not tried yet.
     *
     * @param alone the pattern as if it had only the level
     */
    private static Optional<LevelGap> next(Pattern alone, GarmentMeasures measured, String level, Set<String> tried) {
        return LevelGap.of(alone, measured).stream()
                .filter(g -> g.level().equals(level) && !tried.contains(g.lacks()))
                .findFirst();
    }
}
