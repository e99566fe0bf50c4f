package easewright.geom;

/**
 * Finds the parameter of a cubic nearest to a point: of evenly spaced places those nearer than their neighbours, and
 * there the zero of the slope of the distance. Comparing distances alone would stop at the root of the precision.
 */
final class NearestOnCubic {
    private static final int SAMPLES = 24;
    private static final int MOST_STEPS = 80;

    private final double px0;
    private final double px1;
    private final double px2;
    private final double px3;
    private final double py0;
    private final double py1;
    private final double py2;
    private final double py3;

    /** Everything is taken relative to the point, so that distances keep their digits. */
    NearestOnCubic(Cubic c, Point p) {
        px0 = c.start().x() - p.x();
        px1 = c.control1().x() - p.x();
        px2 = c.control2().x() - p.x();
        px3 = c.end().x() - p.x();
        py0 = c.start().y() - p.y();
        py1 = c.control1().y() - p.y();
        py2 = c.control2().y() - p.y();
        py3 = c.end().y() - p.y();
    }

    double find() {
        double[] squares = new double[SAMPLES + 1];
        int nearest = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            squares[i] = square(i / (double) SAMPLES);
            nearest = squares[i] < squares[nearest] ? i : nearest;
        }
        double found = around(nearest);
        double least = square(found);
        // Another stretch that comes about as near may come nearer between its places.
        double step = fastest() / SAMPLES;
        for (int i = 0; i <= SAMPLES; i++) {
            boolean dips = i != nearest
                    && (i == 0 || squares[i] <= squares[i - 1])
                    && (i == SAMPLES || squares[i] <= squares[i + 1]);
            if (dips && Math.sqrt(squares[i]) - step < Math.sqrt(least)) {
                double other = around(i);
                if (square(other) < least) {
                    found = other;
                    least = square(other);
                }
            }
        }
        // Ends win ties, so that corners are found as corners.
        if (px0 * px0 + py0 * py0 <= least) {
            return 0;
        }
        return px3 * px3 + py3 * py3 <= least ? 1 : found;
    }

    /** A speed that the curve does not exceed. */
    private double fastest() {
        double one = (px1 - px0) * (px1 - px0) + (py1 - py0) * (py1 - py0);
        double two = (px2 - px1) * (px2 - px1) + (py2 - py1) * (py2 - py1);
        double three = (px3 - px2) * (px3 - px2) + (py3 - py2) * (py3 - py2);
        return 3 * Math.sqrt(Math.max(one, Math.max(two, three)));
    }

    private double around(int sample) {
        double low = Math.max(0, (sample - 1) / (double) SAMPLES);
        double high = Math.min(1, (sample + 1) / (double) SAMPLES);
        double in = slope(low);
        double out = slope(high);
        if (sample == 0 && in >= 0 && out > 0) {
            return 0;
        }
        if (sample == SAMPLES && out <= 0 && in < 0) {
            return 1;
        }
        return in < 0 && out > 0 ? zero(low, high, sample / (double) SAMPLES) : narrowed(low, high);
    }

    /** The zero between two places of which the first lies before it: by Newton's method, kept between them by halving. */
    private double zero(double from, double to, double guess) {
        double low = from;
        double high = to;
        double t = guess;
        for (int i = 0; i < MOST_STEPS; i++) {
            double slope = slope(t);
            if (slope == 0) {
                return t;
            }
            if (slope < 0) {
                low = t;
            } else {
                high = t;
            }
            double bend = bend(t);
            double next = bend > 0 ? t - slope / bend : Double.NaN;
            double step = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(step - t) <= Math.ulp(t)) {
                return step;
            }
            t = step;
        }
        return t;
    }

    /** For the rare stretch on which the distance does not fall and rise once: narrowed down by the golden section. */
    private double narrowed(double from, double to) {
        double low = from;
        double high = to;
        double golden = (Math.sqrt(5) - 1) / 2;
        while (high - low > 1e-12) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (square(left) <= square(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        double guess = (low + high) / 2;
        double t = guess;
        for (int i = 0; i < 6 && bend(t) > 0; i++) {
            t = Math.min(1, Math.max(0, t - slope(t) / bend(t)));
        }
        return square(t) <= square(guess) ? t : guess;
    }

    private double square(double t) {
        double x = at(t, px0, px1, px2, px3);
        double y = at(t, py0, py1, py2, py3);
        return x * x + y * y;
    }

    /** Half the rate of change of the squared distance. */
    private double slope(double t) {
        return at(t, px0, px1, px2, px3) * first(t, px0, px1, px2, px3)
                + at(t, py0, py1, py2, py3) * first(t, py0, py1, py2, py3);
    }

    /** The rate of change of the slope. */
    private double bend(double t) {
        double dx = first(t, px0, px1, px2, px3);
        double dy = first(t, py0, py1, py2, py3);
        return dx * dx
                + dy * dy
                + at(t, px0, px1, px2, px3) * second(t, px0, px1, px2, px3)
                + at(t, py0, py1, py2, py3) * second(t, py0, py1, py2, py3);
    }

    private static double at(double t, double a, double b, double c, double d) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    private static double first(double t, double a, double b, double c, double d) {
        double s = 1 - t;
        return 3 * s * s * (b - a) + 6 * s * t * (c - b) + 3 * t * t * (d - c);
    }

    private static double second(double t, double a, double b, double c, double d) {
        return 6 * (1 - t) * (c - 2 * b + a) + 6 * t * (d - 2 * c + b);
    }
}
