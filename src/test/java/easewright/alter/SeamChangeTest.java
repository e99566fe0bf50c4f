package easewright.alter;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.curvedSkirt;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static easewright.alter.Cloths.refusal;
import static easewright.alter.Cloths.reversed;
import static easewright.alter.Cloths.skirtHalf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeamChangeTest {
    private static double edge(Piece piece, String name) {
        return piece.edge(name).orElseThrow().on(piece.outline()).length();
    }

    private static Pattern straightSkirt() {
        return pattern(
                List.of(WAIST, HIP, Level.of("between", LevelKind.OTHER), Level.of("low", LevelKind.OTHER)),
                Cloths.straightSkirt("front"),
                Cloths.straightSkirt("back"));
    }

    @Test
    void w14BustCloseUnderAProtectedArmhole() throws Refusal {
        Altered close = bodice(1);
        assertThat(close.findings()).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo("taper-steep");
            assertThat((Double) f.values().get("slope.degrees")).isCloseTo(20.56, within(5e-3));
        });
        Altered far = bodice(3);
        assertThat(far.findings()).noneMatch(f -> f.code().equals("taper-steep"));
        assertThat(far.findings()).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo("taper-short");
            assertThat((Double) f.values().get("slope.degrees")).isCloseTo(7.13, within(5e-3));
        });
    }

    /** Above the level it swings as much when all below is carried to the hem; that is no advice then. */
    @Test
    void carriedToTheHemIsNotAdvisedAgain() throws Refusal {
        Pattern before = pattern(
                List.of(Level.of("bust", LevelKind.BUST)), Cloths.lowBust("front", 1), Cloths.lowBust("back", 1));
        assertThat(SeamChange.at("bust", 1.5 * INCH)
                        .carriedToHem()
                        .apply(before)
                        .findings())
                .extracting(Finding::code)
                .contains("taper-steep-carried")
                .doesNotContain("taper-steep");
    }

    /** From a corner on it dies away along the edge beside as well: there it may swing most. */
    @Test
    void theEdgeThatSwingsIsNamed() throws Refusal {
        Pattern before = pattern(
                List.of(Level.of("bust", LevelKind.BUST)), Cloths.lowBust("front", 0), Cloths.lowBust("back", 0));
        Altered wide = SeamChange.at("bust", 4 * INCH).acceptingProtected().apply(before);
        assertThat(wide.findings())
                .filteredOn(f -> f.code().equals("taper-short"))
                .hasSize(2)
                .allSatisfy(f -> {
                    assertThat(f.values()).containsEntry("edge", "armhole");
                    assertThat((Double) f.values().get("taper")).isCloseTo(7 * INCH, within(1e-6));
                });
    }

    private static Altered bodice(double below) throws Refusal {
        Piece front = Cloths.lowBust("front", below);
        Pattern before = pattern(List.of(Level.of("bust", LevelKind.BUST)), front, Cloths.lowBust("back", below));
        Altered after = SeamChange.at("bust", 1.5 * INCH).apply(before);
        assertThat(girth(after.pattern(), "bust") - girth(before, "bust")).isCloseTo(1.5 * INCH, within(1e-6));
        for (int i : new int[] {0, 1, 2, 5}) {
            assertThat(segmentsOf(after.pattern()))
                    .contains(front.outline().segments().get(i));
        }
        assertThat(edge(after.pattern().pieces().get(0), "armhole")).isEqualTo(edge(front, "armhole"));
        return after;
    }

    private static List<Segment> segmentsOf(Pattern pattern) {
        return pattern.pieces().get(0).outline().segments();
    }

    /** The hem of a sleeve is slanted between its two seams: what one moves along it hangs on what the other has moved. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 20, -12.71})
    void twoSeamsAtASlantedHemComeBack(double amount) throws Exception {
        Pattern before = TruingTest.sample("bodice");
        Pattern after = SeamChange.at("wrist", amount).apply(before).pattern();
        Pattern back = SeamChange.at("wrist", -amount).apply(after).pattern();
        Outline sleeve = before.piece("bodice-sleeve").orElseThrow().outline();
        assertThat(Worst.apart(back.piece("bodice-sleeve").orElseThrow().outline(), sleeve))
                .isLessThan(1e-6);
    }

    @Test
    void hipPinchLeavesEverythingElseTheSameObjects() throws Refusal {
        Pattern before = pattern(List.of(WAIST, HIP), curvedSkirt("front"));
        Altered after = SeamChange.at("hip", -24).apply(before);
        assertThat(girth(after.pattern(), "hip") - girth(before, "hip")).isCloseTo(-24, within(1e-8));
        assertThat(girth(after.pattern(), "waist")).isEqualTo(girth(before, "waist"));
        Piece was = before.pieces().get(0);
        Piece is = after.pattern().pieces().get(0);
        for (int i : new int[] {0, 3, 4}) {
            assertThat(is.outline().segments().get(i))
                    .isSameAs(was.outline().segments().get(i));
        }
        assertThat(is.darts()).isEqualTo(was.darts());
        assertThat(is.edges()).isEqualTo(was.edges());
        assertThat(is.original()).contains(was.outline());
        assertThat(after.moved()).hasSize(1);
    }

    @Test
    void waistPinchThroughTheSideSeamStopsAtTheDart() throws Refusal {
        Pattern before = pattern(List.of(WAIST, HIP), curvedSkirt("front"), curvedSkirt("back"));
        Pattern after = SeamChange.at("waist", -15).keeping("hip").apply(before).pattern();
        assertThat(girth(after, "waist") - girth(before, "waist")).isCloseTo(-15, within(1e-6));
        assertThat(girth(after, "hip")).isCloseTo(girth(before, "hip"), within(1e-9));
        Piece was = before.pieces().get(0);
        Piece is = after.pieces().get(0);
        assertThat(is.darts()).isEqualTo(was.darts());
        assertThat(is.edge("waist").orElseThrow().to().x())
                .isLessThan(was.edge("waist").orElseThrow().to().x() - 3);
        assertThat(is.outline().segments()).contains(was.outline().segments().get(2));
    }

    @Test
    void thighSpreadOnATwoSpannedShapeChangesTheMeasuredLegOnly() throws Refusal {
        List<Point> corners = List.of(in(0, 0), in(20, 0), in(21, 30), in(12, 30), in(10, 10), in(8, 30), in(-1, 30));
        Piece legs = polygon(
                        "legs",
                        corners,
                        "waist WAIST, right out SEAM, right hem HEM, right in SEAM, left in SEAM, left hem HEM, left out SEAM")
                .withLevels(List.of(LevelMark.through("thigh", in(14, 15))));
        Pattern before = pattern(List.of(Level.of("thigh", LevelKind.THIGH)), legs);
        Altered after = SeamChange.at("thigh", 24).apply(before);
        assertThat(girth(after.pattern(), "thigh") - girth(before, "thigh")).isCloseTo(24, within(1e-6));
        assertThat(after.moved()).hasSize(2);
        Outline was = legs.outline();
        for (int i : new int[] {0, 2, 4, 5, 6}) {
            assertThat(segmentsOf(after.pattern())).contains(was.segments().get(i));
        }
    }

    @Test
    void w18ThereAndBackAgainAndNothing() throws Refusal {
        Pattern before = pattern(List.of(WAIST, HIP), curvedSkirt("front"), curvedSkirt("back"));
        assertThat(SeamChange.at("hip", 0).apply(before).pattern()).isSameAs(before);
        for (Taper taper : Taper.values()) {
            SeamChange plus = SeamChange.at("hip", 31).withTaper(taper);
            Pattern back =
                    plus.withAmount(-31).apply(plus.apply(before).pattern()).pattern();
            Outline was = before.pieces().get(0).outline();
            for (Segment s : back.pieces().get(0).outline().segments()) {
                for (double t = 0; t <= 1; t += 0.125) {
                    assertThat(was.nearest(s.at(t)).distance()).isLessThan(1e-9);
                }
            }
        }
    }

    @Test
    void cuttingLinePieceGetsTheStitchedGirth() throws Refusal {
        Piece front =
                curvedSkirt("front").toBuilder().drawn(LineKind.CUTTING, 15).build();
        Pattern before = pattern(List.of(WAIST, HIP), front);
        Pattern after = SeamChange.at("hip", 24).apply(before).pattern();
        assertThat(girth(after, "hip") - girth(before, "hip")).isCloseTo(24, within(1e-6));
    }

    @Test
    void sharesAreKept() throws Refusal {
        Pattern before = straightSkirt();
        Pattern after = SeamChange.at("hip", 40)
                .withShares(
                        new Share(easewright.pattern.EdgeRef.of("front", "side"), 1),
                        new Share(easewright.pattern.EdgeRef.of("back", "side"), 3))
                .apply(before)
                .pattern();
        double front = Measures.width(after.pieces().get(0), HIP).orElseThrow().net() - 9.75 * INCH;
        double back = Measures.width(after.pieces().get(1), HIP).orElseThrow().net() - 9.75 * INCH;
        assertThat(front).isCloseTo(5, within(1e-9));
        assertThat(back).isCloseTo(15, within(1e-9));
    }

    @Test
    void refusals() {
        Pattern skirt = straightSkirt();
        assertThat(refusal(SeamChange.at("knee", 10), skirt).code()).isEqualTo("level-unknown");
        assertThat(refusal(SeamChange.at("hip", 10).onOneSide(), skirt).code()).isEqualTo("one-side-on-fold");
        assertThat(refusal(SeamChange.at("hip", 10).keeping("nowhere"), skirt).code())
                .isEqualTo("keep-unknown");
        assertThat(refusal(SeamChange.at("hip", 10).withShares(Share.of("front", "hem")), skirt)
                        .code())
                .isEqualTo("edge-not-at-level");
        assertThat(refusal(SeamChange.at("hip", 10).withShares(Share.of("front", "fold")), skirt)
                        .code())
                .isEqualTo("edge-protected");
        Refusal tooMuch = refusal(SeamChange.at("hip", -2000), skirt);
        assertThat(tooMuch.code()).isIn("outline-crosses-itself", "level-lost", "girth-not-met");
        assertThat(tooMuch.largest().orElseThrow()).isBetween(-39 * INCH, -38.9 * INCH);
    }

    /** From the level down the whole amount is kept, whichever way round and whichever way up the piece is drawn. */
    @Test
    void theHemIsFoundWhicheverWayThePieceIsDrawn() throws Refusal {
        Piece skirt = skirtHalf("front", 9, 9.75, 8, 22);
        Piece unnamed = skirt.withEdges(skirt.edges().stream()
                .map(e -> e.name().equals("hem") ? Edge.of("hem", EdgeRole.OTHER, e.from(), e.to()) : e)
                .toList());
        for (Piece piece : List.of(skirt, turnedOver(skirt), unnamed, reversed(skirt), reversed(unnamed))) {
            Pattern before = pattern(List.of(WAIST, HIP), piece);
            Piece after = SeamChange.at("hip", 40)
                    .carriedToHem()
                    .apply(before)
                    .pattern()
                    .pieces()
                    .get(0);
            assertThat(edge(after, "hem")).isCloseTo(9.75 * INCH + 20, within(1e-9));
            assertThat(edge(after, "waist")).isEqualTo(edge(piece, "waist"));
        }
    }

    /** The hem up, as on a sheet that is looked at from its other end. */
    private static Piece turnedOver(Piece piece) {
        Affine over = Affine.rotation(Math.PI, in(5, 5));
        return piece.withOutline(piece.outline().transformed(over))
                .withEdges(piece.edges().stream()
                        .map(e -> e.withEnds(over.apply(e.from()), over.apply(e.to())))
                        .toList())
                .withLevels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("hip", over.apply(in(1, 8)))));
    }

    /** A notch, both ends of an edge or a level may be named as the place where a change ends. */
    @Test
    void whatIsNamedIsKept() throws Refusal {
        Piece front = Cloths.straightSkirt("front").toBuilder()
                .notches(List.of(new Notch("mark", in(9.75, 12)), new Notch("lower", in(9.75, 16))))
                .build();
        Pattern before = pattern(List.of(WAIST, HIP, Level.of("low", LevelKind.OTHER)), front);
        double hem = 20;
        Point lower = in(9.75, 16);
        SeamChange change = SeamChange.at("hip", 2 * hem);
        assertThat(notch(change.keeping("lower"), before).at()).isEqualTo(lower);
        assertThat(notch(change.keeping("lower"), before, 0).at().x()).isGreaterThan(lower.x() + 5);
        assertThat(notch(change.keeping("hem"), before).at().x()).isGreaterThan(lower.x() + 5);
        assertThat(notch(change.keeping("waist", "low"), before).at().x()).isGreaterThan(lower.x() + 5);
        assertThat(edge(change.keeping("hem").apply(before).pattern().pieces().get(0), "hem"))
                .isEqualTo(edge(front, "hem"));
    }

    private static Notch notch(SeamChange change, Pattern before) throws Refusal {
        return notch(change, before, 1);
    }

    private static Notch notch(SeamChange change, Pattern before, int which) throws Refusal {
        return change.apply(before).pattern().pieces().get(0).notches().get(which);
    }

    /** A piece that is not cut in pairs may be changed on one side: the other keeps its line to the last bit. */
    @Test
    void oneSideOfAWholePieceAlone() throws Refusal {
        Piece whole = Cloths.square("whole", 20, EdgeRole.WAIST, EdgeRole.SEAM)
                .withLevels(List.of(LevelMark.through("hip", in(5, 8))));
        Pattern before = pattern(List.of(HIP), whole);
        SeamChange right =
                SeamChange.at("hip", 12).withShares(Share.of("whole", "right")).onOneSide();
        Piece after = right.apply(before).pattern().pieces().get(0);
        assertThat(after.outline().box().maxX()).isCloseTo(10 * INCH + 12, within(1e-9));
        assertThat(segmentsOf(right.apply(before).pattern()))
                .contains(whole.outline().segments().get(3));
        assertThat(refusal(
                                right,
                                pattern(
                                        List.of(HIP),
                                        whole.toBuilder().cut(2, false).build()))
                        .code())
                .isEqualTo("one-side-of-pair");
    }

    @Test
    void aProtectedSeamIsNotCarriedAlongEither() {
        Piece front = Cloths.straightSkirt("front");
        Piece held = front.withEdges(front.edges().stream()
                .map(e -> e.name().equals("side") ? e.withProtected(true) : e)
                .toList());
        for (String level : List.of("waist", "hip")) {
            Refusal refusal = refusal(SeamChange.at(level, 10).carriedToHem(), pattern(List.of(WAIST, HIP), held));
            assertThat(refusal.code()).isEqualTo("edge-protected");
            assertThat(refusal.values()).containsEntry("edge", "side");
        }
    }

    @Test
    void noteMakesTheSameChangeAgain() throws Refusal {
        SeamChange change = SeamChange.at("hip", 24.000000000000004)
                .withShares(new Share(easewright.pattern.EdgeRef.of("front", "side"), 1.5))
                .withTaper(Taper.STRAIGHT)
                .carriedToHem()
                .keeping("waist", "notch")
                .fixedAt(new Point(1e-7, 2))
                .onOneSide()
                .acceptingProtected();
        assertThat(Ways.from(change.note())).isEqualTo(change);
        assertThat(change.note().settings().values()).noneMatch(v -> v.matches(".*\\dE-?\\d.*"));
    }
}
