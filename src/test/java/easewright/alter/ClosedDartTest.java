package easewright.alter;

import static easewright.alter.Panels.panel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.Dart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dart in a waist that is drawn straight over its mouth. */
class ClosedDartTest {
    private static final double DEEP = 90;

    private static ClosedDart closed(double half, double aside) {
        Dart dart = Panels.dart(new Point(100 - half, 0), new Point(100 + half, 0), new Point(100 + aside, DEEP));
        return ClosedDart.of(panel("front", 600), dart).orElseThrow();
    }

    /** Closed, the seam turns by the angle between the legs, and its mirror image in either leg meets in the middle. */
    @ParameterizedTest
    @CsvSource({"5", "10", "25"})
    void theSeamBendsByTheAngleOfTheDart(double half) {
        ClosedDart dart = closed(half, 0);
        double angle = 2 * Math.atan(half / DEEP);
        assertThat(Math.abs(dart.bends())).isCloseTo(angle, within(1e-9));
        assertThat(dart.unbent().bends()).isZero();
        assertThat(dart.longer()).isCloseTo(0, within(1e-9));
        assertThat(dart.peak().orElseThrow().distance(new Point(100, -half * Math.tan(angle))))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void theFirstLegIsLongerWhereThePointLiesFartherFromIt() {
        double longer = Math.hypot(14, DEEP) - Math.hypot(6, DEEP);
        assertThat(closed(10, 4).longer()).isCloseTo(longer, within(1e-9));
        assertThat(closed(10, -4).longer()).isCloseTo(-longer, within(1e-9));
    }
}
