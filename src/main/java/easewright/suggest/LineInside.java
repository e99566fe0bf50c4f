package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Spacing;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a line that may be sewn lies inside one that may be cut. Darts cut into the inner line do not count: the outer one
 * runs across their mouths, or around what is folded there. Each edge may have an allowance of its own, and none where
 * both are one line, as on a fold.
 */
final class LineInside {
    /** The widest allowance, a hem's, mm. */
    private static final double WIDEST = 70;

    /** The widest allowance on most of a piece, mm. */
    private static final double WIDEST_SEAM = 30;

    /** So much of what has an allowance has the usual one; the smaller size in a nest lies at many distances. */
    private static final double LEAST_ALIKE = 0.4;

    /** Or so much has that of its own edge. */
    private static final double LEAST_ALIKE_BY_EDGE = 0.8;

    /** Places are looked at this near to each other along an edge, mm. */
    private static final double STEP = 8;

    /** A shorter run tells nothing of whether its distance is even, mm. */
    private static final double SHORT_RUN = 4 * STEP;

    private final Outline inner;
    private final Outline outer;
    private final Spacing spacing;

    LineInside(Outline drawn, Outline outer) {
        this.inner = withoutDarts(drawn);
        this.outer = outer;
        this.spacing = Spacing.of(inner, outer);
    }

    /** The line with the darts that are cut into it closed over their mouths. */
    static Outline withoutDarts(Outline drawn) {
        Piece bare = Piece.bare("inner", drawn);
        List<Dart> darts = DartShapes.on(bare);
        return darts.isEmpty()
                ? drawn
                : StitchOutline.of(bare.toBuilder().darts(darts).build()).outline();
    }

    /** The distance on most of it, mm. */
    double usual() {
        return spacing.usual();
    }

    /** The widest distance, mm. */
    double most() {
        return spacing.most();
    }

    /** The usual distance of each edge that is long enough to tell, and at which the two are apart, mm. */
    private DoubleSummaryStatistics byEdge() {
        return runs().filter(run -> run.length() >= SHORT_RUN)
                .map(run -> Spacing.of(run.segments(), STEP, outer))
                .filter(Spacing::isApart)
                .mapToDouble(Spacing::usual)
                .summaryStatistics();
    }

    /** The least and the widest of the distances that edges have; empty where all have about the same. */
    Optional<Span> spread() {
        DoubleSummaryStatistics edges = byEdge();
        return edges.getMax() - edges.getMin() > AllowanceSpread.EVEN
                ? Optional.of(new Span(Rounding.meant(edges.getMin()), Rounding.meant(edges.getMax())))
                : Optional.empty();
    }

    /** From {@code least} to {@code most}, mm. */
    record Span(double least, double most) {}

    private Stream<Curve> runs() {
        return Pen.of(new Rider("inner", Rider.Kind.INNER, inner.segments())).stream()
                .flatMap(pen -> pen.runs().stream());
    }

    /** Whether there is any space between the two to speak of. */
    boolean isApart() {
        return spacing.isApart();
    }

    boolean isStitchingLine() {
        return most() <= WIDEST
                && usual() <= WIDEST_SEAM
                && isApart()
                && (spacing.evenness() >= LEAST_ALIKE || isEvenByEdge());
    }

    private boolean isEvenByEdge() {
        double apart = 0;
        double alike = 0;
        for (Curve run : runs().toList()) {
            Spacing own = Spacing.of(run.segments(), STEP, outer);
            alike += run.length() < SHORT_RUN ? 0 : own.alike();
            apart += own.apart().size();
        }
        return alike >= LEAST_ALIKE_BY_EDGE * apart;
    }
}
