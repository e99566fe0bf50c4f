package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Two seam lines that are sewn together.
 *
 * @param shown  the edges
 * @param meeting notches that meet along it: new name by present name
 * @param first  sewn length of the first, mm
 * @param second sewn length of the second, mm
 */
public record MateSuggestion(
        Mate mate, List<Segment> shown, Map<String, String> meeting, double first, double second, Reason reason)
        implements Suggestion {
    public MateSuggestion {
        shown = List.copyOf(shown);
        meeting = Map.copyOf(meeting);
    }

    @Override
    public Kind kind() {
        return Kind.MATE;
    }

    @Override
    public String key() {
        return "mate " + mate.first() + " " + mate.second();
    }

    @Override
    public Map<String, Object> values() {
        Map<String, Object> values = new HashMap<>();
        values.put("name", mate.name());
        values.put("first", first);
        values.put("second", second);
        values.put("ease.signed", mate.declaredEase());
        return values;
    }

    @Override
    public Pattern apply(Pattern pattern) {
        boolean there = Stream.of(mate.first(), mate.second())
                .flatMap(List::stream)
                .allMatch(e -> PatternPart.garments(pattern).stream()
                        .anyMatch(garment -> garment.edge(e).isPresent()));
        if (!there) {
            return pattern;
        }
        List<Mate> mates = new ArrayList<>(pattern.mates());
        mates.add(mate);
        return pattern.withMates(mates)
                .withPieces(pattern.pieces().stream().map(this::renamed).toList());
    }

    private Piece renamed(Piece piece) {
        if (piece.notches().stream().noneMatch(n -> meeting.containsKey(n.name()))) {
            return piece;
        }
        return piece.toBuilder()
                .notches(piece.notches().stream()
                        .map(n -> new Notch(meeting.getOrDefault(n.name(), n.name()), n.at()))
                        .toList())
                .build();
    }
}
