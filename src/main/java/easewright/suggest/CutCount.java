package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Map;

/** How often a piece is cut, and whether on the fold. */
public record CutCount(String piece, int times, boolean onFold, Reason reason) implements Suggestion.OfPiece {
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
    public List<Segment> shown() {
        return List.of();
    }

    @Override
    public Pattern apply(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(p ->
                        p.id().equals(piece) ? p.toBuilder().cut(times, onFold).build() : p)
                .toList());
    }
}
