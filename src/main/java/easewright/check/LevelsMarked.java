package easewright.check;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.List;

/** Without a level there is no girth and no ease, which otherwise shows only by their absence. */
final class LevelsMarked implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        boolean none =
                !sight.pattern().pieces().isEmpty() && sight.pattern().levels().isEmpty();
        return none ? List.of(Finding.of("levels-not-marked", Severity.CAUTION, "")) : List.of();
    }
}
