package easewright.check;

import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A change made seams that are sewn together longer or shorter; by different amounts, and they drift apart (W4),
 * or come to fit again. */
final class MatesKeptLength implements ChangeRule {
    /** A tenth of what is tolerated: what a rounded drawing may show without any change. */
    private static final double NOTICED = 0.15;

    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        for (MateWalk now : after.measures().mates()) {
            Optional<MateWalk> then = before.measures().before(now);
            if (then.isEmpty()) {
                continue;
            }
            double first = now.first() - then.get().first();
            double second = now.second() - then.get().second();
            double apart = now.drift() - then.get().drift();
            if (Math.abs(apart) > NOTICED
                    && Math.abs(now.drift()) < Math.abs(then.get().drift())) {
                findings.add(about("mate-nearer", MatesFit.severity(now.drift()), after, now, first, second)
                        .with("was.signed", then.get().drift())
                        .with("now.signed", now.drift()));
            } else if (Math.abs(apart) > NOTICED) {
                Severity severity = MatesFit.severity(now.drift());
                boolean much = !Cutting.same(apart);
                boolean little = !much && Cutting.same(now.drift());
                findings.add(about(
                                little ? "mate-drifted-little" : "mate-drifted",
                                severity == Severity.NOTE && much ? Severity.CAUTION : severity,
                                after,
                                now,
                                first,
                                second)
                        .with("drift.signed", apart)
                        .with("was.signed", then.get().drift())
                        .with("now.signed", now.drift()));
            } else if (Math.max(Math.abs(first), Math.abs(second)) > NOTICED) {
                findings.add(about("mate-length-changed", Severity.NOTE, after, now, first, second));
            }
        }
        return findings;
    }

    private static Finding about(
            String code, Severity severity, Sight after, MateWalk walk, double first, double second) {
        MateSides sides = MateSides.of(after.pattern(), walk.mate());
        return walk.named(Finding.of(code, severity, ""))
                .with("one", sides.first())
                .with("other", sides.second())
                .with("first.signed", first)
                .with("second.signed", second);
    }
}
