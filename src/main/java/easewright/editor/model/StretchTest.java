package easewright.editor.model;

import easewright.print.StretchText;
import easewright.text.LengthUnit;
import java.util.OptionalDouble;

/** The hand test for stretch: a fold of known length, pulled as far as is comfortable. */
public final class StretchTest {
    /** No cloth is stretched farther by hand than to four times its length, percent. */
    static final double MOST = 300;

    private StretchTest() {}

    /** The length to mark on the fold, mm. */
    public static double marked(LengthUnit unit) {
        return StretchText.held(unit);
    }

    /** Stretch in percent, 100·(L1 − L0)/L0; empty if the cloth cannot have come out so (shorter, or over fourfold). */
    public static OptionalDouble percent(double stretchedMm, double markedMm) {
        double percent = 100 * (stretchedMm - markedMm) / markedMm;
        return percent >= 0 && percent <= MOST ? OptionalDouble.of(percent) : OptionalDouble.empty();
    }

    /** The length that the marked one reaches, mm. */
    static double stretched(double percent, double markedMm) {
        return markedMm * (1 + percent / 100);
    }
}
