package easewright.topology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OverlapTest {
    private static Outline square(double x, double y, double side) {
        return Outline.polygon(List.of(
                new Point(x, y), new Point(x + side, y), new Point(x + side, y + side), new Point(x, y + side)));
    }

    @Test
    void squaresShareTheirCommonRectangle() {
        assertThat(Overlap.area(square(0, 0, 100), square(90, 40, 100))).isCloseTo(600, within(1e-9));
        assertThat(Overlap.area(square(0, 0, 100), square(20, 20, 10))).isCloseTo(100, within(1e-9));
    }

    @Test
    void neighboursThatTouchShareNothing() {
        assertThat(Overlap.area(square(0, 0, 100), square(100, 0, 100))).isZero();
        assertThat(Overlap.area(square(0, 0, 100), square(300, 0, 100))).isZero();
    }

    @Test
    void aBowSharesItsWholeAreaWithTheSquareAroundIt() {
        // Two thirds of the base times the height of a parabola (Archimedes): 2/3 · 120 · 30.
        Outline bow = new Outline(List.of(
                Cubic.fromQuadratic(new Point(0, 0), new Point(60, 60), new Point(120, 0)),
                new Line(new Point(120, 0), new Point(0, 0))));
        assertThat(Overlap.area(bow, square(-10, -10, 200))).isCloseTo(2400, within(120 * 0.02));
    }

    @Test
    void anOutlineThatCrossesItselfIsCountedWithBothItsLoops() {
        Outline eight =
                Outline.polygon(List.of(new Point(0, 0), new Point(100, 100), new Point(100, 0), new Point(0, 100)));
        assertThat(Overlap.area(eight, square(-10, -10, 200))).isCloseTo(5000, within(1e-6));
    }

    @Test
    void turningBothAloneChangesNothing() {
        Random random = new Random(31);
        for (int i = 0; i < 200; i++) {
            Outline other = square(random.nextDouble() * 120, random.nextDouble() * 120, 60);
            Affine turn = Affine.rotation(random.nextDouble() * 6, new Point(40, 70));
            double area = Overlap.area(square(0, 0, 100), other);
            assertThat(Overlap.area(square(0, 0, 100).transformed(turn), other.transformed(turn)))
                    .isCloseTo(area, within(1e-6));
        }
    }

    /** Outlines whose borders stay clear of each other are answered without an overlay: the answer must be the same. */
    @Test
    void pocketsInsideAnOutlineCountAndThoseInItsHollowDoNot() {
        Outline horseshoe = Outline.polygon(List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 100),
                new Point(70, 100),
                new Point(70, 30),
                new Point(30, 30),
                new Point(30, 100),
                new Point(0, 100)));
        assertThat(Overlap.area(horseshoe, square(40, 60, 20))).isZero();
        assertThat(Overlap.area(square(40, 60, 20), horseshoe)).isZero();
        assertThat(Overlap.area(horseshoe, square(75, 60, 20))).isCloseTo(400, within(1e-9));
        assertThat(Overlap.area(square(75, 60, 20), horseshoe)).isCloseTo(400, within(1e-9));
    }

    @Test
    void whatLiesInsideALineThatGoesRoundTwiceCounts() {
        Outline twice = Outline.polygon(List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 100),
                new Point(10, 100),
                new Point(10, 10),
                new Point(90, 10),
                new Point(90, 90),
                new Point(0, 90)));
        assertThat(Overlap.area(twice, square(40, 40, 20))).isCloseTo(400, within(1e-9));
    }
}
