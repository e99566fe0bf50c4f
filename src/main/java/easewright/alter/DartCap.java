package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cap over a dart. One of two straight lines is drawn as if the dart were folded: its lines are the seams beside it
 * mirrored in the legs, up to the middle line (docs/sources.md 4.5). Where a seam lies aslant on the legs, that is another
 * line for a dart pressed to the one side than to the other, with a small corner at a leg. As long as both are as good for
 * cutting, and the seam goes smoothly on over the folded dart, it goes straight on over either leg until both lines meet
 * (common practice). By how much the cap drawn at first differs from that is kept in proportion to the intake. Caps of
 * other forms are enlarged or reduced.
 */
final class DartCap {
    /** A peak no nearer to either leg than this part of the mouth is one. */
    private static final double BESIDE_LEG = 0.02;

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

    /** Where the cap belongs when the dart is pressed to the one side, or to the other, or where that is left open. */
    List<Point> pressed() {
        Point one = folded(was.first(), was.second(), before.tangent(1));
        Point other = folded(was.second(), was.first(), after.tangent(0).times(-1));
        return List.of(one, other, one.towards(other, 0.5));
    }

    /**
     * Where the cap belongs: where both seams led straight on meet; where the seam is not smooth, or it matters to which
     * side the dart is pressed, the mean of what either side asks for. All of these are the same for a smooth seam square to
     * the legs.
     */
    Point trued() {
        Point one = was.first();
        Point two = was.second();
        Point on = before.tangent(1);
        Point off = after.tangent(0);
        List<Point> pressed = pressed();
        boolean smooth = Math.abs(ClosedDart.bends(was, point)) <= Truing.TRUE_WITHIN;
        return smooth && pressed.get(0).distance(pressed.get(1)) <= Cutting.WORKS
                ? ledOn(one, two, on, off).orElse(pressed.get(2))
                : pressed.get(2);
    }

    /** The mean of what folding to one side and to the other asks for. */
    private Point folded(Point first, Point second, Segment to, Segment from) {
        return folded(first, second, to.tangent(1))
                .towards(folded(second, first, from.tangent(0).times(-1)), 0.5);
    }

    /** Where both seams led straight on meet over the mouth; empty where they do not. */
    private static Optional<Point> ledOn(Point first, Point second, Point to, Point from) {
        Point mouth = second.minus(first);
        double cross = to.cross(from);
        Point peak = first.plus(to.times(mouth.cross(from) / cross));
        double along = peak.minus(first).dot(mouth) / mouth.dot(mouth);
        boolean over = along > BESIDE_LEG && along < 1 - BESIDE_LEG;
        return over ? Optional.of(peak) : Optional.empty();
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
