package easewright.text;

import java.util.Map;
import java.util.Optional;

/**
 * Two lengths that one sentence compares, shown with what they differ by: a reader who takes the one from the other finds
 * the difference that is told. Each rounded by itself, 61.6 cm and 61.7 cm could be told as 0.12 cm apart. Or what
 * a change did to two lengths, with what they were off before and are off now. Inches are told in {@link Sixteenths}.
 *
 * @param ease what the first is meant to be longer by, mm; of a change, what it was shorter by before
 */
record Agreeing(double first, double second, double ease, Words words) {
    /** What is shown may be off the true difference by this much, mm. */
    private static final double STRAY = 25.4 / Lengths.FINEST;

    /**
     * Of the values {@code first}, {@code second} and {@code ease.signed}, or of what a change did: {@code first.signed},
     * {@code second.signed} and {@code was.signed}; empty where these are not single lengths.
     */
    static Optional<Agreeing> of(Map<String, ?> values, Words words) {
        return values.containsKey("first")
                ? of(values, "first", "second", length(values, "ease.signed"), words)
                : of(
                        values,
                        "first.signed",
                        "second.signed",
                        length(values, "was.signed").map(mm -> -mm),
                        words);
    }

    private static Optional<Agreeing> of(
            Map<String, ?> values, String first, String second, Optional<Double> ease, Words words) {
        return single(values.get(first))
                .flatMap(one -> single(values.get(second))
                        .flatMap(other -> ease.map(meant -> new Agreeing(one, other, meant, words))));
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
        if (isInches()) {
            return inSixteenths(name, mm);
        }
        LengthUnit unit = words.unit();
        Rounding as = rounding();
        double off = left(as);
        return switch (name) {
            case "more" -> as.said(Math.abs(more(as)));
            case "apart" -> off == 0 ? Lengths.format(mm, unit) : as.said(Math.abs(off));
            case "drift.signed", "now.signed" -> off == 0 ? Lengths.signed(mm, unit) : signed(off, as);
            default -> name.endsWith(".signed") ? signed(mm, as) : as.said(mm);
        };
    }

    private boolean isInches() {
        return words.unit() == LengthUnit.INCH;
    }

    private Sixteenths sixteenths() {
        return Sixteenths.of(first, second, ease);
    }

    private String inSixteenths(String name, double mm) {
        Sixteenths all = sixteenths();
        double told = switch (name) {
            case "first", "first.signed" -> Sixteenths.mm(all.first());
            case "second", "second.signed" -> Sixteenths.mm(all.second());
            case "more" -> Sixteenths.mm(Math.abs(all.more()));
            case "apart" -> Sixteenths.mm(Math.abs(all.off()));
            case "drift.signed", "now.signed" -> Sixteenths.mm(all.off());
            default -> words.shown(mm);
        };
        boolean signed = name.endsWith(".signed");
        if (told == 0 && Math.abs(mm) >= Lengths.nothing(LengthUnit.MM) && !name.equals("drift.signed")) {
            return words.of("length.less");
        }
        return signed ? words.signed(told) : words.length(told);
    }

    /** What they are off as the lengths beside it are shown, mm; the true one where those show none. */
    double off() {
        if (isInches()) {
            return Sixteenths.mm(sixteenths().off());
        }
        double left = left(rounding());
        return left == 0 ? first - second - ease : left;
    }

    /** What the first is longer by as the lengths are shown, mm; below 0 where the second is. */
    double more() {
        if (isInches()) {
            return Sixteenths.mm(sixteenths().more());
        }
        return more(rounding());
    }

    /**
     * By how much a length is less than one that is told as it is, mm: what is left of that beside the length as it is
     * shown, unless rounding it made that another difference.
     */
    static double under(double mm, double exactly, LengthUnit unit) {
        double shown = Lengths.shown(mm, unit);
        if (unit == LengthUnit.INCH) {
            return Lengths.shown(exactly, unit) - shown;
        }
        return exactly - (Math.abs(shown - mm) <= STRAY ? shown : mm);
    }

    private String signed(double mm, Rounding as) {
        String text = as.said(mm);
        return mm > 0 && !text.equals(as.said(0)) ? "+" + text : text;
    }

    /** As a tape is read, as long as what is left then is just what is told of the true difference; else to 0.1 mm. */
    private Rounding rounding() {
        Rounding tape = new Rounding(words.unit(), 0);
        double left = left(tape);
        boolean tells =
                Math.abs(tape.shown(left) - left) < 1e-6 && tape.said(left).equals(tape.said(first - second - ease));
        return tells ? tape : new Rounding(words.unit(), Lengths.TENTH);
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
