package easewright.check;

import easewright.pattern.Finding;
import java.util.List;

/** Something to look at in what a change did. */
interface ChangeRule {
    List<Finding> look(Sight before, Sight after);
}
