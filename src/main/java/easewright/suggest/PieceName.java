package easewright.suggest;

import easewright.pattern.Piece;
import java.util.Map;

/** What a piece is called, by the words written on it. */
public record PieceName(String piece, String name, Reason reason) implements Suggestion.OnPiece {
    @Override
    public Kind kind() {
        return Kind.NAME;
    }

    @Override
    public String key() {
        return "name " + piece;
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("name", name);
    }

    @Override
    public Piece marked(Piece old) {
        return old.withName(name);
    }
}
