package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.Grain;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;

/** A drawn line that is the grainline. */
public record GrainLine(String piece, Grain grain, Reason reason) implements Suggestion.OnPiece {
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
    public Piece marked(Piece old) {
        return old.toBuilder().grain(grain).build();
    }
}
