package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;

/**
 * How often a piece is cut, and whether on the fold.
 *
 * @param shown the edge that shows it, if any does
 */
public record CutCount(String piece, int times, boolean onFold, List<Segment> shown, Reason reason)
        implements Suggestion.OnPiece {
    public CutCount {
        shown = List.copyOf(shown);
    }

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
