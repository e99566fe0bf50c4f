package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.Grain;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Map;

/** A drawn line that is the grainline. */
public record GrainLine(String piece, Grain grain, Reason reason) implements Suggestion.OfPiece {
    @Override
    public Kind kind() {
        return Kind.GRAIN;
    }

    @Override
    public String key() {
        return "grain " + piece;
    }

    @Override
    public Map<String, Object> values() {
        return Map.of();
    }

    @Override
    public List<Segment> shown() {
        return List.of(new Line(grain.from(), grain.to()));
    }

    @Override
    public Pattern apply(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(p -> p.id().equals(piece) ? p.toBuilder().grain(grain).build() : p)
                .toList());
    }
}
