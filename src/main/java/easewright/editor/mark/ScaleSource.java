package easewright.editor.mark;

import easewright.geom.Line;
import easewright.pattern.Scale;
import easewright.suggest.KnownLength;
import easewright.suggest.Sheet;
import java.util.Optional;

/**
 * From what the scale of the drawing was set, as far as that is known: what was measured for it cannot prove it.
 *
 * @param mmPerUnit the scale
 * @param marked    the square or ruler on the drawing from which it was set; empty for any other line
 */
public record ScaleSource(double mmPerUnit, Optional<KnownLength> marked) {
    /** Lengths agree so well, relatively, if they are those of one square. */
    private static final double SAME = 0.005;

    /** A line that is as long as a square or ruler, and was said to be as long as is written there, is one of its sides. */
    static ScaleSource of(double mmPerUnit, Line line, double trueMm, Sheet sheet) {
        return new ScaleSource(
                mmPerUnit,
                KnownLength.on(sheet).stream()
                        .filter(k -> k.stated().isPresent()
                                && isSame(k.drawn(), line.length())
                                && isSame(k.stated().getAsDouble(), trueMm))
                        .findFirst());
    }

    /** Whether it is still the scale of the drawing. */
    boolean holds(Scale scale) {
        return scale.proof() == Scale.Proof.KNOWN_LINE && Math.abs(scale.mmPerUnitX() / mmPerUnit - 1) < 1e-9;
    }

    /** Whether it is this square or ruler, at whatever scale. */
    boolean is(KnownLength known) {
        return marked.filter(m -> m.square() == known.square() && m.words().equals(known.words()))
                .isPresent();
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one / other - 1) < SAME;
    }
}
