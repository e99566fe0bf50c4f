package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths of every kind of shape against closed forms, to 0.001 mm, at several drawing scales. */
class ShapeLengthTest {
    private static final double TOLERANCE = 0.001;

    /** A shape in user units, and its length when a unit across is {@code a} mm and a unit down {@code b} mm. */
    private record Shape(String markup, Expected length) {}

    private interface Expected {
        double at(double a, double b);
    }

    /** Root attributes, a wrapping start tag, and mm per unit across and down. */
    private record DrawingScale(String root, String open, String close, double a, double b) {}

    private static final List<Shape> SHAPES = List.of(
            new Shape("<line x1='1' y1='2' x2='4' y2='6'/>", (a, b) -> Math.hypot(3 * a, 4 * b)),
            new Shape("<polyline points='0,0 3,4 3,10'/>", (a, b) -> Math.hypot(3 * a, 4 * b) + 6 * b),
            new Shape("<polygon points='0,0 3,4 0,4'/>", (a, b) -> Math.hypot(3 * a, 4 * b) + 3 * a + 4 * b),
            new Shape("<rect x='1' y='2' width='30' height='20'/>", (a, b) -> 60 * a + 40 * b),
            new Shape("<rect width='30' height='20' rx='5'/>", (a, b) -> 40 * a + 20 * b + ellipse(5 * a, 5 * b)),
            new Shape(
                    "<rect width='30' height='20' rx='4' ry='6'/>", (a, b) -> 44 * a + 16 * b + ellipse(4 * a, 6 * b)),
            new Shape("<rect width='30' height='20' ry='999'/>", (a, b) -> ellipse(15 * a, 10 * b)),
            new Shape("<circle cx='5' cy='7' r='12'/>", (a, b) -> ellipse(12 * a, 12 * b)),
            new Shape("<ellipse cx='5' cy='7' rx='5' ry='3'/>", (a, b) -> ellipse(5 * a, 3 * b)),
            new Shape("<ellipse rx='5' ry='auto'/>", (a, b) -> ellipse(5 * a, 5 * b)),
            new Shape("<path d='M20 0A20 20 0 1 1-20 0'/>", (a, b) -> ellipse(20 * a, 20 * b) / 2),
            new Shape("<path d='M0 0C0 0 10 0 10 0z'/>", (a, b) -> 20 * a),
            new Shape("<path d='M0 0Q5 0 10 10'/>", (a, b) -> parabola(10 * a, 10 * b)));

    private static final List<DrawingScale> SCALES = List.of(
            new DrawingScale("width='1000mm' height='500mm' viewBox='0 0 1000 500'", "", "", 1, 1),
            new DrawingScale("width='100mm' height='50mm' viewBox='0 0 1000 500'", "", "", 0.1, 0.1),
            new DrawingScale("width='40in' height='20in' viewBox='0 0 40 20'", "", "", 25.4, 25.4),
            new DrawingScale("width='72pt' height='72pt' viewBox='-9 -9 72 72'", "", "", 25.4 / 72, 25.4 / 72),
            new DrawingScale("width='1m' height='50cm' viewBox='0 0 100 50'".replace("1m", "100cm"), "", "", 10, 10),
            new DrawingScale(
                    "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='none'", "", "", 2, 1),
            new DrawingScale("width='200mm' height='100mm' viewBox='0 0 100 100'", "", "", 1, 1),
            new DrawingScale(
                    "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='xMinYMax slice'",
                    "",
                    "",
                    2,
                    2),
            new DrawingScale(
                    "width='300mm' height='300mm' viewBox='0 0 300 300'",
                    "<g transform='translate(7,9) rotate(33)'><g transform='scale(3) rotate(-33 4 5)'>"
                            + "<svg width='10' height='10' viewBox='0 0 40 40'>",
                    "</svg></g></g>",
                    0.75,
                    0.75),
            new DrawingScale(
                    "width='300mm' height='300mm' viewBox='0 0 300 300'",
                    "<g transform='matrix(0 2 -3 0 100 100)'>",
                    "</g>",
                    2,
                    3));

    static List<Arguments> everyShapeAtEveryScale() {
        List<Arguments> all = new ArrayList<>();
        for (DrawingScale scale : SCALES) {
            for (Shape shape : SHAPES) {
                all.add(Arguments.of(scale, shape));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("everyShapeAtEveryScale")
    void lengthMatchesItsClosedForm(DrawingScale scale, Shape shape) {
        Drawing drawing = Drawn.read(Drawn.svg(scale.root(), scale.open() + shape.markup() + scale.close()));
        assertThat(drawing.shapes()).hasSize(1);
        assertThat(Drawn.length(drawing.shapes().get(0)))
                .isCloseTo(shape.length().at(scale.a(), scale.b()), within(TOLERANCE));
    }

    /** Circumference of an ellipse by quadrature; docs/sources.md 9 gives 25.526998863398… for 5, 3. */
    private static double ellipse(double rx, double ry) {
        if (rx == ry) {
            return 2 * Math.PI * rx;
        }
        return 4
                * new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-12)
                        .integrate(100_000, t -> Math.hypot(rx * Math.sin(t), ry * Math.cos(t)), 0, Math.PI / 2);
    }

    /** Length of x = at, y = bt² for t from 0 to 1. */
    private static double parabola(double a, double b) {
        double slope = 2 * b / a;
        double root = Math.sqrt(1 + slope * slope);
        return a / 2 * (root + Math.log(slope + root) / slope);
    }

    @Test
    void theEllipseReferenceItselfIsRight() {
        assertThat(ellipse(5, 3)).isCloseTo(25.52699886339812846617866, within(1e-11));
        assertThat(ellipse(2, 1)).isCloseTo(9.688448220547676198428503, within(1e-11));
        assertThat(parabola(1, 1)).isCloseTo(1.478942857544597433827906, within(1e-12));
    }

    /** A full circle skirt's hem, radius 1.2 m, is true to 0.001 mm as well, whatever the unit. */
    @ParameterizedTest
    @MethodSource("units")
    void bigCirclesAreTrueInEveryUnit(String unit, double mm) {
        Drawing drawing = Drawn.read(Drawn.svg(
                String.format(Locale.ROOT, "width='100%s' height='100%s' viewBox='0 0 100 100'", unit, unit),
                String.format(Locale.ROOT, "<circle r='%.17g'/>", 1200 / mm)));
        assertThat(Drawn.length(drawing.shapes().get(0))).isCloseTo(2400 * Math.PI, within(TOLERANCE));
    }

    static List<Arguments> units() {
        return List.of(
                Arguments.of("mm", 1.0),
                Arguments.of("cm", 10.0),
                Arguments.of("in", 25.4),
                Arguments.of("pt", 25.4 / 72),
                Arguments.of("pc", 25.4 / 6),
                Arguments.of("Q", 0.25),
                Arguments.of("MM", 1.0));
    }
}
