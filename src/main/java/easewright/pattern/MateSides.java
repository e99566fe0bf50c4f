package easewright.pattern;

import java.util.List;

/**
 * What a person would call the two sides of a seam: the pieces of each, or, where both sides lie on the same pieces, the
 * pieces with their edges.
 */
public record MateSides(List<String> first, List<String> second) {
    public MateSides {
        first = List.copyOf(first);
        second = List.copyOf(second);
    }

    public static MateSides of(Pattern pattern, Mate mate) {
        MateSides pieces = new MateSides(pieces(pattern, mate.first()), pieces(pattern, mate.second()));
        return pieces.first.equals(pieces.second)
                ? new MateSides(edges(pattern, mate.first()), edges(pattern, mate.second()))
                : pieces;
    }

    private static List<String> pieces(Pattern pattern, List<EdgeRef> side) {
        return side.stream().map(ref -> piece(pattern, ref)).distinct().toList();
    }

    private static List<String> edges(Pattern pattern, List<EdgeRef> side) {
        return side.stream()
                .map(ref -> piece(pattern, ref) + " " + ref.edge())
                .distinct()
                .toList();
    }

    private static String piece(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).map(Piece::name).orElse(ref.piece());
    }
}
