package easewright.editor.mark;

import easewright.geom.Line;
import easewright.pattern.Scale;
import easewright.suggest.KnownLength;
import easewright.suggest.Sheet;
import java.util.Optional;

/** What on the drawing a scale was set from. */
final class ScaleSource {
    /** Lengths agree so well, relatively, if they are those of one square. */
    private static final double SAME = 0.005;

    private ScaleSource() {}

    /** A line that is as long as a square or ruler, and was said to be as long as is written there, is one of its sides. */
    static Scale.From of(Line line, double trueMm, Sheet sheet) {
        return of(KnownLength.on(sheet).stream()
                .filter(k -> k.stated().isPresent()
                        && isSame(k.drawn(), line.length())
                        && isSame(k.stated().getAsDouble(), trueMm))
                .findFirst());
    }

    /**
     * @param marked the square or ruler; empty for any other line
     */
    static Scale.From of(Optional<KnownLength> marked) {
        return marked.map(k -> new Scale.From(what(k), k.words())).orElse(new Scale.From(Scale.From.What.LINE, ""));
    }

    /** Whether a scale was set from this square or ruler. */
    static boolean is(Scale scale, KnownLength known) {
        return scale.from()
                .filter(new Scale.From(what(known), known.words())::equals)
                .isPresent();
    }

    private static Scale.From.What what(KnownLength known) {
        return known.square() ? Scale.From.What.SQUARE : Scale.From.What.RULER;
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one / other - 1) < SAME;
    }
}
