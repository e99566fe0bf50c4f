package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A square with its size written in it is there to check the scale, and no piece. */
public record NoPiece(String piece, String name, String words, List<Segment> shown) implements Suggestion.OfPiece {
    public NoPiece {
        shown = List.copyOf(shown);
    }

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        for (KnownLength known : KnownLength.on(sheet)) {
            Optional<Piece> piece = known.piece().flatMap(sheet.pattern()::piece);
            if (known.stated().isPresent() && piece.isPresent()) {
                found.add(new NoPiece(
                        piece.get().id(),
                        piece.get().name(),
                        known.words(),
                        piece.get().outline().segments()));
            }
        }
        return found;
    }

    @Override
    public Kind kind() {
        return Kind.NO_PIECE;
    }

    @Override
    public String key() {
        return "no-piece " + piece;
    }

    @Override
    public Reason reason() {
        return new Reason("square-with-size", Map.of("words", words), 0.95);
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("name", name);
    }

    @Override
    public Pattern apply(Pattern pattern) {
        return pattern.withPieces(
                pattern.pieces().stream().filter(p -> !p.id().equals(piece)).toList());
    }
}
