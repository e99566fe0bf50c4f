package easewright.check;

import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** Seam lines that are sewn together must be of one length, but for the ease declared between them. */
final class MatesFit implements Rule {
    /** How bad it is that a seam is off by so much, mm. */
    static Severity severity(double drift) {
        return Math.abs(drift) > Cutting.WORKS ? Severity.FAULT : Severity.NOTE;
    }

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (MateWalk walk : sight.measures().mates()) {
            Severity severity = severity(walk.drift());
            if (!Cutting.same(walk.drift())) {
                String code = severity == Severity.FAULT ? "mate-mismatch" : "mate-drift";
                MateSides sides = MateSides.of(sight.pattern(), walk.mate());
                findings.add(walk.named(Finding.of(code, severity, ""))
                        .with("one", sides.first())
                        .with("other", sides.second())
                        .with("first", walk.first())
                        .with("second", walk.second())
                        .with("ease.signed", walk.mate().declaredEase())
                        .with("drift.signed", walk.drift()));
            }
        }
        return findings;
    }
}
