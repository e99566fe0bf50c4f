package easewright.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sentence that says how two sides of a seam miss each other: on which it is longer and by how much, how much of that is to
 * be eased in, and what is left over. Nobody reads "with 1 cm to ease in, it is 1 cm off" with profit.
 *
 * @param first  length of the first side, mm
 * @param second of the second side, mm
 * @param ease   what the first is meant to be longer by, mm
 * @param one    what the first side is called
 * @param other  what the second side is called
 */
record Misfit(double first, double second, double ease, List<?> one, List<?> other) {
    /**
     * Of the values {@code first}, {@code second}, {@code ease.signed}, {@code one} and {@code other}, and of {@code
     * drift.signed} where sizes differ and only what is off can be told of all.
     */
    static Optional<String> said(Map<String, ?> values, Words words) {
        if (!(values.get("one") instanceof List<?> one) || !(values.get("other") instanceof List<?> other)) {
            return Optional.empty();
        }
        Optional<Double> first = Agreeing.single(values.get("first"));
        Optional<Double> second = Agreeing.single(values.get("second"));
        Optional<Double> ease = Agreeing.single(values.get("ease.signed"));
        if (first.isPresent() && second.isPresent() && ease.isPresent()) {
            return Optional.of(new Misfit(first.get(), second.get(), ease.get(), one, other).said(words));
        }
        return values.get("drift.signed") instanceof Span off
                ? Optional.of(inSizes(off, one, other, words))
                : Optional.empty();
    }

    private String said(Words words) {
        double more = first - second;
        double off = more - ease;
        boolean plain = Math.abs(ease) < Lengths.nothing(LengthUnit.MM);
        boolean equal = new Agreeing(first, second, ease, words).more() == 0;
        String kind =
                plain ? "plain" : equal ? "equal" : more * ease < 0 ? "wrong" : off * ease > 0 ? "much" : "little";
        Map<String, Object> values = new HashMap<>();
        values.put("first", first);
        values.put("second", second);
        values.put("ease.signed", ease);
        values.put("ease", Math.abs(ease));
        values.put("more", Math.abs(more));
        values.put("apart", Math.abs(off));
        values.put("longer", more > 0 ? one : other);
        values.put("meant", ease > 0 ? one : other);
        return words.of("misfit." + kind, values);
    }

    /** By how much a side is too long, counting what is to be eased in. */
    private static String inSizes(Span off, List<?> one, List<?> other, Words words) {
        if (Standing.either(off).isPresent()) {
            return words.of("misfit.sizes.either", Map.of("most", Standing.most(off)));
        }
        List<?> longer = Standing.isFirst(off) ? one : other;
        return words.of("misfit.sizes", Map.of("longer", longer, "by", Standing.amount(off)));
    }
}
