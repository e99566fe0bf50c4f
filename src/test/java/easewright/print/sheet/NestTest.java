package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of layouts over random shapes; seed 20260517. */
class NestTest {
    private static final double WIDTH = 700;
    private static final double GAP = 6;

    private final Random random = new Random(20260517);

    /** A star around its middle, so that it is simple and often hollow. */
    private Cutout star() {
        int corners = 4 + random.nextInt(12);
        double wide = 30 + random.nextInt(300);
        double tall = 30 + random.nextInt(300);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double r = 0.25 + 0.75 * random.nextDouble();
            points.add(new Point(100 + wide * r * Math.cos(angle), -50 + tall * r * Math.sin(angle)));
        }
        return new Cutout(points, List.of(Cutout.AS_DRAWN, Cutout.UPSIDE_DOWN), random.nextInt(6) == 0);
    }

    @Test
    void shapesKeepTheirDistanceStayOnTheStripAndTurnOnlyAsAllowed() {
        for (int round = 0; round < 25; round++) {
            List<Cutout> shapes = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(6); i++) {
                shapes.add(star());
            }
            Layout layout = new Nest(shapes, WIDTH, 1e5, GAP).shortest();
            assertThat(layout.left()).isEmpty();
            assertThat(layout.laid()).hasSameSizeAs(shapes);
            for (Laid laid : layout.laid()) {
                Box box = Box.around(laid.corners());
                assertThat(box.minX()).isGreaterThan(-1e-9);
                assertThat(box.maxX()).isLessThan(WIDTH + 1e-9);
                assertThat(box.minY()).isGreaterThan(-1e-9);
                assertThat(box.maxY()).isLessThanOrEqualTo(layout.length());
                if (shapes.get(laid.shape()).leftFirst()) {
                    assertThat(box.minX()).isLessThan(1e-9);
                }
                Affine place = laid.place();
                assertThat(Math.abs(place.a())).isEqualTo(1);
                assertThat(place.a()).isEqualTo(place.d());
                assertThat(place.b()).isZero();
                assertThat(place.c()).isZero();
                for (Laid other : layout.laid()) {
                    if (other.shape() != laid.shape()) {
                        assertThat(distance(laid.corners(), other.corners())).isGreaterThan(GAP - 1e-6);
                    }
                }
            }
        }
    }

    /** Least distance from the corners of one to the sides of the other; 0 where a corner lies inside. */
    private static double distance(List<Point> one, List<Point> other) {
        double least = Double.POSITIVE_INFINITY;
        for (Point p : one) {
            boolean inside = false;
            for (int i = 0; i < other.size(); i++) {
                Point a = other.get(i);
                Point b = other.get((i + 1) % other.size());
                Point run = b.minus(a);
                double t = Math.max(0, Math.min(1, p.minus(a).dot(run) / run.dot(run)));
                least = Math.min(least, p.distance(a.plus(run.times(t))));
                if (a.y() > p.y() != b.y() > p.y()
                        && a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) > p.x()) {
                    inside = !inside;
                }
            }
            least = inside ? 0 : least;
        }
        return least;
    }

    @Test
    void rectanglesLieSideBySideWithLittleLoss() {
        List<Cutout> shapes = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            // Up to one square of the grid is lost at each shape.
            shapes.add(rectangle((WIDTH - 2 * GAP) / 3 - 8, 200));
        }
        Layout layout = new Nest(shapes, WIDTH, 1e5, GAP).shortest();
        assertThat(layout.length()).isBetween(400 + GAP, 400 + GAP + 8);
    }

    @Test
    void whatIsTooWideOrTooLongIsLeftAndTheRestIsLaid() {
        List<Cutout> shapes = List.of(rectangle(701, 10), rectangle(700, 300), rectangle(100, 701));
        Layout layout = new Nest(shapes, WIDTH, 700, GAP).shortest();
        assertThat(layout.left()).containsExactlyInAnyOrder(0, 2);
        assertThat(layout.laid()).hasSize(1);
    }

    private static Cutout rectangle(double width, double height) {
        List<Point> corners =
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height));
        return new Cutout(corners, List.of(Cutout.AS_DRAWN), false);
    }
}
