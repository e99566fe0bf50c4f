package easewright.editor.model;

import java.util.OptionalDouble;

/** The hand test for stretch: a fold of known length, pulled as far as is comfortable. */
public final class StretchTest {
    /** The length marked on the fold, mm (docs/sources.md 5: 10 cm on a fold). */
    public static final double MARKED = 100;

    private StretchTest() {}

    /** Stretch in percent, 100·(L1 − L0)/L0; empty if the cloth cannot have come out so (shorter, or over fourfold). */
    public static OptionalDouble percent(double stretchedMm) {
        double percent = 100 * (stretchedMm - MARKED) / MARKED;
        return percent >= 0 && percent <= 300 ? OptionalDouble.of(percent) : OptionalDouble.empty();
    }
}
