package easewright.svg;

import easewright.geom.Outline;
import java.util.List;
import java.util.Optional;

/**
 * A closed sub-path of a shape.
 *
 * @param subPath its number in the shape
 * @param area    mm²
 */
record Ring(int subPath, Outline outline, double area) {
    /** The one of largest area, if any is closed and encloses anything. */
    static Optional<Ring> largest(DrawnShape shape) {
        Ring best = null;
        List<SubPath> subPaths = shape.subPaths();
        for (int k = 0; k < subPaths.size(); k++) {
            if (subPaths.get(k).chain() instanceof Outline outline) {
                double area = Math.abs(outline.signedArea());
                if (area > (best == null ? 0 : best.area())) {
                    best = new Ring(k, outline, area);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether it is large enough to be the outline of a piece. */
    boolean forPiece() {
        return area >= BarePattern.LEAST_AREA;
    }
}
