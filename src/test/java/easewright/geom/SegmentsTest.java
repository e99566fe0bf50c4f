package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Lines and cubics, by hand. */
class SegmentsTest {
    private static final Offset<Double> EXACT = within(1e-12);
    private static final Line LINE = new Line(new Point(10, 20), new Point(40, 60));

    private static Cubic cubic(String text) {
        return (Cubic) Sketch.curve(text).segments().get(0);
    }

    private static void assertDirection(Point tangent, double x, double y) {
        assertThat(tangent.distance(new Point(x, y))).isLessThan(1e-3);
        assertThat(tangent.norm()).isCloseTo(1, EXACT);
    }

    @Test
    void lineIsTravelledEvenly() {
        assertThat(LINE.length()).isEqualTo(50);
        assertThat(LINE.lengthTo(0.3)).isCloseTo(15, EXACT);
        assertThat(LINE.derivative(0.7)).isEqualTo(new Point(30, 40));
        assertThat(LINE.tangent(0.7)).isEqualTo(new Point(0.6, 0.8));
        assertThat(LINE.box()).isEqualTo(new Box(10, 20, 40, 60));
        assertThat(LINE.parameterAtLength(15)).isCloseTo(0.3, EXACT);
        assertThat(LINE.parameterAtLength(-1)).isZero();
        assertThat(LINE.parameterAtLength(51)).isEqualTo(1);
    }

    @Test
    void nearestOnALineStopsAtItsEnds() {
        assertThat(LINE.nearest(new Point(10 + 15 + 4, 20 + 20 - 3))).isCloseTo(0.5, EXACT);
        assertThat(LINE.nearest(new Point(0, 0))).isZero();
        assertThat(LINE.nearest(new Point(100, 100))).isEqualTo(1);
        assertThat(new Line(Point.ORIGIN, Point.ORIGIN).nearest(new Point(1, 1)))
                .isZero();
        assertThat(LINE.atLeastFrom(new Point(43, 64))).isEqualTo(5);
        assertThat(LINE.atLeastFrom(new Point(7, 16))).isEqualTo(5);
    }

    @Test
    void lineMeetsALevelOnceEndsIncluded() {
        Point across = new Point(1, 0);
        assertThat(LINE.crossings(new Point(0, 30), across)).containsExactly(0.25);
        assertThat(LINE.crossings(new Point(0, 20), across)).hasSize(1).allMatch(t -> t == 0);
        assertThat(LINE.crossings(new Point(0, 60), across)).containsExactly(1.0);
        assertThat(LINE.crossings(new Point(0, 60.001), across)).isEmpty();
        assertThat(LINE.crossings(new Point(0, 19.999), across)).isEmpty();
        assertThat(LINE.crossings(new Point(10, 20), new Point(3, 4)))
                .as("lies on it")
                .isEmpty();
        assertThat(LINE.passages(new Point(0, 30), across, true)).containsExactly(0.25);
    }

    @Test
    void aPlaceOnTheLevelCountsOnOneSideOfIt() {
        Point across = new Point(1, 0);
        Line down = new Line(new Point(0, 0), new Point(0, 10));
        Cubic curved = cubic("0,0 (0,3 0,6) 0,10");
        for (Segment s : List.of(down, curved)) {
            assertThat(s.passages(new Point(0, 0), across, true)).isEmpty();
            assertThat(s.passages(new Point(0, 0), across, false)).hasSize(1).allMatch(t -> t == 0);
            assertThat(s.passages(new Point(0, 10), across, true)).hasSize(1).allMatch(t -> t == 1);
            assertThat(s.passages(new Point(0, 10), across, false)).isEmpty();
        }
    }

    @Test
    void directionWhereTheDerivativeVanishes() {
        assertDirection(cubic("0,0 (0,0 30,0) 30,40").tangent(0), 1, 0);
        assertDirection(cubic("0,0 (0,40 30,40) 30,40").tangent(1), 1, 0);
        assertDirection(cubic("0,0 (0,0 0,0) 30,40").tangent(0), 0.6, 0.8);
        assertDirection(cubic("0,0 (0,40 10,40) 30,40").tangent(1), 1, 0);
        assertDirection(cubic("0,0 (0,40 10,40) 30,40").tangent(0), 0, 1);
        assertThatThrownBy(() -> cubic("5,5 (5,5 5,5) 5,5").tangent(0)).isInstanceOf(ArithmeticException.class);
    }

    /** Slow at its start, but not standing still: its own direction counts, not that towards the next place. */
    @Test
    void directionOfASlowStart() {
        Point tangent = cubic("0,0 (0,0.001 1000,0) 2000,0").tangent(0);
        assertThat(tangent.distance(new Point(0, 1))).isLessThan(1e-9);
    }

    /** x = 3t(1−t)·90 + …: an arch from 0 to 0 whose top lies at t = ½. */
    @Test
    void turningPointsOfAnArch() {
        Cubic arch = cubic("0,0 (0,100 90,100) 90,0");
        assertThat(arch.turningPoints()).hasSize(1);
        assertThat(arch.turningPoints().get(0)).isCloseTo(0.5, EXACT);
        assertThat(arch.box()).isEqualTo(new Box(0, 0, 90, 75));
        assertThat(arch.secondDerivative(0)).isEqualTo(new Point(6 * 90, -600));
        assertThat(arch.secondDerivative(1)).isEqualTo(new Point(-6 * 90, -600));
        assertThat(arch.secondDerivative(0.25)).isEqualTo(new Point(3 * 90, -600));
    }

    @Test
    void distanceThatIsNotUndercut() {
        Cubic arch = cubic("0,0 (0,100 90,100) 90,0");
        assertThat(arch.atLeastFrom(new Point(93, 104))).isEqualTo(5);
        assertThat(arch.atLeastFrom(new Point(-3, -4))).isEqualTo(5);
    }

    /** From a place on the axis of a symmetrical arch the nearest is the top; from below its middle, an end. */
    @Test
    void nearestOnAnArch() {
        Cubic arch = cubic("0,0 (0,100 90,100) 90,0");
        assertThat(arch.nearest(new Point(45, 90))).isCloseTo(0.5, within(1e-9));
        assertThat(arch.nearest(new Point(45, 70))).isCloseTo(0.5, within(1e-9));
        assertThat(arch.nearest(new Point(-1, -30))).isZero();
        assertThat(arch.nearest(new Point(91, -30))).isEqualTo(1);
        Point off = arch.at(0.3).plus(arch.tangent(0.3).quarterTurned().times(-8));
        assertThat(arch.nearest(off)).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void parameterAtLengthOfACurve() {
        Cubic curve = cubic("0,0 (0,100 5,100) 90,0");
        for (double t : new double[] {0.001, 0.2, 0.5, 0.9}) {
            double found = curve.parameterAtLength(curve.lengthTo(t));
            assertThat(curve.lengthTo(found)).isCloseTo(curve.lengthTo(t), within(1e-9));
        }
        assertThat(curve.parameterAtLength(curve.length())).isEqualTo(1);
        assertThat(cubic("1,1 (1,1 1,1) 1,1").parameterAtLength(3)).isZero();
    }

    @Test
    void theParallelOfACurveKeepsItsDistance() {
        Cubic curve = new Cubic(new Point(0, 0), new Point(30, 5), new Point(60, 40), new Point(70, 90));
        for (Segment part : curve.parallel(15)) {
            for (double t : new double[] {0, 0.3, 0.5, 0.9}) {
                Point p = part.at(t);
                assertThat(curve.at(curve.nearest(p)).distance(p)).isCloseTo(15, within(2e-7));
            }
        }
        assertThat(curve.parallel(0)).containsExactly(curve);
    }

    @Test
    void onlyWhatIsOnePlaceHasNoLength() {
        Point p = new Point(3, 4);
        Point q = new Point(3, 5);
        assertThat(new Line(p, p).hasLength()).isFalse();
        assertThat(new Line(p, q).hasLength()).isTrue();
        assertThat(new Cubic(p, p, p, p).hasLength()).isFalse();
        for (Segment some :
                List.of(new Cubic(p, q, p, p), new Cubic(p, p, q, p), new Cubic(p, p, p, q), new Cubic(p, q, q, p))) {
            assertThat(some.hasLength()).isTrue();
            assertThat(some.length()).isPositive();
        }
    }
}
