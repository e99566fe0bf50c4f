package easewright.editor.model;

import easewright.ease.Band;
import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Minimum;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the small bar of a level shows, all in mm of ease on one scale from {@code from} to {@code to}, which are round
 * figures in the user's unit.
 *
 * @param begins  where the bar begins: no higher than {@code from}, so that zero stands in one line on all bars
 * @param least   the smallest ease any source calls enough for wearing
 * @param bandFrom where the class of the first table that has a word begins, {@code bandTo} where it ends
 * @param standing the ease while nothing is tried
 */
public record EaseScale(
        double begins,
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

    /** What reckoning may leave of a round figure, mm. */
    private static final double ROUND = 1e-6;

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
        Ends said = band(line.ease(), classes, line);
        // What sources ask for, and what is wished, is mostly what is tried: the bar stays when it is reached and kept.
        boolean known = least.isPresent() || line.wish().isPresent();
        double high = least.orElse(0) * TRIED;
        double low = Math.min(0, high);
        for (OptionalDouble value : List.of(standing, line.wish())) {
            high = Math.max(high, value.orElse(0) * (known ? BEYOND : TRIED));
            low = Math.min(low, value.orElse(0) * (known ? BEYOND : TRIED));
        }
        for (OptionalDouble value : List.of(standing, line.wish())) {
            Ends ends = band(value, classes, line);
            for (OptionalDouble end : List.of(ends.from(), ends.to())) {
                high = Math.max(high, end.orElse(0));
                low = Math.min(low, end.orElse(0));
            }
        }
        boolean inches = unit == LengthUnit.INCH;
        double step = inches ? LengthUnit.INCH.mm() : 1;
        double from = 0 - reaching(-low, step, inches ? INCHES_DOWN : DEPTHS);
        return new EaseScale(
                from,
                from,
                reaching(high, step, inches ? INCHES_UP : REACHES),
                least,
                said.from(),
                said.to(),
                line.ease(),
                line.wish(),
                standing);
    }

    /** Where a class begins and where it ends, mm of ease; "over …" has no end, and none has neither. */
    private record Ends(OptionalDouble from, OptionalDouble to) {
        static final Ends NONE = new Ends(OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The class that an ease falls in, in the first table that has a word for it. */
    private static Ends band(OptionalDouble ease, List<Classed> classes, EaseLine line) {
        if (ease.isEmpty() || line.body().isEmpty()) {
            return Ends.NONE;
        }
        double mm = ease.getAsDouble();
        double percent = mm / line.body().getAsDouble() * 100;
        return classes.stream()
                .map(c -> c.table().classify(mm, percent))
                .filter(c -> c.band().isPresent())
                .findFirst()
                .map(c -> ends(c, line))
                .orElse(Ends.NONE);
    }

    private static Ends ends(Classed classed, EaseLine line) {
        OptionalDouble to = classed.band().orElseThrow().to();
        return new Ends(
                OptionalDouble.of(inMm(begin(classed), classed, line)),
                to.isPresent() ? OptionalDouble.of(inMm(to.getAsDouble(), classed, line)) : to);
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
        double round = unit == 1 ? LengthUnit.CM.mm() : unit;
        return Math.ceil(mm / round - ROUND) * round;
    }

    /** Up to where an ease is less than any source calls enough: one that counts as met lies beyond it. */
    public OptionalDouble shortOf() {
        return least.isPresent() ? OptionalDouble.of(least.getAsDouble() - Minimum.READ_WITHIN) : least;
    }

    /** Where the mark of an ease stands, mm. */
    public double marked(double mm) {
        return Minimum.drawn(mm, least);
    }

    /** What is told of it in figures, where there is room, the most needed first: nothing, its ends and the least. */
    public List<Double> figures() {
        List<Double> told = new ArrayList<>(List.of(0.0, to));
        least.ifPresent(told::add);
        told.add(begins);
        return told;
    }

    /** How much of it lies below zero, in parts of what lies above. */
    double below() {
        return -from / to;
    }

    /**
     * With as much of it below zero as on another bar.
     *
     * @param below in parts of what lies above
     */
    EaseScale aligned(double below, LengthUnit unit) {
        boolean inches = unit == LengthUnit.INCH;
        double step = inches ? LengthUnit.INCH.mm() : 1;
        double simple = inches ? LengthUnit.INCH.mm() / 2 : 5;
        // The bar reaches farther where it ends in a figure that anybody reads.
        double end = Arrays.stream(inches ? INCHES_UP : REACHES)
                .map(mm -> mm * step)
                .filter(mm -> mm >= to && Math.abs(Math.IEEEremainder(below * mm, simple)) < ROUND)
                .findFirst()
                .orElse(to);
        double start = Math.min(from, 0 - below * end);
        return new EaseScale(start, from, end, least, bandFrom, bandTo, now, wish, standing);
    }

    /** Where a value lies on the bar, from 0 to 1. */
    public double share(double mm) {
        return Math.max(0, Math.min(1, (mm - begins) / (to - begins)));
    }

    /** Whether any of the class lies on the bar. */
    public boolean showsBand() {
        return bandFrom.isPresent() && beyond(bandFrom.getAsDouble()) <= 0 && beyond(bandTo.orElse(to)) >= 0;
    }

    /** Whether a value lies beyond an end of the bar: −1 below, 1 above, else 0. */
    public int beyond(double mm) {
        return mm < begins ? -1 : mm > to ? 1 : 0;
    }
}
