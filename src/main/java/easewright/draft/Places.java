package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Moves drafted lines to their place on the sheet and rounds them to what the file can say. */
final class Places {
    /** Coordinates are written to 0.0001 mm; the pattern in memory is rounded alike, so that both are the same. */
    private static final double PER_MM = 1e4;

    private Places() {}

    static Point rounded(Point p) {
        return new Point(rounded(p.x()), rounded(p.y()));
    }

    private static double rounded(double v) {
        // Adding 0 turns a minus zero into a plain one.
        return Math.rint(v * PER_MM) / PER_MM + 0.0;
    }

    static Point on(Affine map, Point p) {
        return rounded(map.apply(p));
    }

    static Segment on(Affine map, Segment segment) {
        if (segment instanceof Cubic c) {
            return new Cubic(on(map, c.start()), on(map, c.control1()), on(map, c.control2()), on(map, c.end()));
        }
        return new Line(on(map, segment.start()), on(map, segment.end()));
    }

    static List<Segment> on(Affine map, List<Segment> segments) {
        return segments.stream()
                .map(s -> on(map, s))
                .filter(s -> !s.start().equals(s.end()))
                .toList();
    }

    /** The same run with each segment ending exactly where the next starts, after roundings have parted them. */
    static List<Segment> joined(List<Segment> segments) {
        List<Segment> exact = new ArrayList<>(segments);
        for (int i = 0; i + 1 < exact.size(); i++) {
            exact.set(i, endingAt(exact.get(i), exact.get(i + 1).start()));
        }
        return exact;
    }

    static Segment startingAt(Segment segment, Point start) {
        if (segment instanceof Cubic c) {
            return new Cubic(start, c.control1(), c.control2(), c.end());
        }
        return new Line(start, segment.end());
    }

    static Segment endingAt(Segment segment, Point end) {
        if (segment instanceof Cubic c) {
            return new Cubic(c.start(), c.control1(), c.control2(), end);
        }
        return new Line(segment.start(), end);
    }
}
