package easewright.svg;

import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The lengths in a pattern that people stated rather than drew: allowances, overlaps and declared ease. They are true
 * of the paper whatever the drawing's scale; but where they were taken from a drawing at the wrong scale, they are
 * wrong by the same factor.
 */
final class StatedLengths {
    private StatedLengths() {}

    /** How many there are that are not 0. */
    static int count(Pattern pattern) {
        int count = 0;
        for (Piece piece : pattern.pieces()) {
            count += piece.allowance() != 0 ? 1 : 0;
            count += (int) piece.edges().stream()
                    .filter(e -> e.allowance().orElse(0) != 0)
                    .count();
            count += (int) piece.levels().stream().filter(l -> l.overlap() != 0).count();
        }
        return count
                + (int) pattern.mates().stream()
                        .filter(m -> m.declaredEase() != 0)
                        .count();
    }

    static Pattern scaled(Pattern pattern, double factor) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            List<Edge> edges =
                    piece.edges().stream().map(e -> scaled(e, factor)).toList();
            List<LevelMark> levels =
                    piece.levels().stream().map(l -> scaled(l, factor)).toList();
            pieces.add(piece.toBuilder()
                    .drawn(piece.drawn(), piece.allowance() * factor)
                    .edges(edges)
                    .levels(levels)
                    .build());
        }
        List<Mate> mates = pattern.mates().stream()
                .map(m -> new Mate(m.name(), m.first(), m.second(), m.declaredEase() * factor))
                .toList();
        return pattern.withPieces(pieces).withMates(mates);
    }

    private static Edge scaled(Edge e, double factor) {
        OptionalDouble own = e.allowance();
        return own.isEmpty()
                ? e
                : new Edge(
                        e.name(),
                        e.role(),
                        e.from(),
                        e.to(),
                        e.isProtected(),
                        OptionalDouble.of(own.getAsDouble() * factor));
    }

    private static LevelMark scaled(LevelMark l, double factor) {
        return new LevelMark(
                l.level(), l.through(), l.along(), l.turn(), l.counts(), l.overlap() * factor, l.span(), l.reference());
    }
}
