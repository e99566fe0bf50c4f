package easewright.check;

import easewright.pattern.Finding;
import java.util.List;

/** Something to look at in one pattern. */
interface Rule {
    List<Finding> look(Sight sight);
}
