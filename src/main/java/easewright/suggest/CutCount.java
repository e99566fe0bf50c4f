package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How often a piece is cut, and whether on the fold.
 *
 * @param shown   the edge that shows it, if any does
 * @param instead whether it is what is meant if another such suggestion is not
 */
public record CutCount(String piece, int times, boolean onFold, List<Segment> shown, Reason reason, boolean instead)
        implements Suggestion.OnPiece {
    public CutCount {
        shown = List.copyOf(shown);
    }

    CutCount(String piece, int times, boolean onFold, List<Segment> shown, Reason reason) {
        this(piece, times, onFold, shown, reason, false);
    }

    /**
     * What is meant if this is not: an edge that is no fold is sewn to that of a second piece, and the other way round. So
     * the piece stays half of what it was, and what builds on it stays. Empty where no edge shows it.
     */
    @Override
    public Optional<Suggestion> otherwise() {
        return instead || shown.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        onFold
                                ? new CutCount(piece, 2, false, shown, Reason.of("seam-instead", 0.5), true)
                                : new CutCount(piece, 1, true, shown, Reason.of("fold-instead", 0.5), true));
    }

    @Override
    public Kind kind() {
        return Kind.CUT;
    }

    @Override
    public String key() {
        return (instead ? "cut-instead " : "cut ") + piece;
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
