package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Notches drawn as part of the cutting line leave the stitching line as it is. */
class NotchCutsTest {
    private static final List<Level> HIP = List.of(Level.of("hip", LevelKind.HIP));

    private static Piece piece(Outline drawn) {
        Point top = drawn.segments().get(0).start();
        Point side = new Point(200, 0);
        Point hem = new Point(230, 600);
        Point foot = new Point(0, 600);
        return Piece.bare("front", drawn).toBuilder()
                .drawn(LineKind.CUTTING, 15)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, top, side),
                        Edge.of("side", EdgeRole.SEAM, side, hem),
                        Edge.of("hem", EdgeRole.HEM, hem, foot),
                        Edge.of("fold", EdgeRole.FOLD, foot, top)))
                .levels(List.of(LevelMark.through("hip", new Point(50, 300))))
                .build();
    }

    /** A side that is straight or curved, with what is given in place of 6 mm of it at the hip. */
    private static Piece withNotch(boolean curved, double mouth, double[][] run) {
        Outline plain =
                Sketch.outline(curved ? "0,0 200,0 (240,150 250,400) 230,600 0,600" : "0,0 200,0 230,600 0,600");
        Segment side = plain.segments().get(1);
        double middle = side.nearest(new Point(230, 300));
        double half = mouth / 2 / side.derivative(middle).norm();
        Point at = side.at(middle);
        Point along = side.tangent(middle);
        Point inward = along.quarterTurned();
        List<Segment> segments = new ArrayList<>();
        segments.add(plain.segments().get(0));
        segments.add(side.between(0, middle - half));
        for (double[] corner : run) {
            Point last = segments.get(segments.size() - 1).end();
            segments.add(new Line(last, at.plus(along.times(corner[0])).plus(inward.times(corner[1]))));
        }
        Segment rest = side.between(middle + half, 1);
        Point last = segments.get(segments.size() - 1).end();
        segments.add(new Line(last, rest.start()));
        segments.add(rest);
        segments.addAll(plain.segments().subList(2, plain.segments().size()));
        return piece(new Outline(segments));
    }

    private static double apart(Piece notched, Piece plain) {
        Outline one = StitchOutline.of(notched).outline();
        Outline other = StitchOutline.of(plain).outline();
        double most = 0;
        for (int i = 0; i < one.segments().size(); i++) {
            for (double t = 0; t < 1; t += 0.05) {
                most = Math.max(most, other.nearest(one.point(new Place(i, t))).distance());
            }
        }
        return most;
    }

    private static final Piece STRAIGHT = withNotchless(false);
    private static final Piece CURVED = withNotchless(true);

    private static Piece withNotchless(boolean curved) {
        return piece(Sketch.outline(curved ? "0,0 200,0 (240,150 250,400) 230,600 0,600" : "0,0 200,0 230,600 0,600"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyKindOfNotchIsLedPast(boolean curved) {
        double[][] inwardV = {{0, 6}};
        double[][] outwardV = {{0, -15}};
        double[][] slit = {{0, 5}};
        double[][] castle = {{-3, 4}, {3, 4}};
        double[][] flatV = {{-1, 6}, {1, 6}};
        Piece plain = curved ? CURVED : STRAIGHT;
        double allowed = curved ? 1e-3 : 1e-7;
        assertThat(apart(withNotch(curved, 6, inwardV), plain)).as("V").isLessThan(allowed);
        assertThat(apart(withNotch(curved, 8, outwardV), plain)).as("triangle").isLessThan(allowed);
        assertThat(apart(withNotch(curved, 0, slit), plain)).as("slit").isLessThan(allowed);
        assertThat(apart(withNotch(curved, 6, castle), plain)).as("box").isLessThan(allowed);
        assertThat(apart(withNotch(curved, 6, flatV), plain)).as("blunt V").isLessThan(allowed);
    }

    @Test
    void widthAtTheNotchIsThatOfTheSeam() {
        double plain = Measures.width(STRAIGHT, HIP.get(0)).orElseThrow().net();
        Piece notched = withNotch(false, 6, new double[][] {{0, 6}});
        assertThat(Measures.width(notched, HIP.get(0)).orElseThrow().net()).isCloseTo(plain, within(1e-7));
    }

    @Test
    void itIsOfferedAsANotchUntilItIsMarked() {
        Piece notched = withNotch(false, 6, new double[][] {{0, 6}});
        Finding finding = Measures.of(notched, HIP).findings().get(0);
        assertThat(finding.code()).isEqualTo("notch-in-cutting-line");
        Point tip = new Point(
                (Double) finding.values().get("x"), (Double) finding.values().get("y"));
        assertThat(notched.outline().nearest(tip).distance()).isLessThan(1e-9);
        Piece marked =
                notched.toBuilder().notches(List.of(new Notch("hip", tip))).build();
        assertThat(Measures.of(marked, HIP).findings()).isEmpty();
        Curve seam = StitchOutline.of(marked).edge(marked.edge("side").orElseThrow());
        assertThat(seam.nearest(StitchOutline.of(marked).point(tip)).distance()).isLessThan(1e-9);
        assertThat(Measures.of(STRAIGHT, HIP).findings()).isEmpty();
    }

    /** A dart that is not marked, a step and a scalloped edge are shapes, not notches. */
    @Test
    void largerShapesAreKept() {
        Piece dart = withNotch(false, 12, new double[][] {{0, 60}});
        assertThat(apart(dart, STRAIGHT)).isGreaterThan(10);
        Piece step = piece(Sketch.outline("0,0 200,0 215,300 221,300 230,600 0,600"));
        assertThat(Measures.of(step, HIP).findings()).isEmpty();
        Piece wave = piece(Sketch.outline("0,0 200,0 215,300 (225,310 225,320) 216,330 230,600 0,600"));
        assertThat(Measures.of(wave, HIP).findings()).isEmpty();
    }

    /** Notches anywhere on random sides, several to a side, some on the first and last segment of the drawing. */
    @Test
    void anyNumberOfNotchesAnywhere() {
        Random random = new Random(31);
        for (int run = 0; run < 100; run++) {
            List<Point> corners = new ArrayList<>(List.of(new Point(0, 0), new Point(200, 0)));
            Point from = new Point(200, 0);
            Point to = new Point(230, 600);
            Point along = to.minus(from).unit();
            double at = 30 + 60 * random.nextDouble();
            while (at < 560) {
                double half = 1 + 4 * random.nextDouble();
                double deep = (random.nextBoolean() ? 1 : -1) * (2 + 10 * random.nextDouble());
                corners.add(from.plus(along.times(at - half)));
                corners.add(
                        from.plus(along.times(at)).plus(along.quarterTurned().times(deep)));
                corners.add(from.plus(along.times(at + half)));
                at += 40 + 150 * random.nextDouble();
            }
            corners.addAll(List.of(to, new Point(0, 600)));
            Piece notched = piece(Outline.polygon(corners));
            List<Point> turned = new ArrayList<>(corners.subList(3, corners.size()));
            turned.addAll(corners.subList(0, 3));
            Piece begunElsewhere = piece(Outline.polygon(corners)).withOutline(Outline.polygon(turned));
            assertThat(apart(notched, STRAIGHT)).as("run %d", run).isLessThan(1e-7);
            assertThat(apart(begunElsewhere, STRAIGHT)).as("run %d", run).isLessThan(1e-7);
            assertThat(Measures.of(notched, HIP).findings()).hasSize((corners.size() - 4) / 3);
        }
    }
}
