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

    /** How bad it is that a seam is off by so much, mm. */
    static Severity severity(double drift) {
        return Math.abs(drift) > WORKS_WITHIN ? Severity.FAULT : Severity.NOTE;
    }

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (MateWalk walk : sight.measures().mates()) {
            Severity severity = severity(walk.drift());
            if (Math.abs(walk.drift()) > TRUE_WITHIN) {
                String code = severity == Severity.FAULT ? "mate-mismatch" : "mate-drift";
                findings.add(walk.named(Finding.of(code, severity, ""))
                        .with("first", walk.first())
                        .with("second", walk.second())
                        .with("ease.signed", walk.mate().declaredEase())
                        .with("drift.signed", walk.drift()));
            }
        }
        return findings;
    }
}
