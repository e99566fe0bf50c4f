package easewright.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What the same piece of a garment is in all its sizes: called alike but for the size, whatever the capitals, and of one
 * side.
 *
 * @param name without size and side, in small letters
 */
public record PieceKind(String name, Side side) {
    public PieceKind {
        name = name.toLowerCase(Locale.ROOT);
    }

    /**
     * The pieces of which the size is known, those of a kind together, in the order of the pattern. A kind of which one
     * size has two is left out: nobody knows which of them is meant.
     */
    public static Map<PieceKind, List<Piece>> inSizes(Pattern pattern) {
        Map<PieceKind, List<Piece>> alike = new LinkedHashMap<>();
        Map<PieceKind, Set<String>> sizes = new HashMap<>();
        Set<PieceKind> twice = new HashSet<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.size().isPresent()) {
                PieceKind kind = piece.kind();
                alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(piece);
                if (!sizes.computeIfAbsent(kind, k -> new HashSet<>())
                        .add(piece.size().get())) {
                    twice.add(kind);
                }
            }
        }
        alike.keySet().removeAll(twice);
        return alike;
    }
}
