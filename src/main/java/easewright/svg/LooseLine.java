package easewright.svg;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;

/** An open line while outlines are sought: what it is, and the nodes at both its ends. */
final class LooseLine {
    /** Two lines whose lengths and middles are this much alike are one line drawn twice, mm. */
    private static final double SAME = 0.02;

    final int shape;
    final int subPath;
    final List<Segment> segments;
    int first;
    int second;

    /** How many more times it is drawn. */
    int doubles;

    /** Whether it is no longer looked at. */
    boolean aside;

    LooseLine(int shape, int subPath, List<Segment> segments) {
        this.shape = shape;
        this.subPath = subPath;
        this.segments = segments;
    }

    Point start() {
        return segments.get(0).start();
    }

    Point end() {
        return segments.get(segments.size() - 1).end();
    }

    int other(int node) {
        return node == first ? second : first;
    }

    /** Both ends, whichever comes first. */
    long ends() {
        return (long) Math.min(first, second) << 32 | Math.max(first, second);
    }

    /** Whether another line between the same ends runs the same way. */
    boolean same(LooseLine other) {
        Curve mine = new Curve(segments);
        Curve theirs = new Curve(other.segments);
        return Math.abs(mine.length() - theirs.length()) < SAME
                && theirs.nearest(middle()).distance() < SAME
                && mine.nearest(other.middle()).distance() < SAME;
    }

    private Point middle() {
        return segments.get(segments.size() / 2).at(segments.size() % 2 == 0 ? 0 : 0.5);
    }
}
