package easewright.geom;

import java.util.ArrayList;
import java.util.List;

/** Real roots in 0…1 of small polynomials, in rising order. */
final class Roots {
    private Roots() {}

    /** Roots of a t² + b t + c strictly inside 0…1. */
    static List<Double> unitQuadratic(double a, double b, double c) {
        double scale = Math.max(Math.abs(a), Math.max(Math.abs(b), Math.abs(c)));
        if (Math.abs(a) <= 1e-14 * scale) {
            return b == 0 ? List.of() : inside(-c / b, Double.NaN);
        }
        double disc = b * b - 4 * a * c;
        if (disc < 0) {
            return List.of();
        }
        // The stable form: no subtraction of nearly equal numbers.
        double q = -(b + Math.copySign(Math.sqrt(disc), b)) / 2;
        double one = q / a;
        double two = q == 0 ? one : c / q;
        return one <= two ? inside(one, two) : inside(two, one);
    }

    private static List<Double> inside(double low, double high) {
        boolean first = low > 0 && low < 1;
        boolean second = high > 0 && high < 1 && high != low;
        if (first) {
            return second ? List.of(low, high) : List.of(low);
        }
        return second ? List.of(high) : List.of();
    }

    /**
     * Roots in 0…1 (ends included) of the cubic with the given Bernstein coefficients. Bracketed between its
     * extremes and bisected with Newton steps, so each is true to the last bits; a polynomial that is zero
     * throughout has none.
     */
    static List<Double> unitBernsteinCubic(double b0, double b1, double b2, double b3) {
        List<Double> roots = new ArrayList<>();
        if (b0 == 0 && b1 == 0 && b2 == 0 && b3 == 0) {
            return roots;
        }
        if ((b0 > 0 && b1 > 0 && b2 > 0 && b3 > 0) || (b0 < 0 && b1 < 0 && b2 < 0 && b3 < 0)) {
            return roots;
        }
        List<Double> stops = new ArrayList<>();
        stops.add(0.0);
        stops.addAll(unitQuadratic(3 * (b3 - 3 * b2 + 3 * b1 - b0), 6 * (b2 - 2 * b1 + b0), 3 * (b1 - b0)));
        stops.add(1.0);
        for (int i = 0; i + 1 < stops.size(); i++) {
            double low = stops.get(i);
            double high = stops.get(i + 1);
            double atLow = value(b0, b1, b2, b3, low);
            double atHigh = value(b0, b1, b2, b3, high);
            if (atLow == 0) {
                add(roots, low);
            }
            if (atLow * atHigh < 0) {
                add(roots, bracketed(b0, b1, b2, b3, low, high, atLow));
            }
        }
        if (b3 == 0) {
            add(roots, 1.0);
        }
        return roots;
    }

    /** Distance from the line, times the length of {@code direction}: positive on the clockwise side of it. */
    static double side(Point p, Point through, Point direction) {
        return direction.x() * (p.y() - through.y()) - direction.y() * (p.x() - through.x());
    }

    static boolean clockwise(double side, boolean zeroIsClockwise) {
        return zeroIsClockwise ? side >= 0 : side > 0;
    }

    /** Where the cubic with the given Bernstein coefficients changes its sign, zero having the sign asked for. */
    static List<Double> signChanges(double b0, double b1, double b2, double b3, boolean zeroIsPositive) {
        boolean sign = clockwise(b0, zeroIsPositive);
        if (clockwise(b1, zeroIsPositive) == sign
                && clockwise(b2, zeroIsPositive) == sign
                && clockwise(b3, zeroIsPositive) == sign) {
            return List.of();
        }
        List<Double> stops =
                new ArrayList<>(unitQuadratic(3 * (b3 - 3 * b2 + 3 * b1 - b0), 6 * (b2 - 2 * b1 + b0), 3 * (b1 - b0)));
        stops.add(1.0);
        List<Double> changes = new ArrayList<>();
        double low = 0;
        for (double high : stops) {
            double atLow = value(b0, b1, b2, b3, low);
            double atHigh = value(b0, b1, b2, b3, high);
            if (clockwise(atLow, zeroIsPositive) != clockwise(atHigh, zeroIsPositive)) {
                if (atLow == 0 || atHigh == 0) {
                    changes.add(atLow == 0 ? low : high);
                } else {
                    changes.add(bracketed(b0, b1, b2, b3, low, high, atLow));
                }
            }
            low = high;
        }
        return changes;
    }

    private static void add(List<Double> roots, double t) {
        if (roots.isEmpty() || t - roots.get(roots.size() - 1) > 1e-14) {
            roots.add(t);
        }
    }

    private static double value(double b0, double b1, double b2, double b3, double t) {
        if (t == 0) {
            return b0;
        }
        if (t == 1) {
            return b3;
        }
        double s = 1 - t;
        return s * s * s * b0 + 3 * s * s * t * b1 + 3 * s * t * t * b2 + t * t * t * b3;
    }

    private static double bracketed(
            double b0, double b1, double b2, double b3, double from, double to, double valueAtFrom) {
        double low = from;
        double high = to;
        double t = (low + high) / 2;
        for (int i = 0; i < 100 && high - low > 1e-16; i++) {
            double value = value(b0, b1, b2, b3, t);
            if (value == 0) {
                return t;
            }
            if ((value > 0) == (valueAtFrom > 0)) {
                low = t;
            } else {
                high = t;
            }
            double s = 1 - t;
            double slope = 3 * (s * s * (b1 - b0) + 2 * s * t * (b2 - b1) + t * t * (b3 - b2));
            double next = slope == 0 ? Double.NaN : t - value / slope;
            double step = next > low && next < high ? next : (low + high) / 2;
            if (step == t) {
                return t;
            }
            t = step;
        }
        return t;
    }
}
