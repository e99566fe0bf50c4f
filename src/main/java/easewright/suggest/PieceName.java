package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Map;

/** What a piece is called, by the words written on it. */
public record PieceName(String piece, String name, Reason reason) implements Suggestion.OfPiece {
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
    public List<Segment> shown() {
        return List.of();
    }

    @Override
    public Pattern apply(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(p -> p.id().equals(piece) ? p.withName(name) : p)
                .toList());
    }
}
