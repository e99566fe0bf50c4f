package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any curve (docs/sources.md 9), over seeded random ones. */
class InvariantsTest {
    static List<Cubic> cubics() {
        Random random = new Random(20261125);
        return java.util.stream.Stream.generate(() -> Sketch.randomCubic(random, 300))
                .limit(60)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cubics")
    void moveTurnAndMirrorKeepLength(Cubic cubic) {
        double length = cubic.length();
        List<Affine> rigid = List.of(
                Affine.translation(123, -45),
                Affine.rotation(1.234, new Point(50, 60)),
                Affine.scaling(-1, 1),
                Affine.rotation(0.5, Point.ORIGIN).after(Affine.scaling(1, -1)));
        for (Affine map : rigid) {
            assertThat(cubic.transformed(map).length()).isCloseTo(length, within(1e-9 * length));
        }
        assertThat(cubic.transformed(Affine.scaling(2.5, 2.5)).length()).isCloseTo(2.5 * length, within(1e-9 * length));
        assertThat(cubic.reversed().length()).isCloseTo(length, within(1e-9 * length));
        assertThat(cubic.reversed().sweptArea()).isCloseTo(-cubic.sweptArea(), within(1e-8));
        assertThat(cubic.transformed(Affine.scaling(2.5, 2.5)).sweptArea())
                .isCloseTo(6.25 * cubic.sweptArea(), within(1e-7));
    }

    @ParameterizedTest
    @MethodSource("cubics")
    void splittingKeepsLengthAndPlaces(Cubic cubic) {
        double length = cubic.length();
        for (double t : new double[] {0.01, 0.3, 0.5, 0.77, 0.999}) {
            Segment head = cubic.between(0, t);
            Segment tail = cubic.between(t, 1);
            assertThat(head.length() + tail.length()).isCloseTo(length, within(1e-9 * length));
            assertThat(cubic.lengthTo(t)).isCloseTo(head.length(), within(1e-9 * length));
            assertThat(head.end()).isEqualTo(tail.start());
            assertThat(head.at(0.4).distance(cubic.at(0.4 * t))).isLessThan(1e-10);
            assertThat(cubic.parameterAtLength(head.length())).isCloseTo(t, within(1e-6));
        }
        assertThat(cubic.between(0, 1)).isSameAs(cubic);
    }

    @ParameterizedTest
    @MethodSource("cubics")
    void boxHoldsTheCurveTightly(Cubic cubic) {
        Box box = cubic.box();
        double minX = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 1000; i++) {
            double t = i / 1000.0;
            assertThat(box.grown(1e-9).contains(cubic.at(t))).isTrue();
            minX = Math.min(minX, cubic.at(t).x());
            maxY = Math.max(maxY, cubic.at(t).y());
            assertThat(cubic.atLeastFrom(new Point(-50, 400)))
                    .isLessThanOrEqualTo(cubic.at(t).distance(new Point(-50, 400)) + 1e-9);
        }
        assertThat(minX - box.minX()).isLessThan(1e-2);
        assertThat(box.maxY() - maxY).isLessThan(1e-2);
    }

    @ParameterizedTest
    @MethodSource("cubics")
    void nearestIsNearestOfAll(Cubic cubic) {
        for (Point p : List.of(new Point(0, 0), new Point(150, 150), new Point(310, 20))) {
            double found = cubic.at(cubic.nearest(p)).distance(p);
            double sampled = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 2000; i++) {
                sampled = Math.min(sampled, cubic.at(i / 2000.0).distance(p));
            }
            assertThat(found).isLessThanOrEqualTo(sampled + 1e-9);
        }
        assertThat(cubic.nearest(cubic.start())).isZero();
        assertThat(cubic.nearest(cubic.end())).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("cubics")
    void crossingsLieOnTheLineAndNoneIsMissed(Cubic cubic) {
        Point through = new Point(150, 140);
        Point along = new Point(3, 1).unit();
        List<Double> found = cubic.crossings(through, along);
        for (double t : found) {
            assertThat(along.cross(cubic.at(t).minus(through))).isCloseTo(0, within(1e-9));
        }
        int changes = 0;
        for (int i = 0; i < 2000; i++) {
            double before = along.cross(cubic.at(i / 2000.0).minus(through));
            double after = along.cross(cubic.at((i + 1) / 2000.0).minus(through));
            changes += before * after < 0 ? 1 : 0;
        }
        assertThat(found).hasSize(changes);
        assertThat(cubic.passages(through, along, true)).hasSize(changes);
    }

    @Test
    void affineAfterAndInverse() {
        Affine one = Affine.rotation(0.7, new Point(3, 4)).after(new Affine(2, 0.3, -0.1, 1.5, 7, -9));
        Point p = new Point(12, 34);
        assertThat(one.inverse().apply(one.apply(p)).distance(p)).isLessThan(1e-12);
        assertThat(new Affine(1, 2, 2, 4, 0, 0).isSingular()).isTrue();
        assertThat(Affine.rotation(Math.PI / 2, Point.ORIGIN)
                        .apply(new Point(1, 0))
                        .distance(new Point(0, 1)))
                .as("clockwise on screen")
                .isLessThan(1e-15);
    }
}
