package easewright.pattern;

import java.util.OptionalDouble;

/**
 * What is known of the cloth; percentages as numbers (25 for 25 %).
 *
 * @param knit      whether it is a knit (else woven)
 * @param across    stretch across, by the hand test, percent
 * @param along     stretch along, percent
 * @param recovery  recovery, percent
 * @param shrinkage shrinkage lengthwise in the wash, percent: it asks for more cloth, and no width is reckoned with it
 */
public record Cloth(
        boolean knit, OptionalDouble across, OptionalDouble along, OptionalDouble recovery, OptionalDouble shrinkage) {
    public static final Cloth WOVEN = new Cloth(
            false, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** A knit of which only the stretch across is known. */
    public static Cloth knit(double acrossPercent) {
        return new Cloth(
                true,
                OptionalDouble.of(acrossPercent),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Cloth c
                && knit == c.knit
                && across.equals(c.across)
                && along.equals(c.along)
                && recovery.equals(c.recovery)
                && shrinkage.equals(c.shrinkage);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * across.hashCode() + along.hashCode()) + recovery.hashCode();
    }
}
