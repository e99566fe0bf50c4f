package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final Outline SQUARE = Sketch.outline("0,0 100,0 100,100 0,100");

    @Test
    void mustCloseWithoutGaps() {
        assertThatThrownBy(() -> new Outline(List.of(
                        new Line(new Point(0, 0), new Point(1, 0)), new Line(new Point(1, 1), new Point(0, 0)))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Outline(List.of(new Line(new Point(0, 0), new Point(1, 0)))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void runGoesTheDrawnWayAndOverTheStart() {
        Curve forth = SQUARE.run(new Place(0, 0.5), new Place(1, 0.5));
        assertThat(forth.length()).isCloseTo(100, within(1e-12));
        Curve over = SQUARE.run(new Place(3, 0.5), new Place(0, 0.5));
        assertThat(over.length()).isCloseTo(100, within(1e-12));
        assertThat(over.start()).isEqualTo(new Point(0, 50));
        Curve back = SQUARE.run(new Place(1, 0.5), new Place(0, 0.5));
        assertThat(back.length()).isCloseTo(300, within(1e-12));
        assertThat(SQUARE.run(new Place(0, 0.75), new Place(0, 0.25)).length()).isCloseTo(350, within(1e-12));
    }

    @Test
    void runBetweenCornersHandsOutTheVerySegments() {
        Curve run = SQUARE.run(new Place(1, 0), new Place(3, 0));
        assertThat(run.segments()).hasSize(2);
        assertThat(run.segments().get(0)).isSameAs(SQUARE.segments().get(1));
        assertThat(SQUARE.run(new Place(0, 1), new Place(2, 1)).segments().get(1))
                .isSameAs(SQUARE.segments().get(2));
    }

    @Test
    void runFromAPlaceToItselfIsTheWhole() {
        for (Place place : List.of(new Place(0, 0), new Place(2, 0), new Place(1, 0.3), new Place(3, 1))) {
            assertThat(SQUARE.run(place, place).length()).as("%s", place).isCloseTo(400, within(1e-12));
        }
    }

    @Test
    void lengthOfARunIsThatOfItsCurveToTheLastDigit() {
        Random random = new Random(12);
        Outline blob = Sketch.randomBlob(random, 9, 200);
        for (int i = 0; i < 500; i++) {
            Place from = place(random);
            Place to = i % 10 == 0 ? from : place(random);
            assertThat(blob.length(from, to)).isEqualTo(blob.run(from, to).length());
        }
    }

    /** On one of nine segments; often at one of its ends. */
    private static Place place(Random random) {
        int end = random.nextInt(4);
        return new Place(random.nextInt(9), end < 2 ? end : random.nextDouble());
    }

    @Test
    void splittingLeavesTheOtherSegmentsAlone() {
        Outline split = SQUARE.splitAt(new Place(1, 0.25));
        assertThat(split.segments()).hasSize(5);
        assertThat(split.segments().get(0)).isSameAs(SQUARE.segments().get(0));
        assertThat(split.segments().get(4)).isSameAs(SQUARE.segments().get(3));
        assertThat(SQUARE.splitAt(new Place(2, 0))).isSameAs(SQUARE);
    }

    @Test
    void nearestFindsCornersAsStarts() {
        Nearest corner = SQUARE.nearest(new Point(103, -4));
        assertThat(corner.place()).isEqualTo(new Place(1, 0));
        assertThat(corner.distance()).isCloseTo(5, within(1e-12));
        assertThat(SQUARE.nearest(new Point(0, 0)).place()).isEqualTo(new Place(0, 0));
    }

    @Test
    void crossingsCountACornerOnce() {
        List<Crossing> found = Sketch.outline("0,0 50,-50 100,0 50,50").crossings(new Point(20, 0), new Point(1, 0));
        assertThat(found).hasSize(2);
        assertThat(found.get(0).along()).isCloseTo(-20, within(1e-12));
        assertThat(found.get(1).along()).isCloseTo(80, within(1e-12));
    }

    @Test
    void containsWhereCornersAndEdgesLieOnTheRay() {
        Outline shape = Sketch.outline("0,0 50,50 100,0 100,50 150,50 150,100 0,100");
        assertThat(shape.contains(new Point(10, 50))).isTrue();
        assertThat(shape.contains(new Point(60, 50))).isTrue();
        assertThat(shape.contains(new Point(-10, 50))).isFalse();
        assertThat(shape.contains(new Point(50, 20))).isFalse();
        assertThat(shape.contains(new Point(-5, 100))).isFalse();
        assertThat(shape.contains(new Point(-5, 0))).isFalse();
    }

    @Test
    void containsAgreesWithTheFlattenedOutline() {
        Random random = new Random(3);
        Outline blob = Sketch.randomBlob(random, 9, 100);
        Outline flat = Outline.polygon(java.util.stream.IntStream.range(0, 9 * 500)
                .mapToObj(i -> blob.segments().get(i / 500).at((i % 500) / 500.0))
                .toList());
        int inside = 0;
        for (int i = 0; i < 2000; i++) {
            Point p = Sketch.randomPoint(random, 280).minus(new Point(140, 140));
            if (blob.nearest(p).distance() > 0.05) {
                assertThat(blob.contains(p)).isEqualTo(flat.contains(p));
                inside += blob.contains(p) ? 1 : 0;
            }
        }
        assertThat(inside).isBetween(500, 1500);
    }

    @Test
    void polygonsStrayNoFartherThanAsked() {
        Random random = new Random(17);
        for (int i = 0; i < 30; i++) {
            Outline blob = Sketch.randomBlob(random, 5, 20 + 300 * random.nextDouble());
            double stray = Math.pow(10, -2 * random.nextDouble());
            List<Point> corners = blob.corners(stray);
            Outline polygon = Outline.polygon(corners);
            for (int k = 0; k < 40; k++) {
                Segment s = blob.segments().get(random.nextInt(5));
                assertThat(polygon.nearest(s.at(random.nextDouble())).distance())
                        .isLessThanOrEqualTo(stray);
            }
            // Not finer than it need be: half as many corners would stray farther.
            double farthest = 0;
            Outline half = Outline.polygon(blob.corners(4.5 * stray));
            for (int k = 0; k < 500; k++) {
                Point p = blob.segments().get(k % 5).at((k / 5 + 0.5) / 100);
                farthest = Math.max(farthest, half.nearest(p).distance());
            }
            assertThat(farthest).isGreaterThan(stray);
        }
    }

    @Test
    void polygonsOfStraightLinesHaveTheirCornersAlone() {
        assertThat(SQUARE.corners(0.001))
                .containsExactlyElementsOf(
                        SQUARE.segments().stream().map(Segment::start).toList());
        // A curve that is a parabola of height 15 over 120 strays from one chord by just that.
        Outline bow = new Outline(List.of(
                Cubic.fromQuadratic(new Point(0, 0), new Point(60, 30), new Point(120, 0)),
                new Line(new Point(120, 0), new Point(0, 0))));
        assertThat(bow.corners(15.001)).hasSize(2);
        assertThat(bow.corners(14.9)).hasSize(3);
        assertThat(bow.corners(15 / 4.0 + 1e-9)).hasSize(3);
    }

    @Test
    void pointAtLengthRunsAlongTheCurve() {
        Curve curve = Sketch.curve("0,0 30,40 (60,80 90,80) 100,80");
        assertThat(curve.pointAtLength(25)).isEqualTo(new Point(15, 20));
        assertThat(curve.pointAtLength(curve.length())).isEqualTo(new Point(100, 80));
        assertThat(curve.reversed().pointAtLength(curve.length() - 25).distance(new Point(15, 20)))
                .isLessThan(1e-9);
    }

    @Test
    void curvesJoinEndToStart() {
        Line first = new Line(new Point(0, 0), new Point(1, 0));
        assertThatThrownBy(() -> new Curve(List.of(first, new Line(new Point(1, 0.1), new Point(2, 0)))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Curve(List.of())).isInstanceOf(IllegalArgumentException.class);
        Curve curve = Sketch.curve("0,0 3,4 3,10");
        assertThat(curve.end()).isEqualTo(new Point(3, 10));
        assertThat(curve.point(new Place(1, 0.5))).isEqualTo(new Point(3, 7));
        assertThat(curve.pointAtLength(5)).isEqualTo(new Point(3, 4));
        assertThat(curve.pointAtLength(99)).isEqualTo(new Point(3, 10));
        assertThat(curve.transformed(Affine.translation(1, 2)).segments())
                .containsExactly(
                        new Line(new Point(1, 2), new Point(4, 6)), new Line(new Point(4, 6), new Point(4, 12)));
        assertThat(SQUARE.box()).isEqualTo(new Box(0, 0, 100, 100));
    }

    @Test
    void nearestOfManySegments() {
        Outline blob = Sketch.randomBlob(new Random(8), 16, 100);
        Random random = new Random(9);
        for (int i = 0; i < 200; i++) {
            Point p = Sketch.randomPoint(random, 280).minus(new Point(140, 140));
            double least = Double.POSITIVE_INFINITY;
            for (Segment s : blob.segments()) {
                least = Math.min(least, s.at(s.nearest(p)).distance(p));
            }
            Nearest found = blob.nearest(p);
            assertThat(found.distance()).isCloseTo(least, within(1e-12));
            assertThat(blob.point(found.place())).isEqualTo(found.point());
            assertThat(found.point().distance(p)).isEqualTo(found.distance());
        }
    }
}
