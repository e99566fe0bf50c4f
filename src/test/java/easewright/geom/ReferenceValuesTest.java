package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The closed forms of docs/sources.md 9. */
class ReferenceValuesTest {
    private static Cubic cubic(String text) {
        return (Cubic) Sketch.curve(text).segments().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "'0,0 (0.3333333333333333,0 0.6666666666666667,0.3333333333333333) 1,1', 1.478942857544597433827906",
        "'0,0 (0,0 0.3333333333333333,0) 1,1', 1.439709873371550400390736",
        "'0,0 (0,1 1,1) 1,0', 2.000000000000000",
        "'0,0 (0,5 2,8) 6,8', 11.34169308635022125296773"
    })
    void lengthOfCubics(String curve, double expected) {
        assertThat(cubic(curve).length()).isCloseTo(expected, within(1e-9));
    }

    /** y = x² from 0 to 1 and to 2: √5/2 + asinh(2)/4 and √17 + asinh(4)/4. */
    @Test
    void lengthOfRaisedQuadratics() {
        assertThat(Cubic.fromQuadratic(new Point(0, 0), new Point(0.5, 0), new Point(1, 1))
                        .length())
                .isCloseTo(1.478942857544597433827906, within(1e-12));
        assertThat(Cubic.fromQuadratic(new Point(0, 0), new Point(1, 0), new Point(2, 4))
                        .length())
                .isCloseTo(Math.sqrt(17) + (Math.log(4 + Math.sqrt(17))) / 4, within(1e-12));
    }

    /** The quarter circle of κ = 4(√2−1)/3: length 1.571016698, area × 4 = 3.142472333, radius off by 2.7253e-4. */
    @Test
    void quarterCircleOfBezier() {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        Cubic quarter = new Cubic(new Point(1, 0), new Point(1, k), new Point(k, 1), new Point(0, 1));
        assertThat(quarter.length()).isCloseTo(1.571016698, within(1e-9));
        assertThat(4 * quarter.sweptArea()).isCloseTo(3.142472333, within(1e-9));
        double most = 0;
        for (double t = 0; t <= 1; t += 1e-3) {
            most = Math.max(most, quarter.at(t).norm() - 1);
        }
        assertThat(most).isCloseTo(2.7253e-4, within(1e-8));
    }

    /** Many short arcs of the circle by chord 8 and sagitta 2: R = 5, length 9.272952180016123. */
    @Test
    void circularArcInFineCubics() {
        double half = Math.asin(4.0 / 5);
        int parts = 128;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double a = -half + 2 * half * i / parts;
            double b = -half + 2 * half * (i + 1) / parts;
            sum += Cubic.hermite(
                            new Point(5 * Math.sin(a), -5 * Math.cos(a)),
                            new Point(5 * Math.cos(a), 5 * Math.sin(a)).times(b - a),
                            new Point(5 * Math.sin(b), -5 * Math.cos(b)),
                            new Point(5 * Math.cos(b), 5 * Math.sin(b)).times(b - a))
                    .length();
        }
        assertThat(sum).isCloseTo(9.272952180016123, within(1e-8));
    }

    @Test
    void areaOfPolygonHasASign() {
        assertThat(Sketch.outline("0,0 13,0 13,23 0,23").signedArea()).isCloseTo(299, within(1e-12));
        assertThat(Sketch.outline("0,0 13,0 13,23 0,23").reversed().signedArea())
                .isCloseTo(-299, within(1e-12));
    }

    /** Far from the origin no digits are lost. */
    @Test
    void areaKeepsItsDigitsFarAway() {
        Outline near = Sketch.outline("0,0 (4,1 9,-1) 13,0 13,23 0,23");
        Outline far = near.transformed(Affine.translation(100000, -70000));
        assertThat(far.signedArea()).isCloseTo(near.signedArea(), within(1e-8));
    }
}
