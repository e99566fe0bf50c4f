package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A level of the garment and where it lies on its pieces.
 *
 * @param marks by id of the piece
 * @param lines the drawn lines by id of the piece, which are to go with the outline from now on
 */
public record LevelSuggestion(Level level, Map<String, LevelMark> marks, Map<String, List<Rider>> lines, Reason reason)
        implements Suggestion {
    public LevelSuggestion {
        marks = Map.copyOf(marks);
        lines = Map.copyOf(lines);
    }

    @Override
    public Kind kind() {
        return Kind.LEVEL;
    }

    @Override
    public String key() {
        return "level " + level.name();
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("level", level.name(), "count", marks.size());
    }

    @Override
    public List<Segment> shown() {
        return lines.values().stream()
                .flatMap(List::stream)
                .flatMap(r -> r.segments().stream())
                .toList();
    }

    @Override
    public Pattern apply(Pattern pattern) {
        if (pattern.level(level.name()).isPresent()) {
            return pattern;
        }
        List<Level> levels = new ArrayList<>(pattern.levels());
        levels.add(level);
        return pattern.withLevels(levels)
                .withPieces(pattern.pieces().stream().map(this::marked).toList());
    }

    private Piece marked(Piece piece) {
        LevelMark mark = marks.get(piece.id());
        if (mark == null) {
            return piece;
        }
        List<LevelMark> levels = new ArrayList<>(piece.levels());
        levels.add(mark);
        List<Rider> riders = PieceNotches.attached(piece, lines.getOrDefault(piece.id(), List.of()));
        return piece.toBuilder().levels(levels).riders(riders).build();
    }
}
