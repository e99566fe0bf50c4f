package easewright.alter;

import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What lies beside a dart that is cut out of the outline goes along when its legs turn about their point. */
class DartMarksTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Point TIP = new Point(100, 80);
    private static final Point ONE = new Point(90, 0);
    private static final Point TWO = new Point(110, 0);

    private static Piece piece(String outline) {
        return Piece.bare("p", Sketch.outline(outline)).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(0, 0), new Point(200, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(200, 0), new Point(200, 300))))
                .levels(List.of(LevelMark.along("waist", "waist")))
                .darts(List.of(new Dart("d", ONE, TWO, TIP, Optional.empty(), Optional.of("waist"))))
                .notches(List.of(
                        new Notch("before", new Point(45, 0)),
                        new Notch("after", new Point(150, 0)),
                        new Notch("leg", ONE.towards(TIP, 0.5)),
                        new Notch("away", new Point(200, 100)),
                        new Notch("inside", new Point(60, 30))))
                .riders(List.of(
                        new Rider("legs", Rider.Kind.INNER, List.of(new Line(ONE, TIP), new Line(TIP, TWO))),
                        new Rider("fold", Rider.Kind.INNER, List.of(new Line(new Point(20, 50), new Point(60, 50)))),
                        new Rider(
                                "cut",
                                Rider.Kind.PARALLEL,
                                List.of(
                                        new Line(new Point(0, -10), new Point(45, -10)),
                                        new Line(new Point(210, 50), new Point(210, 90))))))
                .build();
    }

    private static final String STRAIGHT = "0,0 90,0 100,80 110,0 200,0 200,300 0,300";
    private static final String CURVED = "0,0 (30,0 60,0) 90,0 100,80 110,0 (140,0 170,0) 200,0 200,300 0,300";

    private static Piece letOut(String outline, double by) throws Refusal {
        Pattern before = pattern(List.of(WAIST), piece(outline));
        Pattern after = DartIntake.at("waist", by).apply(before).pattern();
        assertThat(girth(after, "waist") - girth(before, "waist")).isCloseTo(by, within(1e-6));
        return after.pieces().get(0);
    }

    private static Point notch(Piece piece, int i) {
        return piece.notches().get(i).at();
    }

    private static void assertAt(Point p, Point expected) {
        assertThat(p.distance(expected)).isLessThan(1e-9);
    }

    @Test
    void bothLegsTurnAlikeAndKeepTheirLengths() throws Refusal {
        for (double by : new double[] {6, -6}) {
            Dart dart = letOut(STRAIGHT, by).darts().get(0);
            assertThat(dart.point()).isEqualTo(TIP);
            assertThat(dart.mouth1().distance(TIP)).isCloseTo(Math.hypot(10, 80), EXACT);
            assertThat(dart.mouth2().distance(TIP)).isCloseTo(Math.hypot(10, 80), EXACT);
            assertThat(dart.mouth1().x() - 90)
                    .as("towards the other")
                    .isCloseTo(110 - dart.mouth2().x(), EXACT);
            assertThat(Math.signum(dart.mouth1().x() - 90)).isEqualTo(Math.signum(by));
        }
    }

    @Test
    void marksBesideTheDartGoInProportion() throws Refusal {
        Piece after = letOut(STRAIGHT, 6);
        Point first = after.darts().get(0).mouth1().minus(ONE);
        Point second = after.darts().get(0).mouth2().minus(TWO);
        assertAt(notch(after, 0), new Point(45, 0).plus(first.times(0.5)));
        assertAt(notch(after, 1), new Point(150, 0).plus(second.times(50 / 90.0)));
        assertAt(notch(after, 2), after.darts().get(0).mouth1().towards(TIP, 0.5));
        assertThat(notch(after, 3)).isEqualTo(new Point(200, 100));
        assertThat(notch(after, 4)).isEqualTo(new Point(60, 30));
        Piece curved = letOut(CURVED, 6);
        Point by = curved.darts().get(0).mouth1().minus(ONE);
        assertAt(notch(curved, 0), new Point(45, 0).plus(by.times(0.5)));
        double t = 40 / 90.0;
        double weight = (1 - t) * (1 - t) * (1 + 2 * t);
        Point other = curved.darts().get(0).mouth2().minus(TWO);
        assertAt(notch(curved, 1), new Point(150, 0).plus(other.times(weight)));
    }

    @Test
    void drawnLegsGoWithTheMouthAndOtherLinesStay() throws Refusal {
        Piece before = piece(STRAIGHT);
        Piece after = letOut(STRAIGHT, 6);
        Dart dart = after.darts().get(0);
        assertThat(after.riders().get(0).segments())
                .containsExactly(new Line(dart.mouth1(), TIP), new Line(TIP, dart.mouth2()));
        assertThat(after.riders().get(1)).isEqualTo(before.riders().get(1));
        List<Segment> cut = after.riders().get(2).segments();
        assertAt(cut.get(0).start(), new Point(0, -10));
        assertAt(
                cut.get(0).end(),
                new Point(45, -10).plus(dart.mouth1().minus(ONE).times(0.5)));
        assertThat(cut.get(1)).isEqualTo(before.riders().get(2).segments().get(1));
    }

    @Test
    void theSeamBesideItKeepsItsFarEndsAndTheRestIsTheSame() throws Refusal {
        Piece before = piece(CURVED);
        Piece after = letOut(CURVED, -6);
        Outline outline = after.outline();
        assertThat(outline.segments()).hasSameSizeAs(before.outline().segments());
        Cubic seam = (Cubic) outline.segments().get(0);
        assertThat(seam.start()).isEqualTo(new Point(0, 0));
        assertThat(seam.control1()).isEqualTo(new Point(30, 0));
        assertAt(seam.end(), after.darts().get(0).mouth1());
        assertAt(seam.control2(), new Point(60, 0).plus(seam.end().minus(ONE)));
        for (int i : new int[] {4, 5, 6}) {
            assertThat(outline.segments().get(i))
                    .isSameAs(after.original().orElseThrow().segments().get(i));
        }
        assertThat(after.edges()).isEqualTo(before.edges());
        assertThat(after.original()).contains(before.outline());
    }

    private static List<Segment> cap(String cap, double by, int segments) throws Refusal {
        return letOut("0,0 90,0 " + cap + " 110,0 200,0 200,300 0,300", by)
                .outline()
                .segments()
                .subList(1, 1 + segments);
    }

    /** A bowed cap, or one of three lines, is enlarged with the mouth. */
    @Test
    void capsOfOtherFormsKeepTheirForm() throws Refusal {
        for (double by : new double[] {5, -5}) {
            List<Segment> bowed = cap("(95,-6 105,-6)", by, 1);
            Cubic bow = (Cubic) bowed.get(0);
            double ratio = bow.start().distance(bow.end()) / 20;
            assertThat(ratio).isNotCloseTo(1, within(0.1));
            assertAt(bow.control1(), bow.start().plus(new Point(5, -6).times(ratio)));
            assertAt(bow.control2(), bow.end().plus(new Point(-5, -6).times(ratio)));
            List<Segment> blunt = cap("95,-4 104,-5", by, 3);
            double other = blunt.get(0).start().distance(blunt.get(2).end()) / 20;
            assertAt(blunt.get(0).end(), blunt.get(0).start().plus(new Point(5, -4).times(other)));
            assertAt(blunt.get(1).end(), blunt.get(0).start().plus(new Point(14, -5).times(other)));
            assertThat(blunt.get(1).start()).isEqualTo(blunt.get(0).end());
            assertThat(blunt.get(2).start()).isEqualTo(blunt.get(1).end());
        }
    }

    /** A pointed cap is drawn as if folded; by how much it was higher than that is kept in proportion. */
    @Test
    void aPointedCapIsFoldedAnew() throws Refusal {
        for (double by : new double[] {5, -5}) {
            List<Segment> pointed = cap("100,-5", by, 2);
            Point mouth = pointed.get(0).start();
            double ratio = (100 - mouth.x()) / 10;
            // The seam from (0, 0) to the mouth, mirrored in the leg, up to x = 100; at first the seam is level.
            double tooHigh = 5 - folded(ONE, new Point(-1, 0));
            double expected = folded(mouth, mouth.times(-1).unit()) + tooHigh * ratio;
            assertThat(pointed.get(0).end().x()).isCloseTo(100, within(1e-9));
            assertThat(-pointed.get(0).end().y()).isCloseTo(expected, within(1e-9));
        }
    }

    /** How far above y = 0 the seam back along {@code back}, mirrored in the leg to a mouth, meets x = 100. */
    private static double folded(Point mouth, Point back) {
        Point leg = mouth.minus(TIP).unit();
        Point mirrored = leg.times(2 * back.dot(leg)).minus(back);
        return -(mouth.y() + mirrored.y() * (100 - mouth.x()) / mirrored.x());
    }
}
