package easewright.print.sheet;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Outlines as polygons, exact enough to lay pieces out by. */
final class Corners {
    /** Longest step along a curve, mm: a polygon of such steps strays less than 0.1 mm from an armhole. */
    private static final double STEP = 4;

    private Corners() {}

    static List<Point> of(Outline outline) {
        List<Point> corners = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            int steps = segment instanceof Cubic ? (int) Math.max(2, Math.ceil(segment.length() / STEP)) : 1;
            for (int i = 0; i < steps; i++) {
                corners.add(segment.at((double) i / steps));
            }
        }
        return corners;
    }
}
