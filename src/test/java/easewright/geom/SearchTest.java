package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches through boxes find what looking at everything finds. */
class SearchTest {
    private final Random random = new Random(71);

    private Point anywhere(double reach) {
        return new Point(reach * (2 * random.nextDouble() - 1), reach * (2 * random.nextDouble() - 1));
    }

    /** An open curve of the same segments is searched one by one. */
    @ParameterizedTest
    @ValueSource(ints = {3, 7, 8, 9, 64, 65, 300})
    void nearestPlaceOfAnOutlineIsThatFoundOneByOne(int segments) {
        Outline outline = Sketch.randomBlob(random, segments, 400);
        Curve oneByOne = new Curve(outline.segments());
        for (int i = 0; i < 300; i++) {
            Point p = anywhere(600);
            assertThat(outline.nearest(p)).isEqualTo(oneByOne.nearest(p));
        }
        for (Segment segment : outline.segments()) {
            assertThat(outline.nearest(segment.start())).isEqualTo(oneByOne.nearest(segment.start()));
            assertThat(outline.nearest(segment.at(0.4))).isEqualTo(oneByOne.nearest(segment.at(0.4)));
        }
    }

    /** More places than are kept in mind, each asked for several times among others. */
    @Test
    void whatWasFoundBeforeIsFoundAgain() {
        Outline outline = Sketch.randomBlob(random, 120, 400);
        Curve oneByOne = new Curve(outline.segments());
        List<Point> marks = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            marks.add(i % 2 == 0 ? outline.segments().get(i / 2).start() : anywhere(500));
        }
        for (int i = 0; i < 2000; i++) {
            Point p = marks.get(random.nextInt(marks.size()));
            assertThat(outline.nearest(p)).isEqualTo(oneByOne.nearest(p));
        }
    }

    @Test
    void ofCornersEquallyNearTheFirstIsMeant() {
        Outline square = Sketch.outline("0,0 10,0 10,10 0,10");
        assertThat(square.nearest(new Point(-5, 5)).place()).isEqualTo(new Place(3, 0.5));
        assertThat(square.nearest(new Point(-1, -1)).place()).isEqualTo(new Place(0, 0));
        assertThat(square.nearest(new Point(5, 5)).place().segment()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8, 9, 70, 200})
    void pairsAreAllWhoseBoxesMeet(int count) {
        List<Box> boxes = new ArrayList<>();
        double[] edges = new double[4 * count];
        for (int i = 0; i < count; i++) {
            Point a = anywhere(100);
            Box box = new Box(a.x(), a.y(), a.x() + 30 * random.nextDouble(), a.y() + 30 * random.nextDouble());
            boxes.add(box);
            edges[4 * i] = box.minX();
            edges[4 * i + 1] = box.minY();
            edges[4 * i + 2] = box.maxX();
            edges[4 * i + 3] = box.maxY();
        }
        List<List<Integer>> expected = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                Box a = boxes.get(i);
                Box b = boxes.get(j);
                if (a.minX() <= b.maxX() && b.minX() <= a.maxX() && a.minY() <= b.maxY() && b.minY() <= a.maxY()) {
                    expected.add(List.of(i, j));
                }
            }
        }
        List<List<Integer>> found = new ArrayList<>();
        new BoxTree(edges).pairs(0, (i, j) -> found.add(List.of(i, j)));
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void comesWithinADistanceWhereTheNearestPlaceDoes() {
        int within = 0;
        for (int round = 0; round < 30; round++) {
            Outline outline = Sketch.randomBlob(random, 4 + random.nextInt(60), 200);
            for (int i = 0; i < 200; i++) {
                Segment near =
                        outline.segments().get(random.nextInt(outline.segments().size()));
                Point p = near.at(random.nextDouble()).plus(anywhere(1));
                double distance = random.nextDouble();
                boolean expected = outline.nearest(p).distance() <= distance;
                assertThat(outline.comesWithin(p, distance)).isEqualTo(expected);
                within += expected ? 1 : 0;
            }
        }
        assertThat(within).isBetween(1500, 4500);
    }

    @Test
    void rowsOfBoxesMeetWhereAnyTwoOfThemDo() {
        int met = 0;
        for (int round = 0; round < 400; round++) {
            double[] one = row(1 + random.nextInt(90), 0);
            double[] other = row(1 + random.nextInt(90), 40 * random.nextDouble());
            boolean expected = false;
            for (int i = 0; i < one.length; i += 4) {
                for (int j = 0; j < other.length; j += 4) {
                    expected |= one[i] <= other[j + 2]
                            && other[j] <= one[i + 2]
                            && one[i + 1] <= other[j + 3]
                            && other[j + 1] <= one[i + 3];
                }
            }
            assertThat(new BoxTree(one).meets(new BoxTree(other))).isEqualTo(expected);
            met += expected ? 1 : 0;
        }
        assertThat(met).isBetween(50, 350);
    }

    /** Small boxes along a wavering line, so far off to one side. */
    private double[] row(int count, double aside) {
        double[] edges = new double[4 * count];
        for (int i = 0; i < count; i++) {
            double x = aside + 3 * random.nextDouble();
            double y = 60 * random.nextDouble();
            edges[4 * i] = x;
            edges[4 * i + 1] = y;
            edges[4 * i + 2] = x + random.nextDouble() * 20;
            edges[4 * i + 3] = y + random.nextDouble();
        }
        return edges;
    }

    @Test
    void everySegmentThatALineMeetsIsHandedOn() {
        for (int round = 0; round < 60; round++) {
            Outline outline = Sketch.randomBlob(random, 5 + random.nextInt(120), 400);
            Point through = anywhere(300);
            Point unit = new Point(1, 0).turned(random.nextDouble() * 7);
            List<Integer> met = new ArrayList<>();
            for (int i = 0; i < outline.segments().size(); i++) {
                if (!outline.segments().get(i).crossings(through, unit).isEmpty()) {
                    met.add(i);
                }
            }
            List<Integer> found = new ArrayList<>();
            outline.boxes().along(through, unit, 0, found::add);
            assertThat(found).containsAll(met).isSorted();
            assertThat(found.size()).isLessThanOrEqualTo(outline.segments().size());
        }
    }

    /** A curve as people draw them, and every fourth one bent and folded as nobody does. */
    private Cubic curve(int round) {
        if (round % 4 == 0) {
            return new Cubic(anywhere(100), anywhere(100), anywhere(100), anywhere(100));
        }
        Point end = new Point(100 + 100 * random.nextDouble(), 0).turned(7 * random.nextDouble());
        return new Cubic(
                Point.ORIGIN,
                end.times(1 / 3.0).plus(anywhere(25)),
                end.times(2 / 3.0).plus(anywhere(25)),
                end);
    }

    /** No place of a dense row may be nearer, and at an inner place the way to the point is square to the curve. */
    @Test
    void nearestPlaceOfACubicIsNearest() {
        for (int round = 0; round < 3000; round++) {
            Cubic cubic = curve(round);
            boolean on = round % 3 == 0;
            Point p = on ? cubic.at(random.nextDouble()) : anywhere(150);
            double t = cubic.nearest(p);
            double away = cubic.at(t).distance(p);
            double dense = on ? 0 : Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 2000; i++) {
                dense = Math.min(dense, cubic.at(i / 2000.0).distance(p));
            }
            // Beside a sharp turn two stretches may lie between the same places that are looked at.
            assertThat(away).isLessThanOrEqualTo(dense + (round % 4 == 0 ? 0.05 : 1e-9));
            Point slope = cubic.derivative(t);
            if (t > 0 && t < 1 && slope.norm() > 1e-3) {
                assertThat(cubic.at(t).minus(p).dot(slope) / slope.norm()).isCloseTo(0, within(1e-9));
            }
        }
    }

    /** Also beside curves as nobody draws them, and where the distance is just reached or just not. */
    @Test
    void aCubicComesWithinADistanceWhereItsNearestPlaceDoes() {
        int within = 0;
        for (int round = 0; round < 20_000; round++) {
            Cubic cubic = curve(round);
            Point p = cubic.at(random.nextDouble()).plus(anywhere(round % 3 == 0 ? 40 : 1));
            double away = cubic.at(cubic.nearest(p)).distance(p);
            double distance = round % 2 == 0 ? away * (1 + 2e-6 * (random.nextDouble() - 0.5)) : random.nextDouble();
            // Two stretches that lie between the same places of the search for the nearest are told apart here.
            if (round % 4 != 0 && Math.abs(away - distance) > 1e-9 * away) {
                assertThat(CubicReach.comesWithin(cubic, p, distance)).isEqualTo(away <= distance);
                within += away <= distance ? 1 : 0;
            }
        }
        assertThat(within).isBetween(4000, 11_000);
    }

    @Test
    void whatIsNearbyReachesAPlaceWhereTheOutlineComesWithinTheDistance() {
        int within = 0;
        int empty = 0;
        for (int round = 0; round < 300; round++) {
            Outline outline = Sketch.randomBlob(random, 4 + random.nextInt(90), 200);
            Segment segment = outline.segments()
                    .get(random.nextInt(outline.segments().size()))
                    .transformed(Affine.translation(5 * random.nextGaussian(), random.nextGaussian()));
            double distance = random.nextDouble();
            Nearby nearby = outline.nearby(segment, distance);
            empty += nearby.isEmpty() ? 1 : 0;
            for (int i = 0; i <= 20; i++) {
                Point p = segment.at(i / 20.0);
                boolean expected = outline.nearest(p).distance() <= distance;
                assertThat(nearby.reaches(p)).isEqualTo(expected);
                within += expected ? 1 : 0;
            }
        }
        assertThat(within).isBetween(300, 3000);
        assertThat(empty).isBetween(5, 250);
    }

    @Test
    void aStretchHasWhatItsRunHas() {
        for (int round = 0; round < 3000; round++) {
            Outline outline = Sketch.randomBlob(random, 3 + random.nextInt(9), 100);
            Place from = somewhere(outline);
            Place to = round % 5 == 0 ? from : somewhere(outline);
            Place asked = somewhere(outline);
            Stretch stretch = new Stretch(outline, from, to);
            Curve run = outline.run(from, to);
            Point at = outline.point(asked);
            assertThat(stretch.has(asked)).isEqualTo(run.nearest(at).distance() < 1e-6);
            for (int i = 0; i < outline.segments().size(); i++) {
                Segment whole = outline.segments().get(i);
                assertThat(stretch.has(i))
                        .isEqualTo(run.segments().stream()
                                .anyMatch(part ->
                                        whole.at(whole.nearest(part.at(0.5))).distance(part.at(0.5)) < 1e-6));
            }
        }
    }

    /** Mostly within a segment, and often a corner, by one of its two names. */
    private Place somewhere(Outline outline) {
        int segment = random.nextInt(outline.segments().size());
        double t = random.nextInt(3) > 0 ? random.nextDouble() : random.nextInt(2);
        return new Place(segment, t);
    }
}
