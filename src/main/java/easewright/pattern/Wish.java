package easewright.pattern;

import java.util.OptionalDouble;

/**
 * The ease that is wanted at a level, as it was said: a length, or a part of the girth of the body there.
 *
 * @param mm      the length; of a part, what it makes of the body as far as that is known
 * @param percent of the girth of the body, negative for a garment that is to be smaller; empty where a length was said
 */
public record Wish(double mm, OptionalDouble percent) {
    /** A length, mm. */
    public static Wish of(double mm) {
        return new Wish(mm, OptionalDouble.empty());
    }

    /** The length that it is on a body with this girth, mm; empty where it is a part of a girth that is not known. */
    public OptionalDouble on(OptionalDouble girth) {
        if (percent.isEmpty()) {
            return OptionalDouble.of(mm);
        }
        return girth.isPresent() ? OptionalDouble.of(girth.getAsDouble() * percent.getAsDouble() / 100) : girth;
    }

    /** The same for another body. */
    Wish made(OptionalDouble girth) {
        double now = on(girth).orElse(mm);
        return now == mm ? this : new Wish(now, percent);
    }
}
