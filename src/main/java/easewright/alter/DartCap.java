package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The cap over a dart. One of two straight lines is drawn as if the dart were folded: its lines are the seams beside it
 * mirrored in the legs, up to the middle line (docs/sources.md 4.5). By how much the cap drawn at first differs from
 * that is kept in proportion to the intake. Caps of other forms are enlarged or reduced.
 */
final class DartCap {
    private final DartMouth was;
    private final Point point;
    private final Segment before;
    private final Segment after;

    /**
     * @param before the segment that leads to the mouth as it is afterwards
     * @param after  the one that leads away from it
     */
    DartCap(DartMouth was, Point point, Segment before, Segment after) {
        this.was = was;
        this.point = point;
        this.before = before;
        this.after = after;
    }

    List<Segment> drawn(Point first, Point second) {
        if (was.inner().size() == 2 && was.inner().stream().allMatch(Line.class::isInstance)) {
            Point old = was.inner().get(0).end();
            Point folded = folded(was.first(), was.second(), was.before(), was.after());
            Point now = folded(first, second, before, after);
            double ratio = first.distance(second) / was.first().distance(was.second());
            Point off = between(was.first(), was.second(), first, second)
                    .applyToDirection(old.minus(folded))
                    .times(1 / ratio);
            Point peak = now.plus(off.times(ratio));
            return List.of(new Line(first, peak), new Line(peak, second));
        }
        Affine map = between(was.first(), was.second(), first, second);
        List<Segment> inner = new ArrayList<>();
        for (int i = 0; i < was.inner().size(); i++) {
            Segment s = was.inner().get(i).transformed(map);
            Point from = i == 0 ? first : inner.get(i - 1).end();
            Point to = i == was.inner().size() - 1 ? second : s.end();
            inner.add(
                    s instanceof easewright.geom.Cubic c
                            ? new easewright.geom.Cubic(from, c.control1(), c.control2(), to)
                            : new Line(from, to));
        }
        return inner;
    }

    /** Where the cap belongs when the dart is pressed to the one side, or to the other. */
    List<Point> pressed() {
        return List.of(
                folded(was.first(), was.second(), before.tangent(1)),
                folded(was.second(), was.first(), after.tangent(0).times(-1)));
    }

    /** The mean of what folding to one side and to the other asks for; they are the same for a trued seam. */
    Point folded(Point first, Point second, Segment to, Segment from) {
        Point one = folded(first, second, to.tangent(1));
        Point other = folded(second, first, from.tangent(0).times(-1));
        return one.towards(other, 0.5);
    }

    /** Where the seam that leads to the dart, mirrored in the leg, meets the middle line. */
    private Point folded(Point first, Point second, Point seam) {
        Point leg = first.minus(point).unit();
        Point middle = leg.plus(second.minus(point).unit()).unit();
        Point back = seam.times(-1);
        Point mirrored = leg.times(2 * back.dot(leg)).minus(back);
        double along = point.minus(first).cross(middle) / mirrored.cross(middle);
        return Double.isFinite(along) ? first.plus(mirrored.times(along)) : first.towards(second, 0.5);
    }

    /** The enlargement and turn that takes two places to two others. */
    private static Affine between(Point a, Point b, Point newA, Point newB) {
        Point was = b.minus(a);
        Point is = newB.minus(newA);
        double size = was.dot(was);
        double cos = was.dot(is) / size;
        double sin = was.cross(is) / size;
        Affine turn = new Affine(cos, sin, -sin, cos, 0, 0);
        return Affine.translation(newA.minus(turn.apply(a))).after(turn);
    }
}
