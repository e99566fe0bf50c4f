package easewright.print;

import easewright.measure.MateWalk;
import easewright.text.Words;
import java.util.Map;

/** By how much a seam does not fit, as one figure wherever it is told. */
public final class Misfit {
    private Misfit() {}

    /** So that who takes the shown lengths from each other finds it, as in the notes. */
    public static String of(MateWalk walk, Words words) {
        return words.of(
                "report.drift",
                Map.of(
                        "first", walk.first(),
                        "second", walk.second(),
                        "ease.signed", walk.mate().declaredEase(),
                        "drift.signed", walk.drift()));
    }
}
