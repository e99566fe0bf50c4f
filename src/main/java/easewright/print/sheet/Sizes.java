package easewright.print.sheet;

import easewright.pattern.Piece;
import easewright.pattern.SizeNames;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The sizes of a pattern that is drawn in several: those marked on its pieces, or where none is marked those that the
 * pieces' names end in.
 */
final class Sizes {
    private final Map<String, String> byPiece = new LinkedHashMap<>();

    private Sizes() {}

    static Sizes of(List<Piece> pieces) {
        Sizes sizes = new Sizes();
        pieces.forEach(p -> p.size().ifPresent(size -> sizes.byPiece.put(p.id(), size)));
        if (sizes.byPiece.isEmpty()) {
            Map<String, String> named =
                    SizeNames.in(pieces.stream().map(Piece::name).toList());
            for (Piece piece : pieces) {
                if (named.containsKey(piece.name())) {
                    sizes.byPiece.put(piece.id(), named.get(piece.name()));
                }
            }
        }
        return sizes;
    }

    /** The piece's size; empty where the pattern comes in one. */
    String of(Piece piece) {
        return byPiece.getOrDefault(piece.id(), "");
    }

    Set<String> all() {
        return new LinkedHashSet<>(byPiece.values());
    }
}
