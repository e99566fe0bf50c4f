package easewright.alter;

import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.reversed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Darts in the forms in which they are drawn: from either side, over the start of the outline, with unequal or shaped legs. */
class DartFormsTest {
    private static final Point TIP = new Point(100, 80);
    private static final Point ONE = new Point(90, 0);
    private static final Point TWO = new Point(110, 0);

    private static final String CUT_OUT = "0,0 90,0 100,80 110,0 200,0 200,300 0,300";
    private static final String CAPPED = "0,0 90,0 100,-5 110,0 200,0 200,300 0,300";
    private static final String FLAT = "0,0 200,0 200,300 0,300";

    private static Piece piece(String outline, Dart... darts) {
        return Piece.bare("p", Sketch.outline(outline)).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(0, 0), new Point(200, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(200, 0), new Point(200, 300))))
                .levels(List.of(LevelMark.along("waist", "waist")))
                .darts(List.of(darts))
                .build();
    }

    private static Dart dart(Point one, Point two, Point tip) {
        return new Dart("d", one, two, tip, Optional.empty(), Optional.of("waist"));
    }

    private static Piece letOut(Piece piece, double by) throws Refusal {
        Pattern before = pattern(List.of(WAIST), piece);
        DartIntake change = DartIntake.at("waist", by);
        Pattern after = change.apply(before).pattern();
        assertThat(girth(after, "waist") - girth(before, "waist")).isCloseTo(by, within(1e-6));
        Pattern back = change.opposite().orElseThrow().apply(after).pattern();
        assertThat(Likeness.same(back.pieces().get(0), piece)).isTrue();
        return after.pieces().get(0);
    }

    private static Piece startingAt(Piece piece, int first) {
        List<Segment> turned = new ArrayList<>(piece.outline().segments());
        Collections.rotate(turned, -first);
        return piece.withOutline(new Outline(turned));
    }

    @ParameterizedTest
    @ValueSource(strings = {CUT_OUT, CAPPED, FLAT})
    void itIsTheSameDartHoweverItIsDrawn(String outline) throws Refusal {
        for (double by : new double[] {6, -6}) {
            Piece plain = letOut(piece(outline, dart(ONE, TWO, TIP)), by);
            for (Dart dart : List.of(dart(ONE, TWO, TIP), dart(TWO, ONE, TIP))) {
                Piece piece = piece(outline, dart);
                List<Piece> drawn = new ArrayList<>(List.of(piece, reversed(piece)));
                for (int i = 1; i < piece.outline().segments().size(); i++) {
                    drawn.add(startingAt(piece, i));
                }
                for (Piece each : drawn) {
                    Piece after = letOut(each, by);
                    assertThat(Likeness.sameLine(after.outline(), plain.outline()))
                            .isTrue();
                    Dart is = after.darts().get(0);
                    assertThat(is.mouth1().distance(is.mouth2()))
                            .isCloseTo(plain.darts().get(0).intake(), within(1e-6));
                    assertThat(is.mouth1().distance(dart.mouth1())).isLessThan(4);
                    Segment first = each.outline().segments().get(0);
                    Point start = after.outline().segments().get(0).start();
                    boolean moves = first.start().equals(ONE) || first.start().equals(TWO);
                    assertThat(start.distance(first.start()))
                            .isLessThan(moves || first.start().y() < 0 ? 4 : 1e-9);
                }
            }
        }
    }

    /** A marked mouth may lie a few hundredths beside the corner that is meant, or in the midst of a segment. */
    @Test
    void aRoundedMouthIsTheCorner() throws Refusal {
        Piece exact = letOut(piece(CUT_OUT, dart(ONE, TWO, TIP)), 6);
        Piece rounded = letOut(piece(CUT_OUT, dart(new Point(90.03, 0), new Point(109.97, 0), TIP)), 6);
        assertThat(rounded.outline().segments()).hasSameSizeAs(exact.outline().segments());
        assertThat(rounded.darts().get(0).mouth1().distance(exact.darts().get(0).mouth1()))
                .isCloseTo(0.03, within(0.02));
    }

    /** The dart leans: one leg is longer than the other by as much before and after, on a straight seam and on a bent one. */
    @Test
    void flatDartsKeepTheDifferenceOfTheirLegs() throws Refusal {
        for (String waist : List.of(FLAT, "0,0 (70,14 130,14) 200,0 200,300 0,300")) {
            Outline outline = Sketch.outline(waist);
            Point one = outline.segments().get(0).at(0.42);
            Point two = outline.segments().get(0).at(0.55);
            Dart leaning = dart(one, two, new Point(100, 90));
            double difference =
                    DartFold.of(leaning).leg1() - DartFold.of(leaning).leg2();
            assertThat(Math.abs(difference)).isGreaterThan(0.5);
            for (double by : new double[] {8, -8}) {
                Piece after = letOut(piece(waist, leaning), by);
                DartFold fold = DartFold.of(after.darts().get(0));
                assertThat(fold.leg1() - fold.leg2()).isCloseTo(difference, within(1e-8));
                assertThat(outline.nearest(after.darts().get(0).mouth1()).distance())
                        .isLessThan(1e-9);
                assertThat(outline.nearest(after.darts().get(0).mouth2()).distance())
                        .isLessThan(1e-9);
                assertThat(after.outline()).isEqualTo(outline);
            }
        }
    }

    /** Shaped legs of several stretches turn as a whole: every corner of a leg stays as far from the dart's point. */
    @Test
    void shapedLegsTurnAsAWhole() throws Refusal {
        Piece shaped =
                piece("0,0 90,0 93,40 100,80 (104,60 108,30) 109,20 110,0 200,0 200,300 0,300", dart(ONE, TWO, TIP));
        for (double by : new double[] {6, -6}) {
            Piece after = letOut(shaped, by);
            List<Segment> is = after.outline().segments();
            List<Segment> was = shaped.outline().segments();
            assertThat(is).hasSameSizeAs(was);
            assertThat(is.get(2).end()).isEqualTo(TIP);
            for (int i = 1; i <= 4; i++) {
                assertThat(is.get(i).length()).isCloseTo(was.get(i).length(), within(1e-9));
                assertThat(is.get(i).start().distance(TIP))
                        .isCloseTo(was.get(i).start().distance(TIP), within(1e-9));
            }
        }
    }

    /** Two darts share the seam between them: both take their part, and the last to be changed is the first taken back. */
    @Test
    void neighboursShareTheSeamBetweenThem() throws Refusal {
        Dart left = new Dart(
                "left", new Point(60, 0), new Point(76, 0), new Point(68, 90), Optional.empty(), Optional.of("waist"));
        Dart right = new Dart(
                "right",
                new Point(110, 0),
                new Point(126, 0),
                new Point(118, 70),
                Optional.empty(),
                Optional.of("waist"));
        Piece two = piece("0,0 60,0 68,90 76,0 110,0 118,70 126,0 200,0 200,300 0,300", left, right);
        for (double by : new double[] {9, -9}) {
            Piece after = letOut(two, by);
            double first = left.intake() - after.darts().get(0).intake();
            double second = right.intake() - after.darts().get(1).intake();
            assertThat(first).isCloseTo(by / 2, within(0.2));
            assertThat(second).isCloseTo(by / 2, within(0.2));
        }
    }

    /** A dart within the cloth is known by its mouth lying there, whatever else is marked. */
    @Test
    void aDartWithinTheClothWithOnePoint() throws Refusal {
        Level low = Level.of("low", LevelKind.OTHER);
        Dart within = new Dart(
                "d", new Point(90, 100), new Point(110, 100), new Point(100, 160), Optional.empty(), Optional.empty());
        Piece cloth = piece(FLAT, within).withLevels(List.of(LevelMark.through("low", new Point(20, 120))));
        Pattern before = pattern(List.of(low), cloth);
        Piece after = DartIntake.at("low", 5).apply(before).pattern().pieces().get(0);
        assertThat(after.outline()).isSameAs(cloth.outline());
        // A third of the way to the point the dart takes in two thirds: 5 there are 7.5 at the mouth.
        assertThat(within.intake() - after.darts().get(0).intake()).isCloseTo(7.5, within(1e-6));
        Dart atTheWaist = new Dart("d", ONE, TWO, TIP, Optional.empty(), Optional.empty());
        Piece cut = piece(CUT_OUT, atTheWaist).withLevels(List.of(LevelMark.through("low", new Point(20, 40))));
        Piece turned = DartIntake.at("low", 3)
                .apply(pattern(List.of(low), cut))
                .pattern()
                .pieces()
                .get(0);
        assertThat(turned.outline()).isNotEqualTo(cut.outline());
        assertThat(turned.darts().get(0).intake()).isCloseTo(20 - 6, within(0.1));
    }

    /** Worked example W8: two legs of 3 1/2 in and 1 in between them. */
    @Test
    void w8HowADartFolds() {
        double half = Math.asin(0.5 / 3.5);
        double deep = 3.5 * Math.cos(half);
        DartFold fold = DartFold.of(dart(new Point(-0.5, 0), new Point(0.5, 0), new Point(0, deep)));
        assertThat(fold.angle()).isCloseTo(2 * half, within(1e-12));
        assertThat(fold.leg1()).isCloseTo(3.5, within(1e-12));
        assertThat(fold.difference()).isCloseTo(0, within(1e-12));
        assertThat(fold.overChord()).isCloseTo(3.5 * Math.tan(half) * Math.sin(half), within(1e-12));
        assertThat(fold.peak().distance(new Point(0, -fold.overChord()))).isLessThan(1e-12);
        DartFold uneven = DartFold.of(dart(new Point(0, 3), new Point(4, 0), new Point(0, 0)));
        assertThat(uneven.angle()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(uneven.difference()).isCloseTo(1, within(1e-12));
        // The middle line halves the right angle; a mean leg of 3.5 reaches 3.5·√2 on it.
        assertThat(uneven.peak().distance(new Point(3.5, 3.5))).isLessThan(1e-12);
    }

    /** From the dart into the side and back: which comes first is turned round, so that it comes back exactly. */
    @Test
    void shapingGoesIntoTheSeamAndBack() throws Refusal {
        for (double by : new double[] {7, -7}) {
            Pattern before = pattern(List.of(WAIST), piece(CUT_OUT, dart(ONE, TWO, TIP)));
            DartToSeam change = DartToSeam.at("waist", by);
            Pattern after = change.apply(before).pattern();
            Piece is = after.pieces().get(0);
            assertThat(girth(after, "waist")).isCloseTo(girth(before, "waist"), within(1e-6));
            assertThat(20 - is.darts().get(0).intake()).isCloseTo(by, within(0.2));
            assertThat(200 - is.edge("side").orElseThrow().from().x()).isCloseTo(by, within(0.2));
            Pattern back = change.opposite().orElseThrow().apply(after).pattern();
            assertThat(Likeness.same(back.pieces().get(0), before.pieces().get(0)))
                    .isTrue();
        }
        Pattern before = pattern(List.of(WAIST), piece(CUT_OUT, dart(ONE, TWO, TIP)));
        Refusal tooMuch = catchThrowableOfType(
                Refusal.class, () -> DartToSeam.at("waist", 30).apply(before));
        assertThat(tooMuch.code()).isEqualTo("dart-used-up");
        assertThat(tooMuch.largest().orElseThrow()).isBetween(19.0, 20.1);
        DartToSeam.at("waist", tooMuch.largest().orElseThrow()).apply(before);
        assertThat(catchThrowableOfType(
                                Refusal.class, () -> DartToSeam.at("hip", 3).apply(before))
                        .code())
                .isEqualTo("level-unknown");
    }

    /** Each piece gives to its own seams: the width of each stays, whether it has one seam there or two. */
    @Test
    void everyPieceKeepsItsWidth() throws Refusal {
        Piece one = piece(CUT_OUT, dart(ONE, TWO, TIP));
        Piece two = RandomCloth.mapped(
                one.toBuilder()
                        .grain(new Grain(new Point(50, 100), new Point(50, 200)))
                        .build(),
                Affine.translation(500, 0));
        List<Edge> edges = new ArrayList<>(two.edges());
        edges.add(Edge.of("other side", EdgeRole.SEAM, new Point(500, 300), new Point(500, 0)));
        Piece both = Piece.bare("q", two.outline()).toBuilder()
                .edges(edges)
                .darts(two.darts())
                .levels(two.levels())
                .build();
        Pattern before = pattern(List.of(WAIST), one, both);
        Pattern after = DartToSeam.at("waist", 12).apply(before).pattern();
        for (int i = 0; i < 2; i++) {
            assertThat(Measures.width(after.pieces().get(i), WAIST)
                            .orElseThrow()
                            .net())
                    .isCloseTo(
                            Measures.width(before.pieces().get(i), WAIST)
                                    .orElseThrow()
                                    .net(),
                            within(1e-6));
        }
    }

    /** Where two seams bound the level, what the dart gives is shared between them. */
    @Test
    void twoSeamsShareWhatTheDartGives() throws Refusal {
        Piece one = piece(CUT_OUT, dart(ONE, TWO, TIP));
        List<Edge> edges = new ArrayList<>(one.edges());
        edges.add(Edge.of("other side", EdgeRole.SEAM, new Point(0, 300), new Point(0, 0)));
        Pattern before = pattern(List.of(WAIST), one.withEdges(edges));
        Piece is = DartToSeam.at("waist", 8).apply(before).pattern().pieces().get(0);
        assertThat(200 - is.edge("side").orElseThrow().from().x()).isCloseTo(4, within(0.1));
        assertThat(is.edge("other side").orElseThrow().to().x()).isCloseTo(4, within(0.1));
        assertThat(Measures.width(is, WAIST).orElseThrow().net()).isCloseTo(girth(before, "waist"), within(1e-6));
    }
}
