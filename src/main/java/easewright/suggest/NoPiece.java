package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A square with its size written in it is there to check the scale, and a table or a frame around words to say what the
 * sheet is: no pieces.
 */
public record NoPiece(String piece, String name, List<Segment> shown, Reason reason) implements Suggestion.OfPiece {
    public NoPiece {
        shown = List.copyOf(shown);
    }

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        Set<String> squares = new HashSet<>();
        for (KnownLength known : KnownLength.on(sheet)) {
            Optional<Piece> piece = known.piece().flatMap(sheet.pattern()::piece);
            if (known.stated().isPresent() && piece.isPresent()) {
                squares.add(piece.get().id());
                found.add(of(piece.get(), new Reason("square-with-size", Map.of("words", known.words()), 0.95)));
            }
        }
        double largest = sheet.pattern().pieces().stream()
                .mapToDouble(p -> Math.abs(p.outline().signedArea()))
                .max()
                .orElse(0);
        for (Piece piece : sheet.pattern().pieces()) {
            if (!squares.contains(piece.id()) && SheetTable.is(piece, sheet.captions(), largest)) {
                found.add(of(piece, Reason.of("parted-like-a-table", 0.6)));
            } else if (!squares.contains(piece.id()) && SheetLabel.is(piece, sheet.captions(), largest)) {
                found.add(of(piece, Reason.of("words-of-the-sheet", 0.6)));
            }
        }
        return found;
    }

    private static NoPiece of(Piece piece, Reason reason) {
        return new NoPiece(piece.id(), piece.name(), piece.outline().segments(), reason);
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
    public Map<String, Object> values() {
        return Map.of("name", name);
    }

    @Override
    public Pattern apply(Pattern pattern) {
        return pattern.piece(piece).isEmpty()
                ? pattern
                : pattern.withPieces(pattern.pieces().stream()
                                .filter(p -> !p.id().equals(piece))
                                .toList())
                        .withNoPiece(piece);
    }
}
