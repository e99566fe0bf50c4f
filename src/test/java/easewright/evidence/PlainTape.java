package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Measures a piece with its grain upright from nothing but the defining points of its outline: polynomials written out
 * in powers of t, roots by Brent's method and lengths by quadrature, both of Apache Commons Math. Shares no code with
 * the program's own measuring.
 */
final class PlainTape {
    private static final int STEPS = 256;

    private final Piece piece;

    PlainTape(Piece piece) {
        this.piece = piece;
    }

    /** One segment as x(t) and y(t). */
    private record Track(PolynomialFunction x, PolynomialFunction y) {
        static Track of(Segment s) {
            if (s instanceof Cubic c) {
                return new Track(
                        cubic(
                                c.start().x(),
                                c.control1().x(),
                                c.control2().x(),
                                c.end().x()),
                        cubic(
                                c.start().y(),
                                c.control1().y(),
                                c.control2().y(),
                                c.end().y()));
            }
            return new Track(
                    straight(s.start().x(), s.end().x()),
                    straight(s.start().y(), s.end().y()));
        }

        private static PolynomialFunction cubic(double p0, double p1, double p2, double p3) {
            return new PolynomialFunction(
                    new double[] {p0, 3 * (p1 - p0), 3 * (p0 - 2 * p1 + p2), p3 - 3 * p2 + 3 * p1 - p0});
        }

        private static PolynomialFunction straight(double from, double to) {
            return new PolynomialFunction(new double[] {from, to - from});
        }

        double length(double from, double to) {
            if (from == to) {
                return 0;
            }
            PolynomialFunction dx = x.polynomialDerivative();
            PolynomialFunction dy = y.polynomialDerivative();
            return new IterativeLegendreGaussIntegrator(12, 1e-13, 1e-11)
                    .integrate(100_000, t -> Math.hypot(dx.value(t), dy.value(t)), from, to);
        }

        /** All t at which a function of t passes through zero. */
        static List<Double> zeros(PolynomialFunction f) {
            List<Double> found = new ArrayList<>();
            for (int i = 0; i < STEPS; i++) {
                double low = i / (double) STEPS;
                double high = (i + 1) / (double) STEPS;
                if (f.value(low) == 0) {
                    found.add(low);
                } else if (f.value(low) * f.value(high) < 0) {
                    found.add(new BrentSolver(1e-14, 1e-14).solve(200, f, low, high));
                }
            }
            return found;
        }
    }

    private static PolynomialFunction minus(PolynomialFunction f, double value) {
        return f.subtract(new PolynomialFunction(new double[] {value}));
    }

    /** From the leftmost to the rightmost meeting with the level, without what darts fold away there, mm. */
    double width(double y) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (Segment s : piece.outline().segments()) {
            Track track = Track.of(s);
            for (double t : Track.zeros(minus(track.y(), y))) {
                left = Math.min(left, track.x().value(t));
                right = Math.max(right, track.x().value(t));
            }
        }
        double folded = 0;
        for (Dart dart : piece.darts()) {
            Point tip = dart.point();
            double one = (tip.y() - y) / (tip.y() - dart.mouth1().y());
            double other = (tip.y() - y) / (tip.y() - dart.mouth2().y());
            if (one > 0 && one < 1 && other > 0 && other < 1) {
                folded += Math.abs(tip.x()
                        + one * (dart.mouth1().x() - tip.x())
                        - tip.x()
                        - other * (dart.mouth2().x() - tip.x()));
            }
        }
        return right - left - folded;
    }

    /** Length of an edge along its curve, without the dart mouths on it, mm. */
    double edge(String name) {
        Edge edge = piece.edge(name).orElseThrow();
        List<Segment> run = run(edge);
        double length = run.stream().mapToDouble(s -> Track.of(s).length(0, 1)).sum();
        for (Dart dart : piece.darts()) {
            if (dart.edge().filter(name::equals).isPresent()) {
                length -= Math.abs(along(run, dart.mouth1()) - along(run, dart.mouth2()));
            }
        }
        return length;
    }

    /** Segments from the edge's first corner to its last; both are ends of segments. */
    private List<Segment> run(Edge edge) {
        List<Segment> all = piece.outline().segments();
        int first = 0;
        while (all.get(first).start().distance(edge.from()) > 1e-6) {
            first++;
        }
        List<Segment> run = new ArrayList<>();
        for (int i = first; run.isEmpty() || run.get(run.size() - 1).end().distance(edge.to()) > 1e-6; i++) {
            run.add(all.get(i % all.size()));
        }
        return run;
    }

    /** How far along a run a place lies on it that the run passes once from left to right or back. */
    private static double along(List<Segment> run, Point place) {
        double before = 0;
        for (Segment s : run) {
            Track track = Track.of(s);
            for (double t : Track.zeros(minus(track.x(), place.x()))) {
                if (Math.abs(track.y().value(t) - place.y()) < 1e-3) {
                    return before + track.length(0, t);
                }
            }
            before += track.length(0, 1);
        }
        if (run.get(run.size() - 1).end().distance(place) < 1e-3) {
            return before;
        }
        throw new AssertionError("Not on the run: " + place);
    }
}
