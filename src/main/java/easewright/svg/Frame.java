package easewright.svg;

import easewright.geom.Affine;
import java.util.List;

/**
 * An element waiting to be drawn, with all that it inherits.
 *
 * @param toMm           user units of its parent to mm
 * @param viewportWidth  what 100 % across is, in user units
 * @param viewportHeight what 100 % down is
 * @param visible        whether the parent is
 * @param layers         names of the groups around it, outermost first
 * @param via            the innermost use element through which it is drawn; null if drawn where it stands
 * @param target         whether it is itself what that use element refers to
 */
record Frame(
        Element element,
        Affine toMm,
        double viewportWidth,
        double viewportHeight,
        boolean visible,
        List<String> layers,
        Via via,
        boolean target) {
    /**
     * A use element on the way to a copy.
     *
     * @param outer the use element around it, or null
     * @param depth how many there are, this one included
     */
    record Via(Element use, Element target, Via outer, int depth) {
        /** Whether the target is already being drawn, or holds one of the use elements on the way to it. */
        static boolean circles(Via via, Element use, Element target) {
            boolean circles = target.holds(use);
            for (Via each = via; each != null && !circles; each = each.outer) {
                circles = each.target == target || target.holds(each.use);
            }
            return circles;
        }
    }

    Frame child(Element child, Affine map, double width, double height, boolean shown, List<String> names) {
        return new Frame(child, map, width, height, shown, names, via, false);
    }
}
