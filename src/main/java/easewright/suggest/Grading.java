package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Spacing;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one size lies in or on another. From one size to the next a pattern grows by shifting its corners, each by its own
 * amount, so that along an edge the distance grows evenly from corner to corner, or is nothing where corners stay; a
 * stitching line keeps its distance along each edge, and lies on the cutting line at a fold alone.
 *
 * @param most the widest distance, mm
 */
record Grading(double most) {
    /** Sizes farther apart than this are not drawn as one nest, mm. */
    static final double FARTHEST = 80;

    /** Places are looked at this near to each other along an edge, mm. */
    private static final double STEP = 6;

    /** At its ends an edge is near to others, mm. */
    private static final double AT_CORNER = 12;

    private static final int LEAST_PLACES = 5;

    /** No allowance is narrower, mm. */
    private static final double NARROWEST = 3;

    /** A distance grows if it does so by more than this, mm, and by more than this part of it. */
    private static final double GROWS = 1.5;

    private static final double GROWS_OF_ALL = 0.25;

    /** Of a stitching line more than this part of its length keeps its distance, */
    private static final double MOST_EVEN = 0.62;

    /** and less than this is apart but narrower than any allowance, or grows. */
    private static final double LEAST_GRADED = 0.12;

    /** Lines nearer than this are one, mm. */
    private static final double TOGETHER = 0.5;

    /** The one that lies in or on the other by grading, if it does. */
    static Optional<Grading> between(Outline one, Outline other) {
        boolean oneInner = Math.abs(one.signedArea()) <= Math.abs(other.signedArea());
        Outline inner = LineInside.withoutDarts(oneInner ? one : other);
        Outline outer = LineInside.withoutDarts(oneInner ? other : one);
        double most = Spacing.of(inner, outer).most();
        if (most > FARTHEST || most < GROWS) {
            return Optional.empty();
        }
        double even = 0;
        double graded = 0;
        double together = 0;
        double fold = 0;
        for (Pen pen : Pen.of(new Rider("inner", Rider.Kind.INNER, inner.segments()))) {
            for (Curve run : pen.runs()) {
                List<Double> away = away(run, outer);
                if (away.size() < LEAST_PLACES) {
                    continue;
                }
                if (isEven(away)) {
                    even += run.length();
                } else if (mean(away) < TOGETHER) {
                    together += run.length();
                    fold = Pen.isStraight(run) ? Math.max(fold, run.length()) : fold;
                } else {
                    graded += run.length();
                }
            }
        }
        // One straight edge on which both lie may be the fold of a cutting and a stitching line.
        double told = even + graded + together - fold;
        boolean grows = even < MOST_EVEN * told || graded > LEAST_GRADED * told;
        return told > 0 && grows ? Optional.of(new Grading(most)) : Optional.empty();
    }

    private static List<Double> away(Curve run, Outline outer) {
        List<Double> away = new ArrayList<>();
        double length = run.length();
        for (double at = AT_CORNER; at <= length - AT_CORNER; at += STEP) {
            away.add(outer.nearest(run.pointAtLength(at)).distance());
        }
        return away;
    }

    /** Whether the distance is that of an allowance, and the same at both ends and in the middle. */
    private static boolean isEven(List<Double> away) {
        int third = away.size() / 3;
        double first = mean(away.subList(0, third + 1));
        double middle = mean(away.subList(third, away.size() - third));
        double last = mean(away.subList(away.size() - third - 1, away.size()));
        double all = mean(away);
        double slack = Math.max(GROWS, GROWS_OF_ALL * all);
        return all >= NARROWEST && Math.abs(last - first) < slack && Math.abs(middle - (first + last) / 2) < slack;
    }

    private static double mean(List<Double> some) {
        return some.stream().mapToDouble(d -> d).average().orElse(0);
    }
}
