package easewright.measure;

import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A piece of which both layers seem to count in a girth: it is cut twice for each place at which it is sewn, or is a yoke
 * cut twice of which no seam is marked. A girth has each place once (common practice: a yoke, a cuff, a band is lined
 * with itself).
 *
 * @param piece its id
 * @param level name of the level
 */
public record LinedWithItself(String piece, String level) {
    /** Mostly lined with itself. */
    private static final java.util.regex.Pattern YOKE = java.util.regex.Pattern.compile("\\byokes?\\b");

    /** All in a pattern, in the order of its girths. */
    public static List<LinedWithItself> of(Pattern pattern, GarmentMeasures measures) {
        List<Pattern> garments = PatternPart.bySize(pattern).values().stream()
                .map(PatternPart::alone)
                .toList();
        List<String> known = pattern.pieces().stream()
                .filter(p -> p.layers() == 1 && p.times() % 2 == 0 && !LayerCounted.isLayer(p))
                .filter(p -> garments.stream()
                        .filter(g -> g.pieces().stream().anyMatch(in -> in.id().equals(p.id())))
                        .anyMatch(g -> isDouble(g, p)))
                .map(Piece::id)
                .toList();
        List<LinedWithItself> all = new ArrayList<>();
        for (Girth girth :
                known.isEmpty() ? List.<Girth>of() : measures.inEverySize().girths()) {
            for (LevelWidth width : girth.parts()) {
                pattern.pieces().stream()
                        .filter(p -> p.id().equals(width.pieceId()) && known.contains(p.id()))
                        .filter(p -> width.count() > 0 && countsTwice(p, girth.level()))
                        .forEach(p -> all.add(
                                new LinedWithItself(p.id(), girth.level().name())));
            }
        }
        return all.stream().distinct().toList();
    }

    /** Of what is cut as a pair, the two halves may be marked as sewn to one of two edges only. */
    private static boolean countsTwice(Piece piece, Level level) {
        boolean whole = level.limb() || piece.onFold() || BothSides.on(piece);
        return whole && piece.count(level) > piece.toBuilder().layers(2).build().count(level);
    }

    private static boolean isDouble(Pattern garment, Piece piece) {
        List<Mate> sewn = garment.mates().stream()
                .filter(m -> on(garment, m.first(), piece) || on(garment, m.second(), piece))
                .toList();
        if (sewn.isEmpty()) {
            return YOKE.matcher(piece.name().toLowerCase(Locale.ROOT)).find();
        }
        return piece.edges().stream().anyMatch(e -> {
            double needed = sewn.stream()
                    .mapToDouble(m -> needed(garment, m, piece, e.name()))
                    .sum();
            return needed > 0 && piece.timesThere() == 2 * needed;
        });
    }

    private static boolean on(Pattern garment, List<EdgeRef> side, Piece piece) {
        return side.stream().anyMatch(r -> isOf(garment, r, piece));
    }

    private static boolean isOf(Pattern garment, EdgeRef ref, Piece piece) {
        return garment.piece(ref.piece()).filter(p -> p.id().equals(piece.id())).isPresent();
    }

    /** How many of the cut edges of this name a seam takes, by what else is cut for it. */
    private static double needed(Pattern garment, Mate mate, Piece piece, String edge) {
        return needed(garment, mate.first(), mate.second(), piece, edge)
                + needed(garment, mate.second(), mate.first(), piece, edge);
    }

    private static double needed(Pattern garment, List<EdgeRef> side, List<EdgeRef> other, Piece piece, String edge) {
        int own = side.stream()
                .filter(r -> r.edge().equals(edge) && isOf(garment, r, piece))
                .mapToInt(EdgeRef::times)
                .sum();
        double sewn = other.stream()
                .flatMap(r -> sewn(garment, r).stream())
                .min(Double::compare)
                .orElse(0.0);
        return own * sewn;
    }

    /** How often a seam can be sewn with what is cut of an edge. */
    private static Optional<Double> sewn(Pattern garment, EdgeRef ref) {
        return garment.piece(ref.piece()).map(p -> (double) p.timesThere() / ref.times());
    }
}
