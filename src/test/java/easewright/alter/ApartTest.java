package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ApartTest {
    private static Curve line(Point from, Point to) {
        return new Curve(List.of(new Line(from, to)));
    }

    /** The longer of two lines lies off the other at its own end, however they are asked about. */
    @Test
    void whatOneLineHasBeyondTheOtherCountsFromBothSides() {
        Curve whole = line(new Point(0, 0), new Point(100, 0));
        Curve part = line(new Point(0, 3), new Point(60, 3));
        double most = Math.hypot(40, 3);
        assertThat(Apart.farthest(whole, part)).isCloseTo(most, within(1e-9));
        assertThat(Apart.farthest(part, whole)).isCloseTo(most, within(1e-9));
        assertThat(Apart.isMoreThan(most - 1e-6, part, whole)).isTrue();
        assertThat(Apart.isMoreThan(most + 1e-6, part, whole)).isFalse();
    }

    @Test
    void howFarTwoLinesLieApartIsLookedForOnlyUntilItIsEnough() {
        Random random = new Random(41);
        int enoughBefore = 0;
        for (int round = 0; round < 300; round++) {
            Curve one = wavy(random);
            Curve other = wavy(random);
            double whole = Apart.farthest(one, other);
            double enough = whole * 2 * random.nextDouble();
            double told = Apart.farthest(one, other, enough);
            if (whole < enough) {
                assertThat(told).isEqualTo(whole);
            } else {
                assertThat(told).isBetween(enough, whole);
                enoughBefore++;
            }
        }
        assertThat(enoughBefore).isBetween(100, 200);
    }

    private static Curve wavy(Random random) {
        List<Segment> segments = new ArrayList<>();
        Point at = new Point(0, random.nextGaussian());
        for (int i = 1; i < 5; i++) {
            Point next = new Point(30 * i, random.nextGaussian());
            Point way = new Point(10, 0);
            segments.add(new Cubic(at, at.plus(way), next.minus(way), next));
            at = next;
        }
        return new Curve(segments);
    }
}
