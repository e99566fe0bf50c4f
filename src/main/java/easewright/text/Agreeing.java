package easewright.text;

import java.util.Map;
import java.util.Optional;

/**
 * Two lengths that one sentence compares, shown with what they differ by: a reader who takes the one from the other finds
 * the difference that is told. Each rounded by itself, 2 11/16 in and 2 13/16 in could be told as 1/16 in apart. Or what
 * a change did to two lengths, with what they were off before and are off now.
 *
 * @param ease what the first is meant to be longer by, mm; of a change, what it was shorter by before
 */
record Agreeing(double first, double second, double ease, LengthUnit unit) {
    /** What is shown may be off the true difference by this much, mm. */
    private static final double STRAY = 25.4 / Lengths.FINEST;

    /**
     * Of the values {@code first}, {@code second} and {@code ease.signed}, or of what a change did: {@code first.signed},
     * {@code second.signed} and {@code was.signed}; empty where these are not single lengths.
     */
    static Optional<Agreeing> of(Map<String, ?> values, LengthUnit unit) {
        return values.containsKey("first")
                ? of(values, "first", "second", length(values, "ease.signed"), unit)
                : of(
                        values,
                        "first.signed",
                        "second.signed",
                        length(values, "was.signed").map(mm -> -mm),
                        unit);
    }

    private static Optional<Agreeing> of(
            Map<String, ?> values, String first, String second, Optional<Double> ease, LengthUnit unit) {
        return single(values.get(first))
                .flatMap(one -> single(values.get(second))
                        .flatMap(other -> ease.map(meant -> new Agreeing(one, other, meant, unit))));
    }

    private static Optional<Double> length(Map<String, ?> values, String key) {
        return values.get(key) == null ? Optional.of(0.0) : single(values.get(key));
    }

    /** A length, or the one that all sizes have, mm. */
    static Optional<Double> single(Object value) {
        if (value instanceof Span span && span.low() == span.high()) {
            return Optional.of(span.low());
        }
        return value instanceof Double mm ? Optional.of(mm) : Optional.empty();
    }

    /**
     * One of the lengths, or by its name what the one is longer by ({@code more}), what they are apart ({@code apart}),
     * or off ({@code drift.signed}, and after a change {@code now.signed}), mm.
     */
    String said(String name, double mm) {
        Rounding as = rounding();
        double off = left(as);
        return switch (name) {
            case "more" -> as.said(Math.abs(more(as)));
            case "apart" -> off == 0 ? Lengths.format(mm, unit) : as.said(Math.abs(off));
            case "drift.signed", "now.signed" -> off == 0 ? Lengths.signed(mm, unit) : signed(off, as);
            default -> name.endsWith(".signed") ? signed(mm, as) : as.said(mm);
        };
    }

    /** What they are off as the lengths beside it are shown, mm; the true one where those show none. */
    double off() {
        double left = left(rounding());
        return left == 0 ? first - second - ease : left;
    }

    /** What the first is longer by as the lengths are shown, mm; below 0 where the second is. */
    double more() {
        return more(rounding());
    }

    /**
     * By how much a length is less than one that is told as it is, mm: what is left of that beside the length as it is
     * shown, unless rounding it made that another difference.
     */
    static double under(double mm, double exactly, LengthUnit unit) {
        double shown = Lengths.shown(mm, unit);
        return exactly - (Math.abs(shown - mm) <= STRAY ? shown : mm);
    }

    private String signed(double mm, Rounding as) {
        String text = as.said(mm);
        return mm > 0 && !text.equals(as.said(0)) ? "+" + text : text;
    }

    /** As lengths are mostly shown or, where the difference of what is shown is not the true one, as much finer as it takes. */
    private Rounding rounding() {
        Rounding tape = new Rounding(unit, 0);
        double off = first - second - ease;
        double left = left(tape);
        if (unit == LengthUnit.INCH) {
            Rounding finer = new Rounding(unit, 25.4 / (2 * Lengths.SIXTEENTHS));
            return Math.abs(left - off) <= STRAY
                    ? tape
                    : Math.abs(left(finer) - off) <= STRAY ? finer : new Rounding(unit, STRAY);
        }
        // As a tape is read, as long as what is left then is just what is told of the true difference.
        boolean tells =
                Math.abs(tape.shown(left) - left) < 1e-6 && tape.said(left).equals(tape.said(off));
        return tells ? tape : new Rounding(unit, Lengths.TENTH);
    }

    private double left(Rounding as) {
        // To a millionth, so that what is nothing is nothing.
        return Math.rint((more(as) - as.shown(ease)) * 1e6) / 1e6;
    }

    private double more(Rounding as) {
        return Math.rint((as.shown(first) - as.shown(second)) * 1e6) / 1e6;
    }

    /**
     * To what the lengths of one sentence are rounded.
     *
     * @param step mm; 0 as lengths are shown that stand by themselves
     */
    private record Rounding(LengthUnit unit, double step) {
        String said(double mm) {
            return step == 0 ? Lengths.format(mm, unit) : Lengths.format(mm, unit, step);
        }

        /** Halves away from nothing, mm. */
        double shown(double mm) {
            return step == 0 ? Lengths.shown(mm, unit) : Math.signum(mm) * Lengths.steps(Math.abs(mm), step) * step;
        }
    }
}
