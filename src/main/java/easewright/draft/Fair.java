package easewright.draft;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Fair curves, as a curved ruler gives them: smooth, through given places, leaving and arriving in given directions. */
final class Fair {
    private Fair() {}

    /** One cubic that leaves and arrives in the given directions; reach is the handle as a share of the chord. */
    static Cubic bow(Point from, Point leaving, Point to, Point arriving, double reach) {
        return bow(from, leaving, reach, to, arriving, reach);
    }

    /** The same with a handle of its own at each end. */
    static Cubic bow(Point from, Point leaving, double reach1, Point to, Point arriving, double reach2) {
        double chord = from.distance(to);
        return new Cubic(
                from,
                from.plus(leaving.unit().times(reach1 * chord)),
                to.minus(arriving.unit().times(reach2 * chord)),
                to);
    }

    /**
     * The rounding of a corner: leaves {@code from} towards {@code corner1}, arrives at {@code to} from
     * {@code corner2}, and passes the guide corner at the wanted distance along {@code diagonal}.
     */
    static Cubic rounding(Point from, Point corner1, Point to, Point corner2, Point guide, Point diagonal, double off) {
        DoubleUnaryOperator distance = k -> {
            Cubic curve = rounded(from, corner1, to, corner2, k);
            List<Double> met = curve.crossings(guide, diagonal);
            if (met.isEmpty()) {
                throw DraftRefused.line(DraftLine.ROUNDED_CORNER);
            }
            return curve.at(met.get(0)).distance(guide);
        };
        double k = Solve.when(DraftLine.ROUNDED_CORNER, distance, off, 0.2, 0.98);
        return rounded(from, corner1, to, corner2, k);
    }

    private static Cubic rounded(Point from, Point corner1, Point to, Point corner2, double k) {
        return new Cubic(from, from.towards(corner1, k), to.towards(corner2, k), to);
    }

    /**
     * A curve with continuous curvature through all the places (a cubic spline over the chord lengths) that leaves
     * the first and reaches the last in the given directions.
     */
    static Curve through(List<Point> places, Point leaving, Point arriving) {
        int n = places.size() - 1;
        double[] h = new double[n];
        for (int i = 0; i < n; i++) {
            h[i] = places.get(i).distance(places.get(i + 1));
        }
        Point[] slope = new Point[n + 1];
        slope[0] = leaving.unit();
        slope[n] = arriving.unit();
        // Tridiagonal system for the inner slopes, swept once forwards and once back.
        double[] upper = new double[n + 1];
        Point[] right = new Point[n + 1];
        upper[0] = 0;
        right[0] = slope[0];
        for (int i = 1; i < n; i++) {
            Point before = places.get(i).minus(places.get(i - 1)).times(1 / h[i - 1]);
            Point after = places.get(i + 1).minus(places.get(i)).times(1 / h[i]);
            Point sum = before.times(h[i]).plus(after.times(h[i - 1])).times(3);
            double diagonal = 2 * (h[i - 1] + h[i]) - h[i] * upper[i - 1];
            upper[i] = h[i - 1] / diagonal;
            right[i] = sum.minus(right[i - 1].times(h[i])).times(1 / diagonal);
        }
        for (int i = n - 1; i > 0; i--) {
            slope[i] = right[i].minus(slope[i + 1].times(upper[i]));
        }
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            segments.add(
                    Cubic.hermite(places.get(i), slope[i].times(h[i]), places.get(i + 1), slope[i + 1].times(h[i])));
        }
        return new Curve(segments);
    }
}
