package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Dart;

/**
 * How a dart folds shut (worked example W8): lengths in mm, the angle in radians.
 *
 * @param angle     between the legs at the point
 * @param leg1      length of the leg to the first mouth place
 * @param leg2      length of the leg to the second
 * @param peak      tip of the dart cap, on the middle line of the dart, for a seam square to the closed legs
 * @param overChord how far the peak lies beyond the middle of the mouth
 */
public record DartFold(double angle, double leg1, double leg2, Point peak, double overChord) {
    /**
     * @throws IllegalArgumentException if the dart has no depth
     */
    public static DartFold of(Dart dart) {
        Point one = dart.mouth1().minus(dart.point());
        Point two = dart.mouth2().minus(dart.point());
        if (one.norm() == 0 || two.norm() == 0) {
            throw new IllegalArgumentException("Dart " + dart.name() + " has no depth");
        }
        double angle = Math.abs(Math.atan2(one.cross(two), one.dot(two)));
        double leg = (one.norm() + two.norm()) / 2;
        Point middleLine = one.unit().plus(two.unit()).unit();
        double out = leg / Math.cos(angle / 2);
        return new DartFold(
                angle,
                one.norm(),
                two.norm(),
                dart.point().plus(middleLine.times(out)),
                leg * Math.tan(angle / 2) * Math.sin(angle / 2));
    }

    /** By how much the legs differ when folded together, mm; they must be equal to sew. */
    public double difference() {
        return Math.abs(leg1 - leg2);
    }
}
