package easewright.alter;

import easewright.pattern.EdgeRef;
import java.util.List;

/**
 * On which stretch of a pair of seam lines a bow is laid.
 *
 * @param other   on the seam that changed more, else on the one that changed less
 * @param shorter on the shorter of the two stretches on which the change dies away, else on the longer
 */
record BowPlace(boolean other, boolean shorter) {
    /** The best first: what changed less, on its longer stretch, is bent the least. */
    static final List<BowPlace> ALL = List.of(
            new BowPlace(false, false), new BowPlace(true, false), new BowPlace(false, true), new BowPlace(true, true));

    EdgeRef edge(SeamPairs.Pair pair) {
        boolean first = Math.abs(pair.first().change()) < Math.abs(pair.second().change());
        return first != other ? pair.first().edge() : pair.second().edge();
    }
}
