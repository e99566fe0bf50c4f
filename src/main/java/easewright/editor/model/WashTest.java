package easewright.editor.model;

import easewright.text.LengthUnit;
import java.util.OptionalDouble;

/** The test for shrinkage: a known length of the cloth along the grain, measured again after the wash (common practice). */
public final class WashTest {
    /** No cloth loses more than half of its length in the wash, percent. */
    static final double MOST = 50;

    private WashTest() {}

    /** The length to mark, mm: long enough that a thread's breadth is no percent. */
    public static double marked(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 20 * 25.4 : 500;
    }

    /** Shrinkage in percent, 100·(L0 − L1)/L0; empty if the cloth cannot have come out so (longer, or less than half). */
    public static OptionalDouble percent(double washedMm, double markedMm) {
        double percent = 100 * (markedMm - washedMm) / markedMm;
        return percent >= 0 && percent <= MOST ? OptionalDouble.of(percent) : OptionalDouble.empty();
    }

    /** The length that the marked one has after the wash, mm. */
    static double washed(double percent, double markedMm) {
        return markedMm * (1 - percent / 100);
    }
}
