package easewright.check;

import easewright.ease.EaseLine;
import easewright.pattern.Cloth;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A girth so far below the body's that no garment is meant to be so tight: likelier a half piece is counted once, or a
 * piece is not counted at all.
 */
final class BodyGoneRound implements Rule {
    /**
     * Share of the body girth below which cloth must be missing from the count: a quarter or a half of the garment lies
     * below it, and the tightest knits, drafted to some 70 % of the body, above it (common practice).
     */
    private static final double LEAST_SHARE = 0.6;

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (EaseLine line : sight.sheet().lines()) {
            if (line.ease().isPresent() && tooLittle(line, sight.pattern().cloth())) {
                findings.add(line.girth()
                        .named(Finding.of("girth-not-whole", Severity.FAULT, "")
                                .with("finished", line.finished())
                                .with("of.percent", 100 + line.percent().orElseThrow())));
            }
        }
        return findings;
    }

    static boolean tooLittle(EaseLine line, Cloth cloth) {
        boolean stretchesSoFar = cloth.across().isPresent()
                && line.stretchNeeded().orElse(0) <= cloth.across().getAsDouble();
        return line.finished() < LEAST_SHARE * line.body().orElseThrow() && !stretchesSoFar;
    }
}
