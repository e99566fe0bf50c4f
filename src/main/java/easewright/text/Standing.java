package easewright.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a seam stands, before a change, after it or if it were made: that it fits, or which of its sides is too long and by how
 * much. "It is −0.19 cm off" leaves open which side to cut.
 */
final class Standing {
    private Standing() {}

    /**
     * @param form   which of the lines in the bundle: {@code then}, {@code now} or {@code so}
     * @param key    by what name of the values the seam is off
     * @param off    by how much the first side is too long, mm; with a minus where the second is
     * @param values with what the sides are called: {@code one} and {@code other}
     */
    static Optional<String> said(String form, String key, Object off, Map<String, ?> values, Words words) {
        if (off instanceof Double mm && Math.abs(mm) < Lengths.nothing(words.unit())) {
            boolean fits = Math.abs(mm) < Lengths.nothing(LengthUnit.MM);
            return Optional.of(words.of("standing." + form + (fits ? ".fits" : ".little")));
        }
        Optional<Span> either = either(off);
        if (either.isPresent()) {
            return Optional.of(words.of("standing." + form + ".either", Map.of("most", most(either.get()))));
        }
        if (!(values.get("one") instanceof List<?> one) || !(values.get("other") instanceof List<?> other)) {
            return Optional.empty();
        }
        return Optional.of(words.of(
                "standing." + form + ".off",
                Map.of("by", by(key, off, values, words), "longer", isFirst(off) ? one : other)));
    }

    /** What is off on the one side in some sizes and on the other in others. */
    static Optional<Span> either(Object off) {
        return off instanceof Span span && span.low() * span.high() < 0 ? Optional.of(span) : Optional.empty();
    }

    static boolean isFirst(Object off) {
        return off instanceof Span span ? span.high() > 0 : off instanceof Double mm && mm > 0;
    }

    /** How much that is, whichever side it is on. */
    static Object amount(Object off) {
        if (off instanceof Span span) {
            double low = Math.abs(span.low());
            double high = Math.abs(span.high());
            return new Span(Math.min(low, high), Math.max(low, high));
        }
        return off instanceof Double mm ? (Object) Math.abs(mm) : off;
    }

    static double most(Span off) {
        return Math.max(Math.abs(off.low()), Math.abs(off.high()));
    }

    /** As the lengths beside it are shown: who reckons finds the same. */
    private static Object by(String key, Object off, Map<String, ?> values, Words words) {
        // What a seam was off is one of the lengths there, what it is off is left of them.
        String name = key.startsWith("was") ? "was" : "apart";
        return Agreeing.single(off)
                .flatMap(mm -> Agreeing.of(values, words).map(all -> (Object) all.said(name, Math.abs(mm))))
                .orElseGet(() -> amount(off));
    }
}
