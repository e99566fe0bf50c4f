package easewright.draft;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.List;

/**
 * What the front and the back of an upper garment have in common: neck, shoulder line, armhole. The centre line is
 * x = 0, the nape y = 0.
 *
 * @param neck  where the neckline meets the centre
 * @param side  side neck point
 * @param pitch where the armhole runs upright
 * @param under underarm point
 */
record BodiceHalf(Point neck, Point side, Point pitch, Point under) {
    /** The shoulder end, for a slope below the level in degrees. */
    Point shoulderEnd(double slope, double length) {
        return side.plus(new Point(length, 0).turned(Math.toRadians(slope)));
    }

    /**
     * From the centre, square to it, to the side neck point.
     *
     * @param slope    of the shoulder, degrees below level
     * @param lean     by how much it is flatter there than square to the shoulder, degrees; the other half of the
     *                 garment leans as much the other way, so that the neckline runs on over the shoulder seam
     * @param fullness handle lengths as shares of the run and the rise
     */
    Curve neckline(double slope, double lean, double fullness) {
        Point arriving = new Point(0, -1).turned(Math.toRadians(slope + lean));
        double rise = neck.y() - side.y();
        double run = side.x();
        Point control1 = neck.plus(new Point(run * fullness, 0));
        Point control2 = side.minus(arriving.times(rise * fullness));
        return new Curve(List.of(new Cubic(neck, control1, control2, side)));
    }

    /**
     * From the shoulder end to the underarm: square to the shoulder, upright at the pitch, square to the side seam at the
     * underarm, so that the armhole runs on over it, and passing the corner of pitch and underarm at the given distance.
     *
     * @param downSide direction of the side seam at the underarm
     */
    Curve armhole(Point shoulderEnd, Point shoulderDirection, double offCorner, Point downSide) {
        Point corner = new Point(pitch.x(), under.y());
        Point square = downSide.quarterTurned();
        Point arriving = under.plus(square.times((pitch.x() - under.x()) / square.x()));
        return new Curve(List.of(
                Fair.bow(shoulderEnd, shoulderDirection.quarterTurned(), 0.3, pitch, new Point(0, 1), 0.48),
                Fair.rounding(pitch, corner, under, arriving, corner, new Point(1, -1), offCorner)));
    }

    static Curve straight(Point from, Point to) {
        return new Curve(List.of(new Line(from, to)));
    }
}
