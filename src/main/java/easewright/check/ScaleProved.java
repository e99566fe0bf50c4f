package easewright.check;

import easewright.pattern.Finding;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.List;

/** Nothing measured may be trusted while the size of the drawing is only assumed. */
final class ScaleProved implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        return sight.pattern().scale().proof() == Scale.Proof.UNPROVED
                ? List.of(Finding.of("scale-unproved", Severity.CAUTION, "")
                        .with("unit.number", sight.pattern().scale().mmPerUnitX()))
                : List.of();
    }
}
