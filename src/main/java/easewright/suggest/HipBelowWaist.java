package easewright.suggest;

import easewright.geom.Crossing;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where the hip lies on skirts and trousers of which only the waist is known. The full hip of grown-ups lies 8–9 in below
 * the waist as a rule (docs/sources.md, 4, second-hand; 7–9 in at weaverdee.com, read). On children it lies higher, which
 * is put in proportion to the waist here and is common practice. It is a guess: where the body was measured counts.
 */
final class HipBelowWaist {
    static final String LEVEL = "hip";

    private static final double GROWN_UP = 200;

    /** A waist narrower than this, sewn, is a child's, mm. */
    private static final double SMALLEST_GROWN_UP = 600;

    private static final double OF_CHILDS_WAIST = 0.27;

    /** A garment that ends nearer below has no hip of its own. */
    private static final double MOST_OF_LENGTH = 0.6;

    private static final double STEP = 10;

    private HipBelowWaist() {}

    /** How far below, mm, where the waists of all the pieces are sewn together. */
    static double depth(List<Piece> pieces) {
        double waist = pieces.stream().mapToDouble(HipBelowWaist::sewn).sum();
        return waist >= SMALLEST_GROWN_UP ? GROWN_UP : STEP * Math.round(OF_CHILDS_WAIST * waist / STEP);
    }

    static Optional<Edge> waist(Piece piece) {
        List<Edge> waists =
                piece.edges().stream().filter(e -> e.role() == EdgeRole.WAIST).toList();
        boolean hem = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.HEM);
        boolean above =
                piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.SHOULDER || e.role() == EdgeRole.ARMHOLE);
        return waists.size() == 1 && hem && !above ? Optional.of(waists.get(0)) : Optional.empty();
    }

    private static double sewn(Piece piece) {
        double across = waist(piece).map(e -> e.from().distance(e.to())).orElse(0.0);
        double darts = piece.darts().stream()
                .filter(d -> d.otherPoint().isEmpty())
                .mapToDouble(Dart::intake)
                .sum();
        return Math.max(0, across - darts) * piece.timesBeside();
    }

    /**
     * The level so far below the waist on a piece, at its side, where the levels of front and back meet; empty where the
     * piece hardly reaches so far.
     */
    static Optional<LevelMark> on(Piece piece, double depth) {
        Point centre = Reference.of(piece);
        Edge waist = waist(piece).orElseThrow();
        Point from = waist.from().distance(centre) < waist.to().distance(centre) ? waist.to() : waist.from();
        // The grain may be marked upwards.
        Point down = Run.Frame.along(piece.grainDirection()).down();
        double length = piece.outline().segments().stream()
                .mapToDouble(s -> s.start().minus(from).dot(down))
                .max()
                .orElse(0);
        List<Point> across = piece.outline().crossings(from.plus(down.times(depth)), down.quarterTurned()).stream()
                .sorted(Comparator.comparingDouble(Crossing::along))
                .map(Crossing::point)
                .toList();
        return across.size() < 2 || depth > MOST_OF_LENGTH * length
                ? Optional.empty()
                : Optional.of(LevelMark.through(LEVEL, across.get(0).towards(across.get(across.size() - 1), 0.5))
                        .withReference(centre));
    }
}
