package easewright.editor.model;

import easewright.ease.Band;
import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Minimum;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the small bar of a level shows, all in mm of ease on one scale from {@code from} to {@code to}, which are round
 * figures in the user's unit.
 *
 * @param least   the smallest ease any source calls enough for wearing
 * @param bandFrom where the class of the first table that has a word begins, {@code bandTo} where it ends
 * @param standing the ease while nothing is tried
 */
public record EaseScale(
        double from,
        double to,
        OptionalDouble least,
        OptionalDouble bandFrom,
        OptionalDouble bandTo,
        OptionalDouble now,
        OptionalDouble wish,
        OptionalDouble standing) {
    /** How far a scale may reach, mm: so few that small changes do not move it. */
    private static final double[] REACHES = {60, 90, 120, 180, 240, 360, 480, 720, 960};

    /** Likewise below the body. */
    private static final double[] DEPTHS = {0, 20, 40, 60, 90, 120, 180, 240, 360};

    /** The same in inches. */
    private static final double[] INCHES_UP = {3, 4, 6, 8, 12, 16, 24, 32, 40};

    private static final double[] INCHES_DOWN = {0, 1, 2, 3, 4, 6, 8, 12, 16};

    /** Room beyond what has to be shown, and for what may be tried. */
    private static final double BEYOND = 1.25;

    private static final double TRIED = 2;

    /**
     * @param classes  what is said of it
     * @param asked    the least ease for wearing
     * @param standing the ease while nothing is tried: the scale is made for it and holds still under a trial
     */
    static EaseScale of(
            EaseLine line, List<Classed> classes, List<Minimum> asked, OptionalDouble standing, LengthUnit unit) {
        OptionalDouble least = asked.stream().mapToDouble(Minimum::low).min();
        Optional<Classed> said =
                classes.stream().filter(c -> c.band().isPresent()).findFirst();
        // What sources ask for, and what is wished, is mostly what is tried: the bar stays when it is reached and kept.
        boolean known = least.isPresent() || line.wish().isPresent();
        double high = least.orElse(0) * TRIED;
        double low = Math.min(0, high);
        for (OptionalDouble value : List.of(standing, line.wish())) {
            high = Math.max(high, value.orElse(0) * (known ? BEYOND : TRIED));
            low = Math.min(low, value.orElse(0) * (known ? BEYOND : TRIED));
        }
        for (OptionalDouble value : List.of(standing, line.wish())) {
            for (OptionalDouble end : band(value, classes, line)) {
                high = Math.max(high, end.orElse(0));
                low = Math.min(low, end.orElse(0));
            }
        }
        boolean inches = unit == LengthUnit.INCH;
        double step = inches ? LengthUnit.INCH.mm() : 1;
        return new EaseScale(
                0 - reaching(-low, step, inches ? INCHES_DOWN : DEPTHS),
                reaching(high, step, inches ? INCHES_UP : REACHES),
                least,
                said.map(c -> OptionalDouble.of(inMm(begin(c), c, line))).orElse(OptionalDouble.empty()),
                said.flatMap(c -> c.band().orElseThrow().to().stream()
                                .mapToObj(to -> OptionalDouble.of(inMm(to, c, line)))
                                .findFirst())
                        .orElse(OptionalDouble.empty()),
                line.ease(),
                line.wish(),
                standing);
    }

    /** Both ends of the class that an ease falls in, in the first table that has a word for it; none for none. */
    private static List<OptionalDouble> band(OptionalDouble ease, List<Classed> classes, EaseLine line) {
        if (line.body().isEmpty()) {
            return List.of();
        }
        double body = line.body().getAsDouble();
        return ease.stream()
                .boxed()
                .flatMap(mm -> classes.stream()
                        .map(c -> c.table().classify(mm, mm / body * 100))
                        .filter(c -> c.band().isPresent())
                        .limit(1))
                .flatMap(c -> Stream.of(
                        OptionalDouble.of(inMm(begin(c), c, line)),
                        c.band().orElseThrow().to().stream()
                                .mapToObj(to -> OptionalDouble.of(inMm(to, c, line)))
                                .findFirst()
                                .orElse(OptionalDouble.empty())))
                .toList();
    }

    /** What lies between two classes is called by the upper one, which thus begins where the lower one ends. */
    private static double begin(Classed classed) {
        Band band = classed.band().orElseThrow();
        int at = classed.table().bands().indexOf(band);
        return at == 0 ? band.from() : classed.table().bands().get(at - 1).to().orElse(band.from());
    }

    /** A percentage has its place on a bar of lengths by the body it is of. */
    private static double inMm(double figure, Classed classed, EaseLine line) {
        return classed.table().percent() ? figure / 100 * line.body().orElse(0) : figure;
    }

    private static double reaching(double mm, double unit, double... steps) {
        for (double step : steps) {
            if (mm <= step * unit) {
                return step * unit;
            }
        }
        return mm;
    }

    /** Up to where an ease is less than any source calls enough: one that counts as met lies beyond it. */
    public OptionalDouble shortOf() {
        return least.isPresent() ? OptionalDouble.of(least.getAsDouble() - Minimum.READ_WITHIN) : least;
    }

    /** Where a value lies on the bar, from 0 to 1. */
    public double share(double mm) {
        return Math.max(0, Math.min(1, (mm - from) / (to - from)));
    }

    /** Whether any of the class lies on the bar. */
    public boolean showsBand() {
        return bandFrom.isPresent() && beyond(bandFrom.getAsDouble()) <= 0 && beyond(bandTo.orElse(to)) >= 0;
    }

    /** Whether a value lies beyond an end of the bar: −1 below, 1 above, else 0. */
    public int beyond(double mm) {
        return mm < from ? -1 : mm > to ? 1 : 0;
    }
}
