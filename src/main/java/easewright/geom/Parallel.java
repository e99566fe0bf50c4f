package easewright.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * The line at a distance from a cubic: as many cubics as keep the distance true to {@value #TRUE_TO} mm, each with the
 * exact places and directions of the true parallel at its ends.
 */
final class Parallel {
    private static final double TRUE_TO = 1e-7;

    private static final int DEEPEST = 10;

    private final Cubic source;
    private final double distance;
    private final List<Segment> parts = new ArrayList<>();

    private Parallel(Cubic source, double distance) {
        this.source = source;
        this.distance = distance;
    }

    /** The parallel at {@code distance} to the clockwise (on screen) side of the direction of travel. */
    static List<Segment> of(Cubic source, double distance) {
        Parallel parallel = new Parallel(source, distance);
        parallel.fit(0, 1, 0);
        return List.copyOf(parallel.parts);
    }

    private Point beside(double t) {
        return source.beside(t, distance);
    }

    private void fit(double from, double to, int depth) {
        Cubic first = Cubic.hermite(
                beside(from),
                slope(from, 1e-5 * (to - from)).times(to - from),
                beside(to),
                slope(to, -1e-5 * (to - from)).times(to - from));
        Miss middle = miss(first, 0.5, from, to);
        Cubic cubic = closer(first, middle);
        if (depth == DEEPEST || fits(cubic, cubic == first ? middle.by() : 0, from, to)) {
            Point joined = parts.isEmpty()
                    ? cubic.start()
                    : parts.get(parts.size() - 1).end();
            parts.add(new Cubic(joined, cubic.control1(), cubic.control2(), cubic.end()));
            return;
        }
        double half = (from + to) / 2;
        fit(from, half, depth + 1);
        fit(half, to, depth + 1);
    }

    /**
     * Lengthens or shortens both arms of a first fit alike until its middle lies on the true parallel too. The error
     * left by the first fit has the same shape along it, so nearly all of it goes, and few parts are needed.
     */
    private static Cubic closer(Cubic first, Miss middle) {
        Point arm0 = first.control1().minus(first.start());
        Point arm1 = first.control2().minus(first.end());
        double more = -middle.by() / (0.375 * arm0.plus(arm1).dot(middle.across()));
        return Math.abs(more) < 0.1
                ? new Cubic(
                        first.start(),
                        first.start().plus(arm0.times(1 + more)),
                        first.end().plus(arm1.times(1 + more)),
                        first.end())
                : first;
    }

    private boolean fits(Cubic cubic, double middle, double from, double to) {
        return Math.abs(middle) <= TRUE_TO
                && Math.abs(miss(cubic, 0.25, from, to).by()) <= TRUE_TO
                && Math.abs(miss(cubic, 0.75, from, to).by()) <= TRUE_TO;
    }

    /** By how much a place lies too far from the source, and the direction away from it. */
    private record Miss(double by, Point across) {}

    private Miss miss(Cubic cubic, double u, double from, double to) {
        Point p = cubic.at(u);
        double t = from + (to - from) * u;
        Point off = p.minus(source.at(t));
        Point d1 = source.derivative(t);
        double bend = d1.dot(d1) - off.dot(source.secondDerivative(t));
        if (bend > 0) {
            // The places at t and u lie nearly across from one another already: one step of Newton's method is enough.
            t = Math.min(1, Math.max(0, t + off.dot(d1) / bend));
        }
        Point across = source.tangent(t).quarterTurned();
        return new Miss(p.minus(source.at(t)).dot(across) - distance, across);
    }

    /** The derivative of the parallel: C′ (1 − d κ), κ counted positive towards the clockwise side. */
    private Point slope(double t, double step) {
        Point d1 = source.derivative(t);
        double square = d1.dot(d1);
        double size = source.start().distance(source.control1())
                + source.control1().distance(source.control2())
                + source.control2().distance(source.end());
        if (square < 1e-12 * size * size) {
            // A control place on its end: no curvature there; the slope is taken from a short step inwards.
            return beside(t + step).minus(beside(t)).times(1 / step);
        }
        double bend = d1.cross(source.secondDerivative(t)) / (square * Math.sqrt(square));
        return d1.times(1 - distance * bend);
    }
}
