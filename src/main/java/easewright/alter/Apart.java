package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Segment;

/** How far two lines lie from each other where they are farthest apart, seen at sixteenths of their segments. */
final class Apart {
    private Apart() {}

    /** Over both lines, mm. */
    static double farthest(Curve one, Curve other) {
        return farthest(one, other, Double.POSITIVE_INFINITY);
    }

    /** The same, or as much of it as is known by then once it is enough. */
    static double farthest(Curve one, Curve other, double enough) {
        double there = off(one, other, enough);
        return there >= enough ? there : Math.max(there, off(other, one, enough));
    }

    /** Whether one of them somewhere lies farther from the other than so much, mm. */
    static boolean isMoreThan(double by, Curve one, Curve other) {
        return farthest(one, other, Math.nextUp(by)) > by;
    }

    private static double off(Curve from, Curve to, double enough) {
        double most = 0;
        for (Segment segment : from.segments()) {
            for (double t = 0; t <= 1; t += 0.0625) {
                most = Math.max(most, to.nearest(segment.at(t)).distance());
                if (most >= enough) {
                    return most;
                }
            }
        }
        return most;
    }
}
