package easewright.svg;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.OptionalDouble;

/**
 * Recognises an outline that a drawing program has turned from a pen line into the shape of that line: a narrow ring,
 * whose outer edge lies half a pen's width outside the line that was meant.
 */
final class PenStroke {
    /** No pen is wider, and no allowance is narrower, mm. */
    private static final double WIDEST = 2.5;

    private static final int SAMPLES = 24;

    private PenStroke() {}

    /** The width of the pen, if the outline and the largest other closed line of its shape are both its edges, mm. */
    static OptionalDouble width(DrawnShape shape, Area outer) {
        Outline inner = null;
        for (int k = 0; k < shape.subPaths().size(); k++) {
            Outline other = k == outer.subPath()
                    ? null
                    : shape.subPaths().get(k).outline().orElse(null);
            boolean larger =
                    other != null && (inner == null || Math.abs(other.signedArea()) > Math.abs(inner.signedArea()));
            inner = larger ? other : inner;
        }
        if (inner == null) {
            return OptionalDouble.empty();
        }
        double width = (outer.area() - Math.abs(inner.signedArea()))
                / ((outer.outline().length() + inner.length()) / 2);
        if (!(width > 0 && width < WIDEST)) {
            return OptionalDouble.empty();
        }
        int step = Math.max(1, inner.segments().size() / SAMPLES);
        for (int i = 0; i < inner.segments().size(); i += step) {
            Segment segment = inner.segments().get(i);
            for (Point p : new Point[] {segment.at(0.3), segment.at(0.7)}) {
                double away = outer.outline().nearest(p).distance();
                if (away < width / 2 || away > 2 * width) {
                    return OptionalDouble.empty();
                }
            }
        }
        return OptionalDouble.of(width);
    }
}
