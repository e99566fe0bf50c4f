package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Corners of an allowance drawn out by the curves themselves instead of by straight lines from where they end: the corner
 * of the stitching line is then found again exactly where both parallels meet.
 */
final class CurvedCorner {
    /** A curve is led on by this share of itself at most. */
    private static final double FARTHEST = 1.5;

    /** The corner moves by less than this by it, as a share of its distance from the end of the curve. */
    private static final double NEAR = 0.8;

    /** A curve drawn anew follows the old one within this, mm. */
    private static final double FOLLOWS = 0.003;

    private static final double STRAIGHT_ON = 1e-3;
    private static final double MET = 1e-11;
    private static final int STEPS = 20;

    private CurvedCorner() {}

    /** The run with its sharp corners drawn out so where that can be. */
    static List<Segment> drawn(List<Segment> run, double sharp) {
        List<Segment> all = new ArrayList<>(run);
        for (int i = 1; i < all.size(); i++) {
            Point in = all.get(i - 1).tangent(1);
            Point out = all.get(i).tangent(0);
            if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) <= sharp) {
                continue;
            }
            int first = leadIn(all, i - 1);
            int last = leadOut(all, i);
            if (first == i - 1 && last == i) {
                continue;
            }
            Point corner = all.get(i).start();
            Segment[] met = met(all.get(first), all.get(last), corner);
            if (met == null) {
                met = fitted(all.get(first), all.get(last), corner);
            }
            if (met != null) {
                List<Segment> rest = new ArrayList<>(all.subList(last + 1, all.size()));
                all = new ArrayList<>(all.subList(0, first));
                all.add(met[0]);
                all.add(met[1]);
                all.addAll(rest);
                i = first + 1;
            }
        }
        return all;
    }

    /** The curve before a straight lead to the corner, else the segment that leads to it. */
    private static int leadIn(List<Segment> all, int i) {
        boolean lead = i > 0
                && all.get(i) instanceof Line
                && all.get(i - 1) instanceof Cubic
                && straightOn(all.get(i - 1), all.get(i));
        return lead ? i - 1 : i;
    }

    private static int leadOut(List<Segment> all, int i) {
        boolean lead = i + 1 < all.size()
                && all.get(i) instanceof Line
                && all.get(i + 1) instanceof Cubic
                && straightOn(all.get(i), all.get(i + 1));
        return lead ? i + 1 : i;
    }

    private static boolean straightOn(Segment one, Segment two) {
        return Math.abs(one.tangent(1).cross(two.tangent(0))) < STRAIGHT_ON
                && one.tangent(1).dot(two.tangent(0)) > 0;
    }

    /** Both curves drawn anew up to the corner itself; null where that does not follow them. */
    private static Segment[] fitted(Segment one, Segment two, Point corner) {
        Segment in = one.end().equals(corner) ? one : Fewer.ledOn(one, corner, FOLLOWS);
        Segment back = two.start().equals(corner) ? two : Fewer.ledOn(two.reversed(), corner, FOLLOWS);
        if (in == null || back == null) {
            return null;
        }
        return new Segment[] {in, two.start().equals(corner) ? two : back.reversed()};
    }

    /** Both segments led on until they meet; null where they do not near the corner. */
    private static Segment[] met(Segment one, Segment two, Point corner) {
        double t = 1;
        double u = 0;
        for (int i = 0; i < STEPS; i++) {
            Point gap = two.at(u).minus(one.at(t));
            if (gap.norm() < MET) {
                break;
            }
            Point da = one.derivative(t);
            Point db = two.derivative(u);
            double det = da.cross(db);
            if (det == 0) {
                return null;
            }
            t += gap.cross(db) / det;
            u += gap.cross(da) / det;
        }
        boolean far =
                one instanceof Cubic && Math.abs(t - 1) > FARTHEST || two instanceof Cubic && Math.abs(u) > FARTHEST;
        if (!Double.isFinite(t) || !Double.isFinite(u) || far || t <= 0 || u >= 1) {
            return null;
        }
        Point meeting = one.at(t);
        double lead = Math.max(one.end().distance(corner), two.start().distance(corner));
        if (meeting.distance(two.at(u)) > 1e-9 || meeting.distance(corner) > NEAR * lead) {
            return null;
        }
        return new Segment[] {Ends.endingAt(one.between(0, t), meeting), Ends.startingAt(two.between(u, 1), meeting)};
    }
}
