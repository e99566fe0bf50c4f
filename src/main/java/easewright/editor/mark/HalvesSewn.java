package easewright.editor.mark;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.stream.Stream;

/**
 * Halves that are sewn to a whole piece: a neck band that is cut whole goes round the neck of a front and a back of which
 * each is drawn by half. Among themselves halves are sewn half by half and count once.
 */
final class HalvesSewn {
    private HalvesSewn() {}

    /** How often the shape of an edge is in the garment, layers on each other as one. */
    private static int times(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).map(Piece::timesBeside).orElse(1);
    }

    private static boolean isHalf(Pattern pattern, EdgeRef ref) {
        return times(pattern, ref) > 1;
    }

    private static Stream<EdgeRef> all(Mate mate) {
        return Stream.concat(mate.first().stream(), mate.second().stream());
    }

    /**
     * The seam with its halves counted as often as they are in the garment, where a whole piece is sewn to them; the same
     * one where none is, or where they fit better as they are: one front shoulder goes on one half of a back.
     */
    static Mate counted(Pattern pattern, Mate mate) {
        boolean mixed = all(mate).anyMatch(r -> isHalf(pattern, r)) && all(mate).anyMatch(r -> !isHalf(pattern, r));
        if (!mixed) {
            return mate;
        }
        Mate counted =
                new Mate(mate.name(), all(pattern, mate.first()), all(pattern, mate.second()), mate.declaredEase());
        return off(pattern, counted) < off(pattern, mate) ? counted : mate;
    }

    private static List<EdgeRef> all(Pattern pattern, List<EdgeRef> side) {
        return side.stream()
                .map(r -> new EdgeRef(r.piece(), r.edge(), times(pattern, r)))
                .toList();
    }

    /** One more edge of a side, counted as the others are. */
    static EdgeRef like(Pattern pattern, List<EdgeRef> side, EdgeRef edge) {
        boolean counted = side.stream().anyMatch(r -> isHalf(pattern, r) && r.times() == times(pattern, r));
        return counted ? new EdgeRef(edge.piece(), edge.edge(), times(pattern, edge)) : edge;
    }

    /** The halves that count as often as they are in the garment because a whole piece is sewn to them. */
    static List<EdgeRef> halves(Pattern pattern, Mate mate) {
        boolean whole = all(mate).anyMatch(r -> !isHalf(pattern, r));
        return all(mate)
                .filter(r -> whole && isHalf(pattern, r) && r.times() == times(pattern, r))
                .toList();
    }

    /** By how much the sides differ as drawn, mm. */
    private static double off(Pattern pattern, Mate mate) {
        return Math.abs(length(pattern, mate.first()) - length(pattern, mate.second()) - mate.declaredEase());
    }

    private static double length(Pattern pattern, List<EdgeRef> side) {
        return side.stream().mapToDouble(r -> r.times() * length(pattern, r)).sum();
    }

    private static double length(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece())
                .flatMap(p ->
                        p.edge(ref.edge()).map((Edge e) -> e.on(p.outline()).length()))
                .orElse(0.0);
    }
}
