package easewright.alter;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.refusal;
import static easewright.alter.Cloths.skirtHalf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What cannot be done is refused by name, and where less of it could be done, with how much of it. */
class LimitsTest {
    private static final Level MIDDLE = Level.of("middle", LevelKind.OTHER);

    /** Just less than the limit is done, so that the limit named is one that works. */
    private static void assertLimit(Alteration change, Pattern pattern, String code, double limit) throws Refusal {
        Refusal why = refusal(change, pattern);
        assertThat(why.code()).isEqualTo(code);
        double largest = why.largest().orElseThrow();
        assertThat(largest)
                .isCloseTo(limit, within(2e-3))
                .isEqualTo(why.values().get("largest"));
        change.withAmount(largest).apply(pattern);
    }

    private static Piece without(Piece piece, EdgeRole role) {
        return piece.withEdges(piece.edges().stream()
                .map(e -> e.role() == role ? Edge.of(e.name(), EdgeRole.OTHER, e.from(), e.to()) : e)
                .toList());
    }

    @Test
    void aLevelWithoutASeamHasNothingToMove() {
        Pattern tube = pattern(List.of(WAIST, HIP), without(skirtHalf("front", 9, 10, 8, 22), EdgeRole.SEAM));
        Refusal why = refusal(SeamChange.at("hip", 10), tube);
        assertThat(why.code()).isEqualTo("no-seam-at-level");
        assertThat(why.values()).containsEntry("level", "hip");
        assertThat(why.largest()).isEmpty();
    }

    /** With the waist unmarked there is nothing that could give way beside the side seam's top. */
    @Test
    void aSeamThatEndsBesideNothingCannotMoveItsEnd() {
        Piece skirt = skirtHalf("front", 9, 10, 8, 22);
        Piece bare = skirt.withEdges(List.of(skirt.edge("side").orElseThrow()))
                .withLevels(List.of(LevelMark.through("middle", in(1, 0.01))));
        Refusal why = refusal(SeamChange.at("middle", 10), pattern(List.of(MIDDLE), bare));
        assertThat(why.code()).isEqualTo("no-edge-beside");
        assertThat(why.values()).containsEntry("piece", "front").containsEntry("edge", "side");
    }

    /** A dart in the side between the level and the place to keep would be torn. */
    @Test
    void aChangeDoesNotRunOverADart() throws Refusal {
        Dart dart = new Dart("bust dart", in(10, 11), in(10, 12), in(6, 11.5), Optional.empty(), Optional.of("side"));
        Piece front = skirtHalf("front", 10, 10, 8, 22).toBuilder()
                .darts(List.of(dart))
                .build();
        Pattern before = pattern(List.of(WAIST, HIP), front);
        SeamChange change = SeamChange.at("hip", 10).keeping("waist", "hem");
        Refusal why = refusal(change, before);
        assertThat(why.code()).isEqualTo("change-crosses-dart");
        assertThat(why.values()).containsEntry("dart", "bust dart").containsEntry("edge", "side");
        Piece after = SeamChange.at("hip", 10).apply(before).pattern().pieces().get(0);
        assertThat(after.darts()).isEqualTo(front.darts());
    }

    /** Pinched past the dart's point the point would hang in the air: the point lies 1 in within the side. */
    @Test
    void aPinchStopsShortOfADartsPoint() throws Refusal {
        Dart dart = new Dart("dart", in(6, 0), in(7, 0), in(9, 8), Optional.empty(), Optional.of("waist"));
        Piece front = skirtHalf("front", 10, 10, 8, 22).toBuilder()
                .darts(List.of(dart))
                .build();
        SeamChange pinch = SeamChange.at("hip", -3 * INCH).withTaper(Taper.STRAIGHT);
        assertLimit(pinch, pattern(List.of(HIP), front), "dart-point-left-out", -2 * INCH);
    }

    /** Half the girth is cloth; more than all of it cannot be pinched away. */
    @Test
    void aPinchStopsShortOfTheFold() throws Refusal {
        Pattern before = pattern(List.of(HIP), skirtHalf("front", 10, 10, 8, 22));
        SeamChange pinch = SeamChange.at("hip", -25 * INCH).withTaper(Taper.STRAIGHT);
        assertLimit(pinch, before, "girth-not-met", -20 * INCH);
    }

    /** The part beyond the slash is 5 in wide: no more than that can be folded out of it. */
    @Test
    void aTuckIsNoWiderThanThePartItIsTakenFrom() throws Refusal {
        Pattern before = pattern(List.of(), Cloths.square("cloth", 10, EdgeRole.SEAM, EdgeRole.SEAM));
        ParallelSlash through = new ParallelSlash("cloth", in(5, 0), in(5, 10), -8 * INCH, in(10, 5), false);
        assertLimit(through, before, "tuck-too-wide", -5 * INCH);
        // The turning leg swept from the corner at the hem to the one at the right edge's foot: a chord of
        // 2·10·sin(θ/2).
        HingedSlash hinged = new HingedSlash("cloth", in(5, 0), in(5, 10), -25 * INCH, in(10, 5), false);
        assertThat(refusal(hinged, before).code()).isEqualTo("gap-too-wide");
        HingedSlash opened = new HingedSlash("cloth", in(5, 0), in(5, 10), 25 * INCH, in(10, 5), false);
        assertThat(refusal(opened, before).largest().orElseThrow()).isBetween(10 * INCH, 20 * INCH);
    }

    /** From 2 in below the hip there are 12 in down to the hem. */
    @Test
    void noMoreIsTakenOutOfTheLengthThanLiesBelow() throws Refusal {
        Pattern before = pattern(List.of(HIP), skirtHalf("front", 10, 10, 8, 22));
        assertLimit(Lengthen.below("hip", 2 * INCH, -20 * INCH), before, "tuck-too-wide", -12 * INCH);
    }

    /** The centre moved in as far as the side: half the girth at the hip, twice for the fold. */
    @Test
    void theCentreStopsAtTheSide() throws Refusal {
        Pattern before = pattern(List.of(HIP), skirtHalf("front", 10, 10, 8, 22));
        CentreChange in = CentreChange.parallel("hip", -30 * INCH, EdgeRef.of("front", "fold"))
                .acceptingProtected();
        assertLimit(in, before, "girth-not-met", -20 * INCH);
    }

    @Test
    void aSeamTooShortToSlash() {
        Piece strip = Piece.bare(
                        "strip",
                        Outline.polygon(
                                List.of(new Point(0, 0), new Point(11.9, 0), new Point(11.9, 200), new Point(0, 200))))
                .toBuilder()
                .edges(List.of(Edge.of("top", EdgeRole.WAIST, new Point(0, 0), new Point(11.9, 0))))
                .build();
        Refusal why = refusal(EdgeLength.slashed(EdgeRef.of("strip", "top"), 3), pattern(List.of(), strip));
        assertThat(why.code()).isEqualTo("edge-too-short");
        assertThat(why.values()).containsEntry("edge", "top");
    }

    /** Straight seams fixed at both ends, their shares given: a bow that gave back the drift would bend one to and fro. */
    @Test
    void aSeamIsNotBentToAndFroToEvenIt() {
        Pattern before = pattern(List.of(HIP), skirtHalf("front", 8, 9.5, 8, 22), skirtHalf("back", 8.75, 9.5, 8, 22))
                .withMates(List.of(new Mate(
                        "sides", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0)));
        SeamChange change = SeamChange.at("hip", 2 * INCH)
                .withShares(Share.of("front", "side"), new Share(EdgeRef.of("back", "side"), 1.01))
                .evened();
        Refusal why = refusal(change, before);
        assertThat(why.code()).isEqualTo("even-not-possible");
        assertThat(why.largest().orElseThrow()).isBetween(0.0, 2 * INCH);
        assertThat(why.values()).containsEntry("mate", "sides");
        assertThat(Math.abs((Double) why.values().get("drift.signed"))).isGreaterThan(0.1);
        assertThat(why.largest().orElseThrow()).isBetween(0.0, INCH);
    }

    private static Piece darted(Point one, Point two, Point tip) {
        return skirtHalf("front", 10, 10, 8, 22).toBuilder()
                .darts(List.of(new Dart("dart", one, two, tip, Optional.empty(), Optional.of("waist"))))
                .build();
    }

    @Test
    void dartsThatCannotHelp() {
        Pattern high = pattern(List.of(WAIST, HIP), darted(in(4, 0), in(5, 0), in(4.5, 4)));
        Refusal below = refusal(DartIntake.at("hip", 5, DartShare.of("front", "dart")), high);
        assertThat(below.code()).isEqualTo("dart-not-at-level");
        assertThat(below.values()).containsEntry("dart", "dart").containsEntry("level", "hip");
        assertThat(refusal(DartIntake.at("hip", 5), high).code()).isEqualTo("no-dart-at-level");
        Piece uncounted = high.pieces()
                .get(0)
                .withLevels(List.of(LevelMark.along("waist", "waist").notCounted()));
        assertThat(refusal(DartIntake.at("waist", 5, DartShare.of("front", "dart")), pattern(List.of(WAIST), uncounted))
                        .code())
                .isEqualTo("piece-not-counted");
        Pattern off = pattern(List.of(WAIST), darted(in(4, 0.1), in(5, 0.1), in(4.5, 4)));
        Refusal beside = refusal(DartIntake.at("waist", 5), off);
        assertThat(beside.code()).isEqualTo("dart-off-outline");
        assertThat(beside.values()).containsEntry("dart", "dart");
        Pattern tube = pattern(List.of(WAIST), without(high.pieces().get(0), EdgeRole.SEAM));
        Refusal alone = refusal(DartToSeam.at("waist", 5), tube);
        assertThat(alone.code()).isEqualTo("no-seam-beside-dart");
        assertThat(alone.values()).containsEntry("piece", "front").containsEntry("level", "waist");
        // A point nearly level with the mouth: sliding it along the seam cannot keep the difference of its legs.
        Pattern lying = pattern(List.of(WAIST), darted(in(4, 0), in(5, 0), in(0.2, 0.4)));
        assertThat(refusal(DartIntake.at("waist", 5), lying).code()).isEqualTo("dart-legs-lost");
    }

    /** The waist is protected: its dart is taken in only if that is agreed to. */
    @Test
    void aDartOnAProtectedEdge() throws Refusal {
        Piece piece = darted(in(4, 0), in(5, 0), in(4.5, 4));
        Piece held = piece.withEdges(piece.edges().stream()
                .map(e -> e.name().equals("waist") ? e.withProtected(true) : e)
                .toList());
        Pattern before = pattern(List.of(WAIST), held);
        Refusal why = refusal(DartIntake.at("waist", 5), before);
        assertThat(why.code()).isEqualTo("edge-protected");
        assertThat(why.values()).containsEntry("edge", "waist");
        Altered agreed = new DartIntake("waist", 5, List.of(), true).apply(before);
        assertThat(Cloths.girth(agreed.pattern(), "waist") - Cloths.girth(before, "waist"))
                .isCloseTo(5, within(1e-6));
    }
}
