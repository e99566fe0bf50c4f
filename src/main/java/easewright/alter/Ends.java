package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;

/** Segments with an end moved by rounding errors only, so that they join exactly. */
final class Ends {
    private Ends() {}

    static Segment startingAt(Segment segment, Point start) {
        if (segment.start().equals(start)) {
            return segment;
        }
        return segment instanceof Cubic c
                ? new Cubic(start, c.control1(), c.control2(), c.end())
                : new Line(start, segment.end());
    }

    static Segment endingAt(Segment segment, Point end) {
        if (segment.end().equals(end)) {
            return segment;
        }
        return segment instanceof Cubic c
                ? new Cubic(c.start(), c.control1(), c.control2(), end)
                : new Line(segment.start(), end);
    }
}
