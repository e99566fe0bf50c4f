package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Darts drawn as triangles, their mouths closed by a line, at random places of a waist that slants. */
class ClosedDartsTest {
    private static final Piece SKIRT = Piece.bare(
            "skirt",
            Outline.polygon(List.of(new Point(0, 20), new Point(240, 0), new Point(280, 600), new Point(0, 600))));

    private final Random random = new Random(20261130);

    private static Point onWaist(double x) {
        return new Point(x, 20 - x / 12);
    }

    /** From whichever corner, in whichever direction. */
    private Piece with(Point a, Point b, Point c) {
        List<Point> corners = new ArrayList<>(List.of(a, b, c));
        Collections.rotate(corners, random.nextInt(3));
        if (random.nextBoolean()) {
            Collections.reverse(corners);
        }
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            sides.add(new Line(corners.get(i), corners.get((i + 1) % 3)));
        }
        return SKIRT.toBuilder()
                .riders(List.of(new Rider("dart", Rider.Kind.INNER, sides)))
                .build();
    }

    @Test
    void aTriangleAtTheEdgeIsADartAndOneInsideIsNone() {
        for (int i = 0; i < 200; i++) {
            double x = 40 + 130 * random.nextDouble();
            double wide = 6 + 34 * random.nextDouble();
            double deep = Math.max(70, 2 * wide) + 60 * random.nextDouble();
            Point one = onWaist(x);
            Point two = onWaist(x + wide);
            Point tip = one.towards(two, 0.5).plus(new Point(deep / 12, deep));
            assertThat(DartShapes.on(with(one, two, tip)))
                    .as("%s wide, %s deep", wide, deep)
                    .singleElement()
                    .satisfies(dart -> {
                        assertThat(dart.point().distance(tip)).isLessThan(1e-9);
                        assertThat(dart.intake()).isCloseTo(one.distance(two), within(1e-9));
                    })
                    .extracting(Dart::otherPoint)
                    .matches(other -> other.equals(Optional.empty()));
            Point down = new Point(0, 200);
            assertThat(DartShapes.on(with(one.plus(down), two.plus(down), tip.plus(down))))
                    .isEmpty();
        }
    }
}
