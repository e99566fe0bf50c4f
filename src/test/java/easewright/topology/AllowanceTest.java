package easewright.topology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;

class AllowanceTest {
    private static Allowance inside(Outline outline, double distance) {
        double[] all = new double[outline.segments().size()];
        Arrays.fill(all, distance);
        return Allowance.of(outline, all).orElseThrow();
    }

    private static Polygon flattened(Outline outline, int perSegment) {
        List<Coordinate> ring = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            int steps = segment instanceof easewright.geom.Line ? 1 : perSegment;
            for (int i = 0; i < steps; i++) {
                Point p = segment.at(i / (double) steps);
                ring.add(new Coordinate(p.x(), p.y()));
            }
        }
        ring.add(ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(new Coordinate[0]));
    }

    /** Rectangle 10 × 20, d = 1.5 outwards, mitred: 13 × 23 = 299 (docs/sources.md 9); and back inwards. */
    @Test
    void rectangleOutAndIn() {
        Outline rectangle = Sketch.outline("0,0 10,0 10,20 0,20");
        Outline around = inside(rectangle, -1.5).outline();
        assertThat(around.signedArea()).isCloseTo(299, within(1e-9));
        assertThat(around.length()).isCloseTo(72, within(1e-9));
        Outline back = inside(around, 1.5).outline();
        for (int i = 0; i < 4; i++) {
            assertThat(back.segments()
                            .get(i)
                            .start()
                            .distance(rectangle.segments().get(i).start()))
                    .isLessThan(1e-9);
        }
    }

    /** A curve that sets out in the direction of the line before it but for the last digits has no corner there. */
    @Test
    void aJoinThatIsSmoothButForRoundingIsNoCorner() {
        Random random = new Random(97);
        for (int round = 0; round < 60; round++) {
            double lean = random.nextGaussian() * 5e-8;
            Point join = new Point(100 * lean, 100);
            double bend = 10 * random.nextDouble();
            Outline outline = new Outline(List.of(
                    new easewright.geom.Line(Point.ORIGIN, join),
                    new Cubic(
                            join, new Point(join.x(), 130), new Point(join.x() + bend / 3, 160), new Point(bend, 190)),
                    new easewright.geom.Line(new Point(bend, 190), new Point(-80, 190)),
                    new easewright.geom.Line(new Point(-80, 190), new Point(-80, 0)),
                    new easewright.geom.Line(new Point(-80, 0), Point.ORIGIN)));
            for (double distance : new double[] {10, -10}) {
                Outline parallel = inside(outline, distance).outline();
                for (Segment segment : parallel.segments()) {
                    assertThat(segment.length()).isGreaterThan(0.01);
                }
                Point beside = parallel.nearest(join).point();
                assertThat(beside.distance(join)).isCloseTo(10, within(1e-5));
            }
        }
    }

    @Test
    void directionOfDrawingDoesNotMatter() {
        Outline one = Sketch.outline("0,0 100,0 (140,30 120,80) 90,120 0,120");
        assertThat(inside(one, 10).outline().signedArea())
                .isCloseTo(-inside(one.reversed(), 10).outline().signedArea(), within(1e-6));
    }

    /** Smooth convex outline: parallel outwards has length L + 2πd and area A + Ld + πd² (docs/sources.md 9). */
    @ParameterizedTest
    @ValueSource(doubles = {-15, -6.35, 6.35, 15})
    void smoothOutlineFollowsTheClosedForm(double inward) {
        Outline blob = Sketch.randomBlob(new Random(5), 24, 300);
        double d = -inward;
        Outline parallel = inside(blob, inward).outline();
        double area = blob.signedArea();
        assertThat(parallel.length()).isCloseTo(blob.length() + 2 * Math.PI * d, within(2e-3));
        assertThat(parallel.signedArea())
                .isCloseTo(area + blob.length() * d + Math.PI * d * d, within(2e-3 * blob.length() / 1000 * 10));
    }

    /** Distance of the parallel from the drawn line: true to 2e-7 mm. */
    @Test
    void parallelKeepsItsDistance() {
        Random random = new Random(11);
        double worst = 0;
        for (int run = 0; run < 6; run++) {
            Outline blob = Sketch.randomBlob(random, 12, 200);
            Outline parallel = inside(blob, 15).outline();
            for (Segment segment : parallel.segments()) {
                for (double t = 0; t < 1; t += 0.23) {
                    double distance = blob.nearest(segment.at(t)).distance();
                    worst = Math.max(worst, Math.abs(distance - 15));
                }
            }
        }
        assertThat(worst).isLessThan(2e-7);
    }

    /** Every place of the parallel lies square across from the drawn place it names, on either side of a corner. */
    @Test
    void placesOfTheParallelKnowWhatTheyLieAcrossFrom() {
        Outline piece = Sketch.outline("0,0 100,0 (140,30 120,80) 90,120 0,120");
        double[] own = {10, 12, 20, 0};
        Outline stitched = Allowance.of(piece, own).orElseThrow().outline();
        Allowance allowance = Allowance.of(piece, own).orElseThrow();
        for (int i = 0; i < stitched.segments().size(); i++) {
            for (double t : new double[] {0, 0.3, 0.7, 1}) {
                Point p = stitched.point(new Place(i, t));
                Allowance.Across across = allowance.across(new Place(i, t));
                for (Place drawn : List.of(across.before(), across.after())) {
                    assertThat(piece.point(drawn).distance(p)).isCloseTo(own[drawn.segment()], within(2e-7));
                }
                if (t == 0.3) {
                    assertThat(across.before()).isEqualTo(across.after());
                }
            }
        }
        Allowance.Across corner = allowance.across(allowance.place(new Place(0, 0)));
        assertThat(corner.before().segment()).isEqualTo(3);
        assertThat(corner.after().segment()).isZero();
    }

    /** A skirt-like piece with a hollow corner and unequal allowances, against the buffer of JTS as another witness. */
    /** After a change of a few segments the parallels of all others are taken over, and all is as drawn anew. */
    @Test
    void parallelsOfSegmentsLeftAloneAreTakenOver() {
        Random random = new Random(17);
        for (int round = 0; round < 40; round++) {
            Outline blob = Sketch.randomBlob(random, 20, 300);
            double[] widths = new double[20];
            Arrays.setAll(widths, i -> i < 10 ? 10 : 15);
            Allowance before = Allowance.of(blob, widths).orElseThrow();
            int at = 1 + random.nextInt(18);
            List<Segment> segments = new ArrayList<>(blob.segments());
            Cubic one = (Cubic) segments.get(at - 1);
            Cubic two = (Cubic) segments.get(at);
            Point moved = one.end().plus(new Point(2 * random.nextDouble(), 2 * random.nextDouble()));
            segments.set(at - 1, new Cubic(one.start(), one.control1(), one.control2(), moved));
            segments.set(at, new Cubic(moved, two.control1(), two.control2(), two.end()));
            // Other widths on some segments: their parallels are others, though they are the same objects.
            double[] other = widths.clone();
            other[19] = random.nextBoolean() ? 12 : 15;
            Outline changed = new Outline(segments);
            Allowance taken = Allowance.of(changed, other, Optional.of(before)).orElseThrow();
            assertThat(taken.outline())
                    .isEqualTo(Allowance.of(changed, other).orElseThrow().outline());
            Set<Segment> same = Collections.newSetFromMap(new IdentityHashMap<>());
            same.addAll(before.outline().segments());
            assertThat(taken.outline().segments().stream().filter(same::contains))
                    .hasSizeGreaterThan(10);
        }
    }

    @Test
    void agreesWithJtsBuffer() {
        Outline piece = Sketch.outline(
                "0,20 (80,20 120,15) 180,0 (200,60 230,120) 232,200 240,600 0,590 0,300 60,300 60,250 0,250");
        Outline parallel = inside(piece, 15).outline();
        BufferParameters sharp = new BufferParameters(64, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);
        sharp.setSimplifyFactor(0);
        Polygon witness =
                (Polygon) org.locationtech.jts.operation.buffer.BufferOp.bufferOp(flattened(piece, 1000), -15, sharp);
        double difference = witness.symDifference(flattened(parallel, 500)).getArea();
        assertThat(difference).isLessThan(0.05);
        assertThat(Validity.isSimple(parallel)).isTrue();
    }

    @Test
    void allowanceOfItsOwnOnEachEdge() {
        Outline piece = Sketch.outline("0,0 100,0 100,200 0,200");
        Outline stitched =
                Allowance.of(piece, new double[] {10, 15, 40, 0}).orElseThrow().outline();
        assertThat(stitched.segments())
                .extracting(Segment::start)
                .containsExactly(new Point(0, 10), new Point(85, 10), new Point(85, 160), new Point(0, 160));
    }

    @Test
    void hollowTighterThanTheDistanceLosesItsLoop() {
        // A slit of radius 5 from the right: the parallel at 10 inwards must not turn back on itself.
        Outline piece = Sketch.outline("0,0 200,0 200,95 100,95 (93.4,95 93.4,105) 100,105 200,105 200,200 0,200");
        Outline parallel = inside(piece, 10).outline();
        assertThat(Validity.isSimple(parallel)).isTrue();
        // The bump of a hollow curve drawn on a convex side: radius 4 bulge outwards, parallel 8 inwards.
        Outline bulge = Sketch.outline("0,0 96,0 (96,-8 104,-8) 104,0 200,0 200,200 0,200");
        Outline smoothed = inside(bulge, 8).outline();
        assertThat(Validity.isSimple(smoothed)).isTrue();
        for (Segment segment : smoothed.segments()) {
            assertThat(bulge.nearest(segment.at(0.5)).distance()).isGreaterThan(8 - 1e-6);
        }
    }

    @Test
    void shortSegmentsBesideACornerAreSwallowed() {
        StringBuilder shape = new StringBuilder("0,0 ");
        for (int i = 0; i <= 40; i++) {
            shape.append(200 - 0.5 * (40 - i)).append(",0 ");
        }
        for (int i = 1; i <= 40; i++) {
            shape.append("200,").append(0.5 * i).append(' ');
        }
        Outline piece = Sketch.outline(shape + "200,200 0,200");
        Outline parallel = inside(piece, 15).outline();
        assertThat(parallel.signedArea()).isCloseTo(170 * 170, within(1e-6));
        assertThat(Validity.isSimple(parallel)).isTrue();
    }

    @Test
    void nothingIsLeftOfAPieceNarrowerThanItsAllowances() {
        Outline narrow = Sketch.outline("0,0 20,0 20,200 0,200");
        double[] all = {15, 15, 15, 15};
        assertThat(Allowance.of(narrow, all)).isEmpty();
    }

    @Test
    void placesGoStraightAcross() {
        Outline piece = Sketch.outline("0,0 100,0 (140,30 120,80) 90,120 0,120");
        Allowance allowance = inside(piece, 10);
        Point across = allowance.outline().point(allowance.place(new Place(0, 0.4)));
        assertThat(across.distance(new Point(40, 10))).isLessThan(1e-9);
        Place corner = allowance.place(new Place(0, 0));
        assertThat(allowance.outline().point(corner).distance(new Point(10, 10)))
                .isLessThan(1e-9);
        Place onCurve = allowance.place(new Place(1, 0.5));
        assertThat(piece.segments().get(1).at(0.5).distance(allowance.outline().point(onCurve)))
                .isCloseTo(10, within(1e-5));
        Curve run = allowance.outline().run(allowance.place(new Place(0, 0)), allowance.place(new Place(1, 0)));
        assertThat(run.segments()).hasSize(1);
    }

    @Test
    void zeroKeepsTheVeryOutline() {
        Outline piece = Sketch.outline("0,0 100,0 (140,30 120,80) 90,120 0,120");
        Outline same = inside(piece, 0).outline();
        for (int i = 0; i < piece.segments().size(); i++) {
            assertThat(same.segments().get(i)).isSameAs(piece.segments().get(i));
        }
    }

    @Test
    void distancesAreChecked() {
        Outline piece = Sketch.outline("0,0 100,0 100,100");
        assertThatThrownBy(() -> Allowance.of(piece, new double[] {1})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Allowance.of(piece, new double[] {1, Double.NaN, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
