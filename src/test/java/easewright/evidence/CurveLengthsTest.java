package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Lengths of curves that have a closed form (docs/sources.md 9). */
class CurveLengthsTest extends Topic {
    private static final Source FORM = Source.calculated("closed form, docs/sources.md 9");
    private static final double PROMISED = 1e-9;

    @Override
    String title() {
        return "Lengths of curves";
    }

    @Override
    String words() {
        return "Curves whose length can be written down. The promise is a billionth of the length; curves that are"
                + " no cubics are drawn with many small ones, and the drawing costs what is allowed there.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>(List.of(
                length("y = x², 0 to 1: √5/2 + asinh(2)/4", 1.478942857544597433827906, parabola(0.5, 1)),
                length("y = x², 0 to 2: √17 + asinh(4)/4", 4.646783762432935873382616, parabola(1, 2)),
                length(
                        "the same from 0 to 1 drawn as a cubic",
                        1.478942857544597433827906,
                        cubic("0,0 (0.3333333333333333,0 0.6666666666666667,0.3333333333333333) 1,1")),
                length(
                        "y² = x³, which starts in a cusp: (13√13 − 8)/27",
                        1.439709873371550400390736,
                        cubic("0,0 (0,0 0.3333333333333333,0) 1,1")),
                length("cubic (0,0)(0,1)(1,1)(1,0)", 2, cubic("0,0 (0,1 1,1) 1,0")),
                length("armhole-like cubic, by quadrature", 11.34169308635022125296773, cubic("0,0 (0,5 2,8) 6,8")),
                length("Bézier quarter circle, by quadrature", 1.571016698, quarter()),
                fitted("arc of chord 8 and sagitta 2", 9.272952180016123, 128, arc()),
                fitted("cycloid arch, radius 1", 8, 400, CurveLengthsTest::cycloid),
                fitted("astroid, side 1", 6, 400, CurveLengthsTest::astroid),
                fitted("cardioid, a = 1", 8, 400, CurveLengthsTest::cardioid)));
        checks.add(ellipse("2", "1", 9.688448220547676198428503));
        checks.add(ellipse("5", "3", 25.52699886339812846617866));
        checks.add(Check.number(
                "circle, radius 40, drawn as SVG",
                FORM,
                "mm",
                80 * Math.PI,
                Drawn.length(Drawn.only("<circle r='40'/>")),
                1e-3));
        return checks;
    }

    private static Check length(String subject, double expected, Segment segment) {
        return Check.number(subject, FORM, "", expected, segment.length(), PROMISED);
    }

    private static Cubic parabola(double control, double to) {
        return Cubic.fromQuadratic(new Point(0, 0), new Point(control, 0), new Point(to, to * to));
    }

    private static Segment cubic(String text) {
        return Sketch.curve(text).segments().get(0);
    }

    static Cubic quarter() {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        return new Cubic(new Point(1, 0), new Point(1, k), new Point(k, 1), new Point(0, 1));
    }

    private static Check ellipse(String rx, String ry, double expected) throws Exception {
        double got = Drawn.length(Drawn.only("<ellipse rx='" + rx + "' ry='" + ry + "'/>"));
        return Check.number("ellipse " + rx + ", " + ry + ", drawn as SVG", FORM, "mm", expected, got, 1e-3);
    }

    /** A place and the rate at which it moves. */
    private record Motion(Point at, Point speed) {}

    private static Check fitted(String subject, double expected, int parts, DoubleFunction<Motion> from0To1) {
        List<Segment> cubics = new ArrayList<>();
        Motion last = from0To1.apply(0);
        for (int i = 1; i <= parts; i++) {
            Motion next = from0To1.apply(i / (double) parts);
            cubics.add(Cubic.hermite(
                    last.at(),
                    last.speed().times(1.0 / parts),
                    next.at(),
                    next.speed().times(1.0 / parts)));
            last = next;
        }
        return Check.number(subject + ", " + parts + " cubics", FORM, "", expected, new Curve(cubics).length(), 1e-7);
    }

    private static DoubleFunction<Motion> arc() {
        double half = Math.asin(4.0 / 5);
        return u -> {
            double a = -half + 2 * half * u;
            return new Motion(
                    new Point(5 * Math.sin(a), -5 * Math.cos(a)),
                    new Point(5 * Math.cos(a), 5 * Math.sin(a)).times(2 * half));
        };
    }

    private static Motion cycloid(double u) {
        double a = 2 * Math.PI * u;
        return new Motion(
                new Point(a - Math.sin(a), 1 - Math.cos(a)),
                new Point(1 - Math.cos(a), Math.sin(a)).times(2 * Math.PI));
    }

    private static Motion astroid(double u) {
        double c = Math.cos(2 * Math.PI * u);
        double s = Math.sin(2 * Math.PI * u);
        return new Motion(new Point(c * c * c, s * s * s), new Point(-3 * c * c * s, 3 * s * s * c).times(2 * Math.PI));
    }

    private static Motion cardioid(double u) {
        double a = 2 * Math.PI * u;
        double r = 1 - Math.cos(a);
        return new Motion(
                new Point(r * Math.cos(a), r * Math.sin(a)),
                new Point(Math.sin(a) * Math.cos(a) - r * Math.sin(a), Math.sin(a) * Math.sin(a) + r * Math.cos(a))
                        .times(2 * Math.PI));
    }
}
