package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an outline that differs from how the outline was.
 *
 * @param from   where it begins, a place on both outlines
 * @param to     where it ends
 */
record Stretch(Point from, Point to) {
    private static final double SAME = 1e-9;
    private static final double[] LOOKS = {0, 0.1, 0.3, 0.5, 0.7, 0.9, 1};

    /** Corners below this are joins of one smooth line, radians. */
    private static final double CORNER = Math.toRadians(0.2);

    /** Corners above this end an edge, radians. */
    private static final double SHARP = Math.toRadians(20);

    /** Nothing is led on farther than this share of the way to the next corner. */
    private static final double SHARE = 0.45;

    /**
     * @param reach how far beyond a corner a stretch is led on, mm: the line beside it differs there too
     */
    static List<Stretch> changed(Outline was, Outline is, double reach) {
        int n = is.segments().size();
        boolean[] differs = new boolean[n];
        int first = -1;
        for (int i = 0; i < n; i++) {
            differs[i] = differs(was, is.segments().get(i));
            if (!differs[i]) {
                first = i;
            }
        }
        List<Stretch> all = new ArrayList<>();
        if (first < 0) {
            return all;
        }
        int start = -1;
        for (int k = 1; k <= n; k++) {
            int i = (first + k) % n;
            if (differs[i] && start < 0) {
                start = i;
            } else if (!differs[i] && start >= 0) {
                all.add(ledOn(is, start, (i + n - 1) % n, reach));
                start = -1;
            }
        }
        return all;
    }

    private static boolean differs(Outline was, Segment segment) {
        if (was.segments().contains(segment)) {
            return false;
        }
        for (double t : LOOKS) {
            if (was.nearest(segment.at(t)).distance() > SAME) {
                return true;
            }
        }
        return false;
    }

    private static Stretch ledOn(Outline is, int first, int last, double reach) {
        int n = is.segments().size();
        Stretch own = new Stretch(
                is.segments().get(first).start(), is.segments().get(last).end());
        boolean before = turn(is, (first + n - 1) % n) > CORNER;
        boolean after = turn(is, last) > CORNER;
        return own.ledOn(is, before ? reach : 0, after ? reach : 0);
    }

    /** The same farther along the outline on both sides, but not up to the next sharp corner, mm. */
    Stretch ledOn(Outline is, double more) {
        return ledOn(is, more, more);
    }

    private Stretch ledOn(Outline is, double before, double after) {
        return new Stretch(
                before > 0 ? ledOn(is.reversed(), from, before) : from, after > 0 ? ledOn(is, to, after) : to);
    }

    private static Point ledOn(Outline is, Point end, double more) {
        Place place = is.nearest(end).place();
        List<Segment> around = is.run(place, place).segments();
        List<Segment> way = new ArrayList<>();
        for (int i = 0; i < around.size(); i++) {
            way.add(around.get(i));
            if (i + 1 < around.size() && turn(around.get(i), around.get(i + 1)) > SHARP) {
                break;
            }
        }
        Curve line = new Curve(way);
        return line.pointAtLength(Math.min(more, SHARE * line.length()));
    }

    /** By how much the outline turns at the end of a segment, radians. */
    private static double turn(Outline outline, int segment) {
        return turn(
                outline.segments().get(segment),
                outline.segments().get((segment + 1) % outline.segments().size()));
    }

    private static double turn(Segment one, Segment two) {
        Point in = one.tangent(1);
        Point out = two.tangent(0);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
    }
}
