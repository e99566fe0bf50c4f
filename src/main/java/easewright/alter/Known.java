package easewright.alter;

import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;

/** What a change names, found in the pattern, or a refusal that says what is not there. */
final class Known {
    private Known() {}

    static Level level(Pattern pattern, String name) throws Refusal {
        return pattern.level(name).orElseThrow(() -> Refusal.of("level-unknown").with("level", name));
    }

    /**
     * @param idOrName of the piece
     */
    static Piece piece(Pattern pattern, String idOrName) throws Refusal {
        return pattern.piece(idOrName)
                .orElseThrow(() -> Refusal.of("piece-unknown").with("piece", idOrName));
    }

    static Edge edge(Piece piece, String name) throws Refusal {
        return piece.edge(name)
                .orElseThrow(() ->
                        Refusal.of("edge-unknown").with("piece", piece.name()).with("edge", name));
    }

    /** That a piece is part of the girth at a level. */
    static void requireCounted(Piece piece, String level) throws Refusal {
        if (!piece.countsAt(level)) {
            throw Refusal.of("piece-not-counted").with("piece", piece.name()).with("level", level);
        }
    }
}
