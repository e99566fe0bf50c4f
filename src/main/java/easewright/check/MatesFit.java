package easewright.check;

import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.measure.PastCentre;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** Seam lines that are sewn together must be of one length, but for the ease declared between them. */
final class MatesFit implements Rule {
    /** How bad it is that a seam is off by so much, mm. */
    static Severity severity(double drift) {
        return Cutting.works(drift) ? Severity.NOTE : Severity.FAULT;
    }

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (MateWalk walk : sight.measures().mates()) {
            double stands =
                    past(sight, walk.mate().first()) - past(sight, walk.mate().second());
            boolean centred = stands != 0 && Cutting.same(walk.drift() - stands);
            Severity severity = centred ? Severity.NOTE : severity(walk.drift());
            if (!Cutting.same(walk.drift())) {
                String code =
                        centred ? "mate-fits-centre" : severity == Severity.FAULT ? "mate-mismatch" : "mate-drift";
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

    /** What of one side lies on button stands, mm. */
    private static double past(Sight sight, List<EdgeRef> edges) {
        double past = 0;
        for (EdgeRef edge : edges) {
            past += edge.times()
                    * sight.pattern()
                            .piece(edge.piece())
                            .flatMap(p -> sight.measures().piece(p.id()))
                            .map(m -> PastCentre.mm(m, edge.edge()))
                            .orElse(0.0);
        }
        return past;
    }
}
