package easewright.check;

import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** Seam lines that are sewn together must be of one length, but for the ease declared between them. */
final class MatesFit implements Rule {
    /** "I keep my patterns true to 1/16 inch" (Threads 200, in docs/sources.md 3), rounded as suggested there. */
    static final double TRUE_WITHIN = 1.5;

    /** "Many sewers find accuracy to 1/8 inch works" (the same place), rounded. */
    static final double WORKS_WITHIN = 3;

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (MateWalk walk : sight.measures().mates()) {
            double drift = Math.abs(walk.drift());
            if (drift > TRUE_WITHIN) {
                boolean mismatch = drift > WORKS_WITHIN;
                findings.add(Finding.of(
                                mismatch ? "mate-mismatch" : "mate-drift",
                                mismatch ? Severity.FAULT : Severity.NOTE,
                                "")
                        .with("mate", walk.mate().name())
                        .with("first", walk.first())
                        .with("second", walk.second())
                        .with("ease.signed", walk.mate().declaredEase())
                        .with("drift.signed", walk.drift()));
            }
        }
        return findings;
    }
}
