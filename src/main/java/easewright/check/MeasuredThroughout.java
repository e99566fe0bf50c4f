package easewright.check;

import easewright.pattern.Finding;
import java.util.List;

/** What could not be measured: levels that miss a counted piece, mates without their edges, and the like. */
final class MeasuredThroughout implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        return sight.measures().findings();
    }
}
