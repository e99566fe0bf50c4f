package easewright.suggest;

import easewright.pattern.Piece;
import java.util.Map;

/** How often a piece is cut, and whether on the fold. */
public record CutCount(String piece, int times, boolean onFold, Reason reason) implements Suggestion.OnPiece {
    @Override
    public Kind kind() {
        return Kind.CUT;
    }

    @Override
    public String key() {
        return "cut " + piece;
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("times", times, "fold", onFold);
    }

    @Override
    public Piece marked(Piece old) {
        return old.toBuilder().cut(times, onFold).build();
    }
}
