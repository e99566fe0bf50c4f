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
public final class StatedLengths {
    private StatedLengths() {}

    /** Those that are not 0, mm; one for each place where it is stated. */
    public static List<Double> of(Pattern pattern) {
        List<Double> stated = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            stated.add(piece.allowance());
            piece.edges().forEach(e -> stated.add(e.allowance().orElse(0)));
            piece.levels().forEach(l -> stated.add(l.overlap()));
        }
        pattern.mates().forEach(m -> stated.add(m.declaredEase()));
        stated.removeIf(mm -> mm == 0);
        return stated;
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
        return l.overlap() == 0 ? l : l.withOverlap(l.overlap() * factor);
    }
}
