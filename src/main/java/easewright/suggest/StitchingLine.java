package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Map;

/**
 * Which of two outlines is sewn and which is cut: an outline that runs inside another at an even distance is the
 * stitching line, and the outer one goes along with it.
 *
 * @param after the piece as it is then; its id may be that of the inner outline
 */
public record StitchingLine(String piece, Piece after, Reason reason) implements Suggestion.OnPiece {
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
        return Map.of("allowance", after.allowance());
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
