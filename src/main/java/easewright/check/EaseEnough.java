package easewright.check;

import easewright.pattern.Finding;
import java.util.List;

/** Ease below the least that is needed to move, and stretch beyond the cloth: what the ease sheet notices. */
final class EaseEnough implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        return sight.sheet().findings();
    }
}
