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
     * Of the values {@code first}, {@code second} and {@code ease.signed}, or of a change {@code first.signed},
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
     * One of the lengths, or by its name what they are apart ({@code apart}), or off ({@code drift.signed}, and after a
     * change {@code now.signed}), mm.
     */
    String said(String name, double mm) {
        int parts = parts();
        double off = left(parts);
        return switch (name) {
            case "apart" -> off == 0 ? Lengths.format(mm, unit) : Lengths.format(Math.abs(off), unit, parts);
            case "drift.signed", "now.signed" -> off == 0 ? Lengths.signed(mm, unit) : signed(off, parts);
            default -> name.endsWith(".signed") ? signed(mm, parts) : Lengths.format(mm, unit, parts);
        };
    }

    /** What they are off as the lengths beside it are shown, mm; the true one where those show none. */
    double off() {
        double left = left(parts());
        return left == 0 ? first - second - ease : left;
    }

    private String signed(double mm, int parts) {
        String text = Lengths.format(mm, unit, parts);
        return mm > 0 && !text.equals(Lengths.format(0, unit)) ? "+" + text : text;
    }

    /** The coarsest parts of an inch with which the difference of what is shown is the true one. */
    private int parts() {
        int parts = Lengths.SIXTEENTHS;
        while (parts < Lengths.FINEST && Math.abs(left(parts) - (first - second - ease)) > STRAY) {
            parts *= 2;
        }
        return parts;
    }

    private double left(int parts) {
        double step = unit == LengthUnit.INCH ? 25.4 / parts : 0.1;
        return (steps(first, step) - steps(second, step) - steps(ease, step)) * step;
    }

    /** Halves away from nothing, as they are shown. */
    private static long steps(double mm, double step) {
        return (long) Math.signum(mm) * Lengths.steps(Math.abs(mm), step);
    }
}
