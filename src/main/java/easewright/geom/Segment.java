package easewright.geom;

import java.util.List;

/**
 * One stretch of an outline, from {@link #start()} to {@link #end()}. Places along it are named by a parameter t
 * from 0 to 1, which is not the fraction of its length (see {@link #parameterAtLength(double)}).
 */
public sealed interface Segment permits Line, Cubic {
    Point start();

    Point end();

    /** The place at t; exactly start at 0 and exactly end at 1. */
    Point at(double t);

    /** The rate of change of the place with t, in mm. */
    Point derivative(double t);

    /**
     * The unit direction of travel at t, also where the derivative vanishes at an end.
     *
     * @throws ArithmeticException if the whole segment is one place
     */
    Point tangent(double t);

    /** Length along the curve, mm. */
    double length();

    /** Length along the curve from the start to t, mm. */
    double lengthTo(double t);

    /** Whether it is more than one place. */
    boolean hasLength();

    /** The part from t0 to t1, t0 ≤ t1; this very object for 0 to 1. */
    Segment between(double t0, double t1);

    Segment reversed();

    Segment transformed(Affine map);

    /** The place at a distance, mm, to the clockwise (on screen) side of the direction of travel at t. */
    default Point beside(double t, double distance) {
        return at(t).plus(tangent(t).quarterTurned().times(distance));
    }

    /**
     * The line at a distance, mm, to the clockwise (on screen) side of the direction of travel; this very object at 0.
     * Lines stay lines; cubics become as many cubics as keep the distance true to 1e-7 mm.
     *
     * @throws ArithmeticException if the whole segment is one place
     */
    List<Segment> parallel(double distance);

    /** The parameter of the place nearest to {@code p}. */
    double nearest(Point p);

    /** The smallest upright box that holds the segment. */
    Box box();

    /**
     * Where the segment meets the endless line through {@code through} along {@code direction}: parameters in rising
     * order. A segment that lies wholly on the line gives none, since it has no single crossing.
     */
    List<Double> crossings(Point through, Point direction);

    /**
     * Where the segment passes from one side of the endless line to the other: parameters in rising order. Places
     * on the line itself count as lying on its clockwise side if {@code onLineIsClockwise}, else on the other, so that
     * on a closed outline the passages are always even in number, whatever corners or edges lie on the line.
     */
    List<Double> passages(Point through, Point direction, boolean onLineIsClockwise);

    /** A distance, in mm, that no place of the segment undercuts: that to the box around its defining places. */
    double atLeastFrom(Point p);

    /** The exact signed area swept as seen from a place, mm²: ½∫(x dy − y dx) with x and y measured from there. */
    double sweptArea(Point from);

    /** The same as seen from the origin. */
    default double sweptArea() {
        return sweptArea(Point.ORIGIN);
    }

    /** The parameter at which the length from the start is {@code length} (clamped to the segment), mm. */
    default double parameterAtLength(double length) {
        double total = length();
        if (length <= 0 || total == 0) {
            return 0;
        }
        if (length >= total) {
            return 1;
        }
        double low = 0;
        double high = 1;
        double t = length / total;
        for (int i = 0; i < 60; i++) {
            double miss = lengthTo(t) - length;
            if (Math.abs(miss) <= 1e-12 * total) {
                return t;
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double speed = derivative(t).norm();
            double next = speed > 0 ? t - miss / speed : Double.NaN;
            t = next > low && next < high ? next : (low + high) / 2;
        }
        return t;
    }
}
