package easewright.suggest;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The edge of a piece that may be its centre: straight along the grain, where the piece ends sideways.
 *
 * @param run       its number
 * @param reachesOut the piece reaches out beyond it at its foot, as for a vent
 */
record CentreEdge(int run, boolean reachesOut) {
    /** A centre takes at least this part of the piece's length along the grain. */
    private static final double LEAST_OF_LENGTH = 0.4;

    /** A centre leans less than this from the grain, degrees. */
    private static final double UPRIGHT = 2.5;

    /** A centre lies this near to where the piece ends sideways, mm. */
    static final double AT_THE_SIDE = 3;

    /** A vent reaches out by more than this, mm. */
    private static final double LEAST_VENT = 12;

    /** The one on the fold, else the longest of those that may be it. */
    static Optional<CentreEdge> of(Form form) {
        IntStream runs =
                form.fold().isPresent() ? IntStream.of(form.fold().getAsInt()) : IntStream.range(0, form.size());
        return runs.boxed()
                .filter(i -> mayBe(form, form.run(i)))
                .max(Comparator.comparingDouble(i -> form.run(i).length()))
                .map(i -> new CentreEdge(i, reachesOut(form, form.run(i))));
    }

    private static boolean mayBe(Form form, Run run) {
        return run.isStraight()
                && run.lean() < UPRIGHT
                && run.length() >= LEAST_OF_LENGTH * form.height()
                && (atLeft(form, run) || atRight(form, run));
    }

    /** What lies below it is no matter. */
    private static boolean atLeft(Form form, Run run) {
        return run.middle().x() - form.left(run.box().maxY() - AT_THE_SIDE) < AT_THE_SIDE;
    }

    private static boolean atRight(Form form, Run run) {
        return form.right(run.box().maxY() - AT_THE_SIDE) - run.middle().x() < AT_THE_SIDE;
    }

    private static boolean reachesOut(Form form, Run run) {
        double x = run.middle().x();
        double beyond =
                atLeft(form, run) ? x - form.left(Double.POSITIVE_INFINITY) : form.right(Double.POSITIVE_INFINITY) - x;
        return beyond > LEAST_VENT;
    }
}
