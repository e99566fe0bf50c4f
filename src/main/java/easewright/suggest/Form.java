package easewright.suggest;

import easewright.pattern.EdgeRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The outline of a piece as a ring of runs, and what can be told of it by form alone. Runs are known by their numbers
 * in the drawn order.
 *
 * @param runs  at least two
 * @param darts how many dart mouths lie on each
 * @param ticks where notches lie on each, as parts of its length, rising
 * @param fold  the one on the fold, if any
 */
record Form(List<Run> runs, List<Integer> darts, List<List<Double>> ticks, OptionalInt fold) {
    /** A curve that bends into the piece by at least this much of its chord is an armhole, a neck or a crotch. */
    private static final double HOLLOW = -0.05;

    private static final double CAP = 0.13;

    Form {
        runs = List.copyOf(runs);
        darts = List.copyOf(darts);
        ticks = List.copyOf(ticks);
    }

    int size() {
        return runs.size();
    }

    Run run(int i) {
        return runs.get(Math.floorMod(i, runs.size()));
    }

    private int number(int i) {
        return Math.floorMod(i, runs.size());
    }

    private IntStream all() {
        return IntStream.range(0, runs.size());
    }

    double top() {
        return runs.stream().mapToDouble(r -> r.middle().y()).min().orElseThrow();
    }

    double bottom() {
        return runs.stream().mapToDouble(r -> r.middle().y()).max().orElseThrow();
    }

    /** From the middle of its highest run to that of its lowest, mm. */
    double height() {
        return bottom() - top();
    }

    /** How far those runs reach to the left that begin above some place. */
    double left(double above) {
        return above(above).mapToDouble(r -> r.box().minX()).min().orElse(Double.POSITIVE_INFINITY);
    }

    double right(double above) {
        return above(above).mapToDouble(r -> r.box().maxX()).max().orElse(Double.NEGATIVE_INFINITY);
    }

    /** From end to end across the grain, mm. */
    double width() {
        return right(Double.POSITIVE_INFINITY) - left(Double.POSITIVE_INFINITY);
    }

    /** From end to end along the grain, mm. */
    double length() {
        return runs.stream().mapToDouble(r -> r.box().maxY()).max().orElseThrow()
                - runs.stream().mapToDouble(r -> r.box().minY()).min().orElseThrow();
    }

    private Stream<Run> above(double place) {
        return runs.stream().filter(r -> r.box().minY() < place);
    }

    /** The lowest run that lies across. */
    OptionalInt lowest() {
        return flat(Comparator.comparingDouble((Integer i) -> -run(i).middle().y()));
    }

    /** The highest run that lies across. */
    OptionalInt highest() {
        return flat(Comparator.comparingDouble((Integer i) -> run(i).middle().y()));
    }

    private OptionalInt flat(Comparator<Integer> order) {
        return all().filter(i -> run(i).isFlat() && (fold.isEmpty() || fold.getAsInt() != i))
                .boxed()
                .min(order)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    boolean isHollow(int i) {
        return run(i).bulge() < HOLLOW;
    }

    /** A shoulder slants in the upper part, straight but for its darts, between two hollows (neck and armhole). */
    OptionalInt shoulder() {
        return shoulders().findFirst();
    }

    /** Whether it has the shoulders of both sides. */
    boolean hasBothShoulders() {
        return shoulders().count() > 1;
    }

    private IntStream shoulders() {
        return all().filter(i -> isHollow(i - 1) && isHollow(i + 1))
                .filter(i -> run(i).middle().y() < top() + 0.4 * height() + 1)
                .filter(i -> run(i).isStraight() || darts.get(i) > 0)
                .filter(i -> run(i).lean() > 35);
    }

    /** Of the two hollows beside the shoulder, the armhole reaches lower down. */
    int armhole(int shoulder) {
        return lower(shoulder - 1) > lower(shoulder + 1) ? number(shoulder - 1) : number(shoulder + 1);
    }

    private double lower(int i) {
        Run r = run(i);
        return r.middle().y() + Math.abs(r.across().y()) / 2;
    }

    /** A cap is the highest run and arches over the whole piece between two like sides. */
    OptionalInt cap() {
        OptionalInt high = highest();
        if (high.isEmpty() || size() < 4 || fold.isPresent()) {
            return OptionalInt.empty();
        }
        int i = high.getAsInt();
        double one = run(i - 1).length();
        double two = run(i + 1).length();
        boolean arched = run(i).bulge() > CAP && Math.abs(run(i).across().y()) < 0.2 * run(i).span();
        boolean likeSides = Math.abs(one - two) < 0.12 * Math.max(one, two);
        return arched && likeSides && darts.get(i) == 0 ? high : OptionalInt.empty();
    }

    /** A crotch is a hollow between the waist above and an inner leg seam that runs down to the hem. */
    OptionalInt crotch() {
        OptionalInt high = highest();
        OptionalInt low = lowest();
        if (high.isEmpty() || low.isEmpty() || size() < 5) {
            return OptionalInt.empty();
        }
        int waist = high.getAsInt();
        for (int side : new int[] {1, -1}) {
            int hollow = number(waist + side);
            int leg = number(waist + 2 * side);
            int next = number(waist + 3 * side);
            boolean fits = isHollow(hollow)
                    && hollow != low.getAsInt()
                    && next == low.getAsInt()
                    && run(leg).lean() < 35
                    && run(hollow).length() < run(leg).length() * 1.6
                    && run(hollow).middle().y() < run(leg).middle().y();
            if (fits) {
                return OptionalInt.of(hollow);
            }
        }
        return OptionalInt.empty();
    }

    /** The runs that stand straight along the grain, other than the fold. */
    List<Integer> upright() {
        List<Integer> upright = new ArrayList<>();
        all().filter(i -> run(i).isStraight() && run(i).lean() < 2.5)
                .filter(i -> fold.isEmpty() || fold.getAsInt() != i)
                .forEach(upright::add);
        return upright;
    }

    /** The two longest runs of a strip, if it is one. */
    List<Integer> strip() {
        List<Integer> byLength = new ArrayList<>(all().boxed().toList());
        byLength.sort(Comparator.comparingDouble((Integer i) -> -run(i).length()));
        boolean strip = size() >= 4
                && run(byLength.get(1)).length() > 3 * run(byLength.get(2)).length()
                && run(byLength.get(1)).length() > 0.8 * run(byLength.get(0)).length();
        return strip ? byLength.subList(0, 2) : List.of();
    }

    int ticksOn(int i) {
        return ticks.get(number(i)).size();
    }

    /** How many notches lie in the first and in the second half of a run, those about its middle left out. */
    int ticksInHalf(int i, boolean second) {
        return (int) ticks.get(number(i)).stream()
                .filter(t -> second ? t > 0.54 : t < 0.46)
                .count();
    }

    int dartsOn(int i) {
        return darts.get(number(i));
    }

    /** Whether a run goes straight on from another, so that they are parted by a mark and not by a corner. */
    boolean continues(int i, int next) {
        return Turns.between(run(i).across(), run(next).across()) < 5;
    }

    /** Whether two runs share a corner. */
    boolean areNeighbours(int i, int j) {
        int apart = Math.abs(number(i) - number(j));
        return apart == 1 || apart == size() - 1;
    }

    /** An edge's role and name. */
    record Label(EdgeRole role, String name) {}
}
