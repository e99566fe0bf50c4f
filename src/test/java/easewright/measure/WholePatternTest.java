package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Which pieces count where, what is found by name, and what is remarked on. */
class WholePatternTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Level BUST = Level.of("bust", LevelKind.BUST);
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final String LEGS = "0,0 200,0 220,300 120,300 100,120 80,300 -20,300";

    private static Pattern pattern(List<Level> levels, Piece... pieces) {
        return Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(levels);
    }

    private static Piece rectangle(String id, double width, LevelMark... marks) {
        Outline outline = Outline.polygon(
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, 200), new Point(0, 200)));
        return Piece.bare(id, outline).toBuilder()
                .edges(List.of(
                        Edge.of("top", EdgeRole.WAIST, new Point(0, 0), new Point(width, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(width, 0), new Point(width, 200)),
                        Edge.of("foot", EdgeRole.HEM, new Point(width, 200), new Point(0, 200))))
                .levels(List.of(marks))
                .build();
    }

    private static LevelMark at(Level level, double y) {
        return LevelMark.through(level.name(), new Point(10, y));
    }

    @Test
    void everythingIsFoundByItsName() {
        Pattern both = pattern(
                        List.of(BUST, HIP),
                        rectangle("front", 100, at(BUST, 20), at(HIP, 150)),
                        rectangle("back", 130, at(HIP, 150)))
                .withMates(List.of(
                        new Mate("side", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0),
                        new Mate(
                                "foot", List.of(EdgeRef.of("front", "foot")), List.of(EdgeRef.of("back", "foot")), 0)));
        GarmentMeasures measures = Measures.of(both);
        assertThat(measures.girth("bust").orElseThrow().finished()).isCloseTo(100, EXACT);
        assertThat(measures.girth("hip").orElseThrow().finished()).isCloseTo(230, EXACT);
        assertThat(measures.mate("foot").orElseThrow().drift()).isCloseTo(-30, EXACT);
        assertThat(measures.mate("side").orElseThrow().drift()).isCloseTo(0, EXACT);
        assertThat(measures.piece("back")
                        .orElseThrow()
                        .level("hip")
                        .orElseThrow()
                        .width())
                .isCloseTo(130, EXACT);
        assertThat(measures.piece("front")
                        .orElseThrow()
                        .level("hip")
                        .orElseThrow()
                        .level())
                .isEqualTo("hip");
        assertThat(measures.girth("waist")).isEmpty();
        assertThat(measures.findings()).isEmpty();
    }

    @Test
    void whatDoesNotCountIsMeasuredButNotAdded() {
        Pattern faced = pattern(
                List.of(HIP),
                rectangle("front", 100, at(HIP, 150)),
                rectangle("facing", 90, at(HIP, 150).notCounted()));
        GarmentMeasures measures = Measures.of(faced);
        assertThat(measures.girth("hip").orElseThrow().finished()).isCloseTo(100, EXACT);
        assertThat(measures.girth("hip").orElseThrow().parts())
                .extracting(LevelWidth::pieceId)
                .containsExactly("front");
        assertThat(measures.piece("facing")
                        .orElseThrow()
                        .level("hip")
                        .orElseThrow()
                        .width())
                .isCloseTo(90, EXACT);
    }

    @Test
    void levelsThatAreNotThere() {
        GarmentMeasures unmarked = Measures.of(pattern(List.of(BUST, HIP), rectangle("front", 100, at(HIP, 150))));
        assertThat(unmarked.findings()).extracting(Finding::code).containsExactly("level-without-piece");
        assertThat(unmarked.findings().get(0).values()).containsEntry("level", "bust");
        GarmentMeasures undeclared =
                Measures.of(pattern(List.of(HIP), rectangle("front", 100, at(BUST, 20), at(HIP, 150))));
        assertThat(undeclared.findings()).extracting(Finding::code).containsExactly("level-unknown");
        assertThat(undeclared.piece("front").orElseThrow().levels()).hasSize(1);
    }

    @Test
    void notReachedMattersMoreWhereThePieceCounts() {
        Piece counted = rectangle("front", 100, at(HIP, 300));
        Piece facing = rectangle("facing", 100, at(HIP, 300).notCounted());
        assertThat(Measures.of(counted, List.of(HIP)).findings())
                .extracting(Finding::severity)
                .containsExactly(Severity.FAULT);
        assertThat(Measures.of(facing, List.of(HIP)).findings())
                .extracting(Finding::severity)
                .containsExactly(Severity.CAUTION);
    }

    private static List<String> codes(String shape, Point through, LevelMark.Span span) {
        LevelMark mark =
                new LevelMark("hip", Optional.of(through), Optional.empty(), 0, true, 0, span, Optional.empty());
        Piece piece = Piece.bare("p", Sketch.outline(shape)).withLevels(List.of(mark));
        return Measures.of(piece, List.of(HIP)).findings().stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void aMarkBesideAllStretchesIsRemarkedOnWhereThereIsAChoice() {
        Point between = new Point(101, 210);
        assertThat(codes(LEGS, between, LevelMark.Span.NEAREST)).containsExactly("level-place-outside");
        assertThat(codes(LEGS, between, LevelMark.Span.ALL)).isEmpty();
        assertThat(codes(LEGS, new Point(30, 210), LevelMark.Span.NEAREST)).isEmpty();
        assertThat(codes(LEGS, new Point(400, 60), LevelMark.Span.NEAREST)).isEmpty();
    }

    @Test
    void aTurnedLevelRunsAslant() {
        LevelMark turned = new LevelMark(
                "hip",
                Optional.of(new Point(50, 100)),
                Optional.empty(),
                30,
                true,
                0,
                LevelMark.Span.NEAREST,
                Optional.empty());
        LevelWidth width = Measures.width(rectangle("p", 100, turned), HIP).orElseThrow();
        assertThat(width.width()).isCloseTo(100 / Math.cos(Math.toRadians(30)), EXACT);
        double rise = 50 * Math.tan(Math.toRadians(30));
        assertThat(width.spans()).hasSize(1);
        assertThat(width.spans().get(0).from().distance(new Point(0, 100 - rise)))
                .isLessThan(1e-9);
        assertThat(width.spans().get(0).to().distance(new Point(100, 100 + rise)))
                .isLessThan(1e-9);
    }

    @Test
    void overlapComesOffALevelAlongAnEdgeToo() {
        Piece piece = rectangle("p", 100, LevelMark.along("hip", "top").withOverlap(15));
        LevelWidth width = Measures.width(piece, HIP).orElseThrow();
        assertThat(width.width()).isCloseTo(100, EXACT);
        assertThat(width.net()).isCloseTo(85, EXACT);
    }

    @Test
    void otherLevelsMeanMeasuringAnew() {
        Pattern before = pattern(List.of(BUST), rectangle("front", 100, at(BUST, 20), at(HIP, 150)));
        GarmentMeasures measured = Measures.of(before);
        GarmentMeasures again = Measures.again(before.withLevels(List.of(HIP)), before, measured);
        assertThat(again.girth("hip").orElseThrow().finished()).isCloseTo(100, EXACT);
        assertThat(again.girth("bust")).isEmpty();
    }

    /** The seam runs over the place where the outline was begun to be drawn. */
    @Test
    void notchesAlongASeamThatRunsOverTheStart() {
        Outline outline = Sketch.outline("0,0 100,0 100,200 0,200");
        Piece piece = Piece.bare("p", outline).toBuilder()
                .edges(List.of(Edge.of("over", EdgeRole.SEAM, new Point(0, 150), new Point(40, 0))))
                .notches(List.of(
                        new Notch("before", new Point(0, 90)),
                        new Notch("after", new Point(25, 0)),
                        new Notch("begin", new Point(0, 150)),
                        new Notch("end", new Point(40, 0)),
                        new Notch("elsewhere", new Point(70, 0)),
                        new Notch("below", new Point(0, 180))))
                .build();
        Pattern pattern = pattern(List.of(), piece)
                .withMates(
                        List.of(new Mate("m", List.of(EdgeRef.of("p", "over")), List.of(EdgeRef.of("p", "over")), 0)));
        MateWalk walk = Measures.of(pattern).mate("m").orElseThrow();
        assertThat(walk.first()).isCloseTo(190, EXACT);
        assertThat(walk.notches()).extracting(NotchMeeting::notch).containsExactly("before", "after", "begin", "end");
        assertThat(walk.notches().get(0).first()).isCloseTo(60, EXACT);
        assertThat(walk.notches().get(1).first()).isCloseTo(175, EXACT);
        assertThat(walk.notches().get(2).first()).isCloseTo(0, EXACT);
        assertThat(walk.notches().get(3).first()).isCloseTo(190, EXACT);
    }

    /** Two seams of 200 drawn in opposite directions, two notches each: walked from the end at which they meet. */
    @Test
    void theSecondSeamIsWalkedFromTheEndThatMakesNotchesMeet() {
        for (boolean opposite : new boolean[] {true, false}) {
            Piece front = rectangle("front", 100).toBuilder()
                    .notches(List.of(new Notch("a", new Point(100, 30)), new Notch("b", new Point(100, 150))))
                    .build();
            Piece back = Piece.bare("back", Sketch.outline("0,0 100,0 100,200 0,200")).toBuilder()
                    .edges(List.of(
                            opposite
                                    ? Edge.of("side", EdgeRole.SEAM, new Point(0, 200), new Point(0, 0))
                                    : Edge.of("side", EdgeRole.SEAM, new Point(100, 0), new Point(100, 200))))
                    .notches(
                            opposite
                                    ? List.of(new Notch("a", new Point(0, 31)), new Notch("b", new Point(0, 151)))
                                    : List.of(new Notch("a", new Point(100, 31)), new Notch("b", new Point(100, 151))))
                    .build();
            Mate side = new Mate("side", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0);
            MateWalk walk = Measures.of(pattern(List.of(), front, back).withMates(List.of(side)))
                    .mate("side")
                    .orElseThrow();
            assertThat(walk.notches().get(0).second() - walk.notches().get(0).first())
                    .isCloseTo(1, EXACT);
            assertThat(walk.notches().get(1).second()).isCloseTo(151, EXACT);
        }
    }

    @Test
    void aNotchBesideTheSeamDoesNotBelongToIt() {
        Piece piece = rectangle("p", 100).toBuilder()
                .notches(List.of(new Notch("near", new Point(100.9, 50)), new Notch("far", new Point(101.1, 50))))
                .build();
        Pattern pattern = pattern(List.of(), piece)
                .withMates(
                        List.of(new Mate("m", List.of(EdgeRef.of("p", "side")), List.of(EdgeRef.of("p", "side")), 0)));
        assertThat(Measures.of(pattern).mate("m").orElseThrow().notches())
                .extracting(NotchMeeting::notch)
                .containsExactly("near");
    }

    /** A piece without an allowance of its own, but with one on its side; and a segment without length in the way. */
    @Test
    void allowanceOfAnEdgeOnly() {
        Piece plain = rectangle("p", 100, at(HIP, 150));
        Edge side = plain.edges().get(1);
        Piece piece = plain.toBuilder()
                .drawn(LineKind.CUTTING, 0)
                .edges(List.of(
                        new Edge(side.name(), side.role(), side.from(), side.to(), false, OptionalDouble.of(15))))
                .build();
        assertThat(Measures.width(piece, HIP).orElseThrow().net()).isCloseTo(85, EXACT);
        Piece doubled = piece.withOutline(Sketch.outline("0,0 100,0 100,0 100,200 0,200"));
        assertThat(Measures.width(doubled, HIP).orElseThrow().net()).isCloseTo(85, EXACT);
        Piece none = plain.toBuilder().drawn(LineKind.CUTTING, 0).build();
        assertThat(StitchOutline.of(none).outline()).isSameAs(none.outline());
    }
}
