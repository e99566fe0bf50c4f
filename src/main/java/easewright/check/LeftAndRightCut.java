package easewright.check;

import easewright.alter.SideSeen;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import easewright.pattern.SidePair;
import java.util.ArrayList;
import java.util.List;

/**
 * How left and right pieces are cut that were one piece before a change on one side: said as long as they are two, since
 * nothing on the drawing says it.
 */
final class LeftAndRightCut implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (SidePair pair : SidePair.of(sight.pattern())) {
            String code = pair.halves() ? "sides-parted-fold" : "sides-parted";
            findings.add(Finding.of(code, Severity.NOTE, pair.wholeName())
                    .with("left", pair.left().name())
                    .with("right", pair.right().name()));
            if (!SideSeen.of(pair.drawn()).sure()) {
                findings.add(Finding.of("side-assumed", Severity.CAUTION, pair.wholeName())
                        .with("drawn", pair.drawn().name()));
            }
        }
        return findings;
    }
}
