package easewright.editor.mark;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * What came of suggestions that were taken all at once.
 *
 * @param before the pattern without them
 * @param after  the pattern with them
 */
public record Made(Pattern before, Pattern after) {
    /** How many marks of each kind were made; empty once something else has been done. */
    public Optional<String> words(Pattern present, Words words) {
        if (!present.equals(after)) {
            return Optional.empty();
        }
        List<String> kinds = new ArrayList<>();
        add(kinds, words, "pieces", pieces());
        add(kinds, words, "darts", more(pattern -> of(pattern, p -> p.darts().size())));
        add(
                kinds,
                words,
                "notches",
                more(pattern -> of(pattern, p -> p.notches().size())));
        add(kinds, words, "seams", more(pattern -> pattern.mates().size()));
        add(kinds, words, "levels", more(pattern -> pattern.levels().size()));
        return kinds.isEmpty()
                ? Optional.empty()
                : Optional.of(words.of("editor.marks.made", Map.of("kinds", String.join(", ", kinds))));
    }

    private static void add(List<String> kinds, Words words, String kind, int count) {
        if (count > 0) {
            kinds.add(words.of("editor.marks.made." + kind, Map.of("count", count)));
        }
    }

    /** Those on which something was made that is not counted by itself. */
    private int pieces() {
        return (int) after.pieces().stream().filter(this::isMarked).count();
    }

    private boolean isMarked(Piece piece) {
        return before.piece(piece.id())
                .filter(p -> p.equals(piece.toBuilder()
                        .darts(p.darts())
                        .notches(p.notches())
                        .levels(p.levels())
                        .build()))
                .isEmpty();
    }

    private int more(ToIntFunction<Pattern> count) {
        return count.applyAsInt(after) - count.applyAsInt(before);
    }

    private static int of(Pattern pattern, ToIntFunction<Piece> count) {
        return pattern.pieces().stream().mapToInt(count).sum();
    }
}
