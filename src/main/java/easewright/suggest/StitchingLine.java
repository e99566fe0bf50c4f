package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Which of two outlines is sewn and which is cut: an outline that runs inside another at an even distance is the
 * stitching line, and the outer one goes along with it.
 *
 * @param after the piece as it is then; its id may be that of the inner outline
 * @param least the least allowance, mm, where its edges have several; with none at all, as on a fold, no edge counts
 * @param most  the widest, likewise
 */
public record StitchingLine(String piece, Piece after, Reason reason, OptionalDouble least, OptionalDouble most)
        implements Suggestion.OnPiece {
    /** The same allowance all round. */
    StitchingLine(String piece, Piece after, Reason reason) {
        this(piece, after, reason, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether edges have allowances of their own. */
    public boolean isByEdge() {
        return least.isPresent() && most.isPresent();
    }

    @Override
    public Kind kind() {
        return Kind.STITCHING_LINE;
    }

    @Override
    public String key() {
        return "line " + piece;
    }

    @Override
    public Map<String, Object> values() {
        return isByEdge()
                ? Map.of("low", least.getAsDouble(), "high", most.getAsDouble())
                : Map.of("allowance", after.allowance());
    }

    @Override
    public List<Segment> shown() {
        return after.drawn() == LineKind.STITCHING
                ? after.outline().segments()
                : after.riders().stream()
                        .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                        .flatMap(r -> r.segments().stream())
                        .toList();
    }

    @Override
    public Piece marked(Piece old) {
        return after;
    }
}
