package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.CentreChange;
import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ChecksTest extends HalfOfSkirt {
    @Test
    void soundPatternHasNothingButTheUnknownBody() {
        assertThat(codes(pattern(0, half("front", 0), half("back", 0)))).containsExactly("body-missing");
    }

    /** Only side seams lead a level on, and who ticks a facing off has said that it does not count. */
    @Test
    void aGirthThatLeavesOutAPieceIsNotTakenForWhole() {
        Piece bare = half("back", 0).withLevels(List.of());
        assertThat(Checks.of(
                        pattern(0, half("front", 0), bare), Measures.of(pattern(0, half("front", 0), bare)), TABLES))
                .filteredOn(f -> f.code().equals("level-left-out"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.piece()).isEqualTo("back");
                    assertThat(f.values()).containsEntry("level", "hip").containsEntry("other", "front");
                });
        Piece facing = half("back", 0)
                .withLevels(List.of(LevelMark.through("hip", new Point(50, 200)).notCounted()));
        assertThat(codes(pattern(0, half("front", 0), facing))).doesNotContain("level-left-out");
        assertThat(codes(pattern(0, half("front", 0), bare).withMates(List.of())))
                .doesNotContain("level-left-out");
        List<Edge> armholes = bare.edges().stream()
                .map(e -> e.name().equals("side") ? Edge.of("side", EdgeRole.ARMHOLE, e.from(), e.to()) : e)
                .toList();
        assertThat(codes(pattern(
                        0, half("front", 0), bare.toBuilder().edges(armholes).build())))
                .doesNotContain("level-left-out");
    }

    @Test
    void aPieceThatHasTheLevelInAnotherSizeIsMissed() {
        List<Piece> nest = new ArrayList<>();
        for (String size : List.of("10", "12", "14")) {
            for (String name : List.of("front", "back")) {
                Piece piece = half(name + " " + size, 0).toBuilder()
                        .size(Optional.of(size))
                        .build();
                boolean without = size.equals("14") || name.equals("back") && size.equals("12");
                nest.add(without ? piece.withLevels(List.of()) : piece);
            }
        }
        Pattern p = pattern(0, nest.toArray(Piece[]::new)).withMates(List.of());
        // Of size 14 no girth is shown at all.
        assertThat(Checks.of(p, Measures.of(p), TABLES))
                .filteredOn(f -> f.code().startsWith("level-left-out"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo("level-left-out-in-size");
                    assertThat(f.piece()).isEqualTo("back 12");
                    assertThat(f.values()).containsEntry("level", "hip (12)").containsEntry("other", "back 10");
                });
    }

    @Test
    void unprovedScaleIsSaid() {
        Pattern p = pattern(0, half("front", 0)).withScale(new Scale(1, 1, Scale.Proof.UNPROVED));
        assertThat(codes(p)).contains("scale-unproved");
    }

    /** docs/sources.md 3: ok to 1.5 mm, look to 3 mm, mismatch beyond. A side 400 long at slant s measures √(400² + s²). */
    @Test
    void matesAreJudgedByTheTradesTolerances() {
        assertThat(codes(pattern(0, half("front", 33), half("back", 0)))).doesNotContain("mate-drift");
        assertThat(codes(pattern(0, half("front", 40), half("back", 0)))).contains("mate-drift");
        assertThat(codes(pattern(0, half("front", 60), half("back", 0)))).contains("mate-mismatch");
        assertThat(codes(pattern(4.5, half("front", 60), half("back", 0)))).doesNotContain("mate-mismatch");
    }

    /** worked example W4: the same amount on seams of different slant. */
    @Test
    void changeThatLengthensMatesUnequallyIsSaid() throws Refusal {
        Pattern before = pattern(0, half("front", 60), half("back", 0));
        Pattern after = SeamChange.at("hip", 60).carriedToHem().apply(before).pattern();
        assertThat(codes(before, after)).contains("mate-drifted");
        assertThat(codes(after, before)).contains("mate-nearer").doesNotContain("mate-drifted");
        Pattern alike = pattern(0, half("front", 0), half("back", 0));
        Pattern both = SeamChange.at("hip", 60).carriedToHem().apply(alike).pattern();
        assertThat(codes(alike, both)).contains("mate-length-changed").doesNotContain("mate-drifted");
    }

    /** A seam that is off by less than the 1/16 in to which careful makers keep theirs (Threads 200) need not be trued. */
    @Test
    void aDriftNobodyWouldTrueIsNoTask() throws Refusal {
        Pattern before = pattern(0, half("front", 20), half("back", 0));
        Pattern after = SeamChange.at("hip", 20).carriedToHem().apply(before).pattern();
        assertThat(codes(before, after)).contains("mate-drifted-little").doesNotContain("mate-drifted");
    }

    @Test
    void protectedNeckThatWasAcceptedToMoveIsListed() throws Refusal {
        Pattern before = pattern(0, half("front", 0));
        CentreChange wide = CentreChange.parallel("hip", 20, EdgeRef.of("front", "fold"));
        Pattern after = wide.acceptingProtected().apply(before).pattern();
        List<Finding> findings = Checks.compare(before, Measures.of(before), after, Measures.of(after), TABLES);
        assertThat(findings).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo("protected-edge-changed");
            assertThat(f.values()).containsEntry("edge", "neck").containsEntry("longer.signed", 10.0);
        });
        assertThat(codes(before, SeamChange.at("hip", 20).apply(before).pattern()))
                .doesNotContain("protected-edge-changed");
        CentreChange little = CentreChange.parallel("hip", 2, EdgeRef.of("front", "fold"));
        assertThat(codes(before, little.acceptingProtected().apply(before).pattern()))
                .contains("protected-edge-changed-little")
                .doesNotContain("protected-edge-changed");
    }

    @Test
    void crossedOutlineIsAFault() {
        Piece bow = half("front", List.of(new Point(0, 0), new Point(200, 0), new Point(20, 400), new Point(180, 400)));
        assertThat(codes(pattern(0, bow))).contains("outline-meets-itself");
    }

    @Test
    void foldMustBeStraightMarkedAndOnTheGrain() {
        Piece lean = half("front", List.of(new Point(0, 0), new Point(200, 0), new Point(200, 400), new Point(12, 400)))
                .toBuilder()
                .grain(new Grain(new Point(60, 50), new Point(60, 350)))
                .build();
        assertThat(codes(pattern(0, lean))).contains("fold-off-grain").doesNotContain("fold-not-straight");
        Piece bent = half("front", 0).toBuilder()
                .outline(Outline.polygon(List.of(
                        new Point(0, 0), new Point(200, 0), new Point(200, 400), new Point(0, 400), new Point(5, 200))))
                .build();
        assertThat(codes(pattern(0, bent))).contains("fold-not-straight");
        Piece unmarked = half("front", 0);
        unmarked = unmarked.withEdges(unmarked.edges().subList(0, 3));
        assertThat(codes(pattern(0, unmarked))).contains("fold-edge-missing");
    }

    @Test
    void dartLegsAndDartPoint() {
        Dart uneven = new Dart(
                "d",
                new Point(200, 150),
                new Point(200, 170),
                new Point(120, 140),
                Optional.empty(),
                Optional.of("side"));
        Piece front = half("front", 0).toBuilder().darts(List.of(uneven)).build();
        assertThat(codes(pattern(0, front))).contains("dart-legs-unequal");
        Dart inside = new Dart(
                "d", new Point(90, 210), new Point(100, 210), new Point(193, 210), Optional.empty(), Optional.empty());
        Pattern before =
                pattern(0, half("front", 0).toBuilder().darts(List.of(inside)).build());
        // A seam change refuses to go so far; a narrower outline from elsewhere is still told.
        List<Point> narrow = List.of(new Point(0, 0), new Point(180, 0), new Point(180, 400), new Point(0, 400));
        Piece cutShort =
                half("front", narrow).toBuilder().darts(List.of(inside)).build();
        assertThat(codes(before, pattern(0, cutShort))).contains("dart-point-outside");
    }

    /** Front and back are 200 wide at the hip and on the fold: 800 round. */
    @Test
    void halfPiecesCountedOnceAreSaidInPlaceOfTooLittleWidth() {
        Piece once = half("front", 0).toBuilder().cut(1, false).build();
        Pattern whole = pattern(0, half("front", 0), half("back", 0)).withBody(hips(780));
        assertThat(codes(whole)).doesNotContain("girth-not-whole");
        Pattern halved = whole.withPieces(
                List.of(once, half("back", 0).toBuilder().cut(1, false).build()));
        assertThat(Once.of(Checks.of(halved, Measures.of(halved), TABLES)))
                .extracting(Finding::code)
                .contains("girth-not-whole")
                .doesNotContain("garment-smaller-than-body");
        assertThat(codes(whole.withBody(hips(1000))))
                .as("too tight, but all there")
                .contains("garment-smaller-than-body")
                .doesNotContain("girth-not-whole");
        assertThat(codes(halved.withCloth(Cloth.knit(100))))
                .as("a cloth that stretches to twice its width")
                .doesNotContain("girth-not-whole");
    }

    /** Said before anybody has measured a body. */
    @Test
    void halfPiecesCountedOnceAreSaidAtOnce() {
        Pattern whole = pattern(0, half("front", 0), half("back", 0));
        assertThat(codes(whole)).doesNotContain("halves-counted-once");
        Pattern halved = whole.withPieces(whole.pieces().stream()
                .map(p -> p.toBuilder().cut(1, false).build())
                .toList());
        assertThat(codes(halved)).contains("halves-counted-once");
        assertThat(codes(halved.withBody(hips(380)))).as("a body that it fits").doesNotContain("halves-counted-once");
        Pattern pairs = whole.withPieces(whole.pieces().stream()
                .map(p -> p.toBuilder().cut(2, false).build())
                .toList());
        assertThat(codes(pairs)).doesNotContain("halves-counted-once");
        // Shaped alike to both sides down to the hip, and longer at one of them: it goes round both.
        List<Point> aslant = List.of(
                new Point(-80, 0),
                new Point(80, 0),
                new Point(100, 120),
                new Point(105, 400),
                new Point(-105, 520),
                new Point(-105, 390),
                new Point(-100, 120));
        Piece aslantFront = Piece.bare("front", Outline.polygon(aslant)).toBuilder()
                .edges(List.of(Edge.of("hem", EdgeRole.HEM, aslant.get(3), aslant.get(4))))
                .levels(List.of(LevelMark.through("hip", new Point(50, 200))))
                .build();
        Pattern both = Pattern.bare(List.of(aslantFront), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(Level.of("hip", LevelKind.HIP)));
        assertThat(codes(both)).doesNotContain("halves-counted-once");
    }

    /** The girth is another one after it, but who drew and counted the pieces was told before. */
    @Test
    void noChangeOfShapeMakesAHalf() throws Refusal {
        Pattern halved = pattern(0, half("front", 0).toBuilder().cut(1, false).build());
        Pattern wider = SeamChange.at("hip", 20).carriedToHem().apply(halved).pattern();
        assertThat(codes(wider)).contains("halves-counted-once");
        assertThat(codes(halved, wider)).doesNotContain("halves-counted-once");
    }

    /** Taken for none, an allowance that was only forgotten is sewn on to every girth. */
    @Test
    void aCuttingLineWithoutAnAllowanceIsSaid() {
        Piece plain = half("front", 0);
        Piece cut = plain.toBuilder().drawn(LineKind.CUTTING, 0).build();
        assertThat(codes(pattern(0, plain))).doesNotContain("allowance-not-stated");
        assertThat(codes(pattern(0, cut))).contains("allowance-not-stated");
        assertThat(codes(
                        pattern(0, plain.toBuilder().drawn(LineKind.CUTTING, 10).build())))
                .doesNotContain("allowance-not-stated");
        Edge side = cut.edges().get(1);
        Edge stated =
                new Edge(side.name(), side.role(), side.from(), side.to(), side.isProtected(), OptionalDouble.of(12));
        assertThat(codes(pattern(0, cut.withEdges(List.of(stated)))))
                .as("stated for an edge")
                .doesNotContain("allowance-not-stated");
        assertThat(codes(pattern(0, plain), pattern(0, cut))).contains("allowance-not-stated");
    }

    private static Body hips(double girth) {
        return new Body("", List.of(new BodyMeasure("Hip girth", "hip", girth, "")));
    }

    @Test
    void pieceCutPastItsCentreLineIsAFault() {
        Pattern before = pattern(0, half("front", 0));
        Piece past = half("front", List.of(new Point(0, 0), new Point(200, 0), new Point(-30, 200), new Point(0, 400)));
        assertThat(codes(before, pattern(0, past))).contains("piece-past-centre");
    }
}
