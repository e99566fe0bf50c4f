package easewright.editor.mark;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Where somebody last put a level: what was put by hand is meant, and the rest follows it. */
public final class LastPlaced {
    private LastPlaced() {}

    /**
     * The pieces, by their ids, on which a level was last put by itself; empty where it was never put on some pieces only,
     * since then no piece tells where it is meant.
     *
     * @param states the pattern as it was, oldest first, up to the present
     */
    public static Set<String> on(List<Pattern> states, String level) {
        for (int i = states.size() - 1; i > 0; i--) {
            Pattern before = states.get(i - 1);
            Pattern now = states.get(i);
            Set<String> put = now.pieces().stream()
                    .filter(p -> p.level(level).isPresent() && !sameLevel(before, p, level))
                    .map(Piece::id)
                    .collect(Collectors.toSet());
            if (!put.isEmpty()) {
                long lies = now.pieces().stream()
                        .filter(p -> p.level(level).isPresent())
                        .count();
                return put.size() < lies ? put : Set.of();
            }
        }
        return Set.of();
    }

    private static boolean sameLevel(Pattern before, Piece piece, String level) {
        return before.piece(piece.id()).flatMap(b -> b.level(level)).equals(piece.level(level));
    }
}
