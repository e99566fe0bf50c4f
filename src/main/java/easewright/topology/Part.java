package easewright.topology;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;

/** A segment of a parallel line, and the number of the drawn segment that it runs along. */
record Part(Segment segment, int source) {
    /** The same with its ends moved by rounding errors only, so that parts join exactly. */
    Part withEnds(Point start, Point end) {
        if (segment.start().equals(start) && segment.end().equals(end)) {
            return this;
        }
        if (segment instanceof Cubic cubic) {
            return new Part(
                    new Cubic(
                            start,
                            cubic.control1().plus(start.minus(cubic.start())),
                            cubic.control2().plus(end.minus(cubic.end())),
                            end),
                    source);
        }
        return new Part(new Line(start, end), source);
    }
}
