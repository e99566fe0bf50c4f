package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.reversed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An edge made longer: a band of 400 mm slashed between its notches, and an armhole drawn out at the underarm. */
class EdgeLengthTest {
    private static final EdgeRef SEAM = EdgeRef.of("band", "seam");

    private static Piece band(EdgeRole left, EdgeRole right, double... notches) {
        Point a = new Point(0, 0);
        Point b = new Point(400, 0);
        Point c = new Point(400, 60);
        Point d = new Point(0, 60);
        return Piece.bare("band", Outline.polygon(List.of(a, b, c, d))).toBuilder()
                .edges(List.of(
                        Edge.of("seam", EdgeRole.WAIST, a, b),
                        Edge.of("right", right, b, c),
                        Edge.of("outer", EdgeRole.OTHER, c, d),
                        Edge.of("left", left, d, a)))
                .notches(java.util.Arrays.stream(notches)
                        .mapToObj(x -> new Notch("n" + x, new Point(x, 0)))
                        .toList())
                .build();
    }

    private static Piece slashed(Piece piece, double by) throws Refusal {
        Pattern before = pattern(List.of(), piece);
        Pattern after = EdgeLength.slashed(SEAM, by).apply(before).pattern();
        assertThat(sewn(after.pieces().get(0)) - sewn(piece)).isCloseTo(by, within(1e-6));
        Pattern back = EdgeLength.slashed(SEAM, -by).apply(after).pattern();
        assertThat(Likeness.same(back.pieces().get(0), piece)).isTrue();
        return after.pieces().get(0);
    }

    private static double sewn(Piece piece) {
        return Measures.of(piece, List.of())
                .edge(piece.edges().get(0).name())
                .orElseThrow()
                .mm();
    }

    private static void assertNotches(Piece piece, double... x) {
        for (int i = 0; i < x.length; i++) {
            assertThat(piece.notches().get(i).at().distance(new Point(x[i], 0))).isLessThan(1e-6);
        }
    }

    /** A tenth more: every stretch between notches takes its tenth, so that the notches stay in proportion. */
    @Test
    void notchesStayInProportion() throws Refusal {
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 100, 300), 40), 110, 330);
        assertNotches(slashed(band(EdgeRole.FOLD, EdgeRole.OTHER, 100, 300), 40), 110, 330);
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 100, 300), -40), 90, 270);
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 100, 300), 200), 150, 450);
        // What is nearest to a centre line stays: on the right the band grows to the left.
        for (EdgeRole centre : List.of(EdgeRole.CENTRE, EdgeRole.FOLD)) {
            Piece leftwards = slashed(band(EdgeRole.OTHER, centre, 100, 300), 40);
            assertNotches(leftwards, 70, 290);
            assertThat(leftwards.outline().box().minX()).isCloseTo(-40, within(1e-6));
            assertThat(leftwards.outline().box().maxX()).isEqualTo(400);
        }
    }

    @Test
    void theWayRoundDoesNotMatter() throws Refusal {
        Piece band = band(EdgeRole.OTHER, EdgeRole.CENTRE, 100, 300);
        assertNotches(slashed(reversed(band), 40), 70, 290);
    }

    /** A stretch of less than 12 mm is not slashed; the others take its part. */
    @Test
    void aShortStretchIsLeft() throws Refusal {
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 11, 205.5), 38.9), 11, 205.5 + 19.45);
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 200, 395), 39.5), 220, 434.5);
        assertNotches(slashed(band(EdgeRole.OTHER, EdgeRole.OTHER, 12, 206), 40), 13.2, 206 * 1.1);
    }

    /** A dart's mouth is not slashed, and is no part of the sewn length: 380 mm take 38. */
    @Test
    void aDartIsLeftAsItIs() throws Refusal {
        Dart dart = new Dart(
                "d", new Point(140, 0), new Point(160, 0), new Point(150, 40), Optional.empty(), Optional.of("seam"));
        for (Dart each : List.of(
                dart, new Dart("d", dart.mouth2(), dart.mouth1(), dart.point(), Optional.empty(), dart.edge()))) {
            Piece piece = band(EdgeRole.OTHER, EdgeRole.OTHER, 100, 300).toBuilder()
                    .darts(List.of(each))
                    .build();
            Piece after = slashed(piece, 38);
            assertNotches(after, 110, 300 + 10 + 4 + 14);
            assertThat(after.darts().get(0).intake()).isCloseTo(20, within(1e-9));
            assertThat(after.darts().get(0).point().distance(new Point(164, 40)))
                    .isLessThan(1e-6);
        }
    }

    private static final Point UNDERARM = new Point(200, 150);

    /** Half a back: shoulder point (120, 0), an armhole of four stretches to the underarm, its side straight down. */
    private static Piece back(Notch... notches) {
        Outline outline = Sketch.outline("0,0 120,0 120,50 125,90 140,120 200,150 200,400 0,400");
        return Piece.bare("back", outline).toBuilder()
                .edges(List.of(
                        Edge.of("armhole", EdgeRole.ARMHOLE, new Point(120, 0), UNDERARM),
                        Edge.of("side", EdgeRole.SEAM, UNDERARM, new Point(200, 400)),
                        Edge.of("hem", EdgeRole.HEM, new Point(200, 400), new Point(0, 400)),
                        Edge.of("fold", EdgeRole.FOLD, new Point(0, 400), new Point(0, 0))))
                .notches(List.of(notches))
                .build();
    }

    private static Piece drawnOut(Piece piece, double by) throws Refusal {
        Pattern before = pattern(List.of(), piece);
        EdgeLength change = EdgeLength.atEnds(EdgeRef.of("back", "armhole"), by);
        Pattern after = change.apply(before).pattern();
        assertThat(sewn(after.pieces().get(0)) - sewn(piece)).isCloseTo(by, within(1e-6));
        Pattern back = change.opposite().orElseThrow().apply(after).pattern();
        assertThat(Likeness.same(back.pieces().get(0), piece)).isTrue();
        return after.pieces().get(0);
    }

    /** The underarm goes out square to the grain; the armhole follows up to its middle, the side down to its end. */
    @Test
    void theUnderarmGoesOutAndBothSeamsFollow() throws Refusal {
        for (double by : new double[] {6, -6}) {
            Piece piece = back();
            Piece after = drawnOut(piece, by);
            Point underarm = after.edge("armhole").orElseThrow().to();
            assertThat(underarm.y()).isEqualTo(150);
            assertThat(Math.signum(underarm.x() - 200)).isEqualTo(Math.signum(by));
            // Half of 50 + 40.3 + 33.5 + 67.1 is 95.5; the nearest end of a stretch is at 90.3.
            List<Segment> is = after.outline().segments();
            for (int i : new int[] {0, 1, 2, 6, 7}) {
                assertThat(is.get(i)).isSameAs(piece.outline().segments().get(i));
            }
            assertThat(is.get(3).start()).isEqualTo(new Point(125, 90));
            assertThat(is.get(3).end().x()).isNotEqualTo(140);
        }
    }

    /** A notch or a dart holds what lies beyond it. */
    @Test
    void notchesAndDartsHoldWhatLiesBeyond() throws Refusal {
        Piece notched = back(new Notch("armhole", new Point(140, 120)), new Notch("side", new Point(200, 250)));
        Piece after = drawnOut(notched, 6);
        assertThat(after.notches()).isEqualTo(notched.notches());
        assertThat(after.outline().segments())
                .contains(notched.outline().segments().get(3));
        Dart bust = new Dart(
                "bust",
                new Point(200, 230),
                new Point(200, 250),
                new Point(150, 240),
                Optional.empty(),
                Optional.of("side"));
        Piece darted = back().toBuilder().darts(List.of(bust)).build();
        Piece held = drawnOut(darted, 6);
        assertThat(held.darts()).isEqualTo(darted.darts());
        Piece plain = drawnOut(back(), 6);
        assertThat(plain.outline().nearest(new Point(200, 240)).distance()).isGreaterThan(0.5);
    }

    @Test
    void whatCannotGiveWayIsRefused() throws Refusal {
        Pattern before = pattern(List.of(), back());
        assertThat(code(EdgeLength.atEnds(EdgeRef.of("front", "armhole"), 5), before))
                .isEqualTo("piece-unknown");
        assertThat(code(EdgeLength.atEnds(EdgeRef.of("back", "cap"), 5), before))
                .isEqualTo("edge-unknown");
        assertThat(code(EdgeLength.atEnds(EdgeRef.of("back", "fold"), 5), before))
                .isEqualTo("edge-without-seam");
        Piece held = back().withEdges(back().edges().stream()
                .map(e -> e.role() == EdgeRole.SEAM ? e.withProtected(true) : e)
                .toList());
        assertThat(code(EdgeLength.atEnds(EdgeRef.of("back", "armhole"), 5), pattern(List.of(), held)))
                .isEqualTo("edge-protected");
        Altered agreed = new EdgeLength(EdgeRef.of("back", "armhole"), 5, EdgeLength.Manner.AT_ENDS, true)
                .apply(pattern(List.of(), held));
        // The armhole is protected still; that it changed was what was asked for.
        assertThat(agreed.pattern()
                        .pieces()
                        .get(0)
                        .edge("armhole")
                        .orElseThrow()
                        .isProtected())
                .isEqualTo(held.edge("armhole").orElseThrow().isProtected());
        Refusal most = catchThrowableOfType(
                Refusal.class,
                () -> EdgeLength.slashed(SEAM, -420).apply(pattern(List.of(), band(EdgeRole.OTHER, EdgeRole.OTHER))));
        assertThat(most.code()).isEqualTo("edge-length-not-met");
        assertThat(most.largest().orElseThrow()).isBetween(-400.0, -399.0);
    }

    private static String code(Alteration change, Pattern pattern) {
        return catchThrowableOfType(Refusal.class, () -> change.apply(pattern)).code();
    }

    /** At the ends of an edge whose seams lie nearly along it, the piece is soon torn: that is refused, not an error. */
    @Test
    void whatTearsThePieceIsRefused() {
        Pattern before = TruingPropertiesTest.pair(136, LineKind.CUTTING);
        EdgeLength torn = new EdgeLength(EdgeRef.of("front", "top"), 4, EdgeLength.Manner.AT_ENDS, true);
        assertThat(Cloths.refusal(torn, before).code()).isEqualTo("edge-length-not-met");
    }
}
