package easewright.svg;

import easewright.geom.Affine;
import java.util.List;

/**
 * An element waiting to be drawn, with all that it inherits.
 *
 * @param toMm           user units of its parent to mm
 * @param viewportWidth  what 100 % across is, in user units
 * @param viewportHeight what 100 % down is
 * @param sight          whether the parent is seen
 * @param groups         the groups around it that are called something, outermost first
 * @param via            the innermost use element through which it is drawn; null if drawn where it stands
 * @param target         whether it is itself what that use element refers to
 */
record Frame(
        Element element,
        Affine toMm,
        double viewportWidth,
        double viewportHeight,
        Sight sight,
        List<DrawnShape.Group> groups,
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

        /** The use element that stands in the drawing itself. */
        Element outermost() {
            Via each = this;
            while (each.outer != null) {
                each = each.outer;
            }
            return each.use;
        }
    }

    /** The element itself once its transform and sight are known. */
    Frame at(Affine map, Sight own) {
        return new Frame(element, map, viewportWidth, viewportHeight, own, groups, via, false);
    }

    /** A child of the element, in the element's own units. */
    Frame child(Element inner) {
        return new Frame(inner, toMm, viewportWidth, viewportHeight, sight, groups, via, false);
    }

    /** The element with another viewport inside. */
    Frame in(Viewport viewport) {
        return new Frame(element, viewport.toMm(), viewport.width(), viewport.height(), sight, groups, via, false);
    }

    Frame within(List<DrawnShape.Group> named) {
        return new Frame(element, toMm, viewportWidth, viewportHeight, sight, named, via, false);
    }

    /** The element that stands in the drawing itself: this one, or the use through which it is drawn. */
    Element source() {
        return via == null ? element : via.outermost();
    }
}
