package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Girths and seams of whole garments, on cutting and on stitching lines. */
class GarmentTest {
    private static final double INCH = 25.4;
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Scale TRUE_SCALE = new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE);
    private static final Level BUST = Level.of("bust", LevelKind.BUST);

    private static Piece rectangle(String id, double inches, double allowance, boolean fold) {
        double w = inches * INCH;
        Outline outline =
                Outline.polygon(List.of(new Point(0, 0), new Point(w, 0), new Point(w, 500), new Point(0, 500)));
        Edge centre = Edge.of("centre", fold ? EdgeRole.FOLD : EdgeRole.CENTRE, new Point(0, 500), new Point(0, 0));
        return Piece.bare(id, outline).toBuilder()
                .drawn(LineKind.CUTTING, allowance * INCH)
                .cut(fold ? 1 : 2, fold)
                .edges(List.of(
                        Edge.of("top", EdgeRole.WAIST, new Point(0, 0), new Point(w, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(w, 0), new Point(w, 500)),
                        centre))
                .levels(List.of(LevelMark.through("bust", new Point(30, 200))))
                .build();
    }

    private static double girth(Pattern pattern) {
        return Measures.of(pattern).girth("bust").orElseThrow().finished();
    }

    @Test
    void widthsAlongACuttingLineWithCurvesAreThoseOfTheStitchingLine() {
        // The cutting line is the parallel at 15 of a known stitching line: measuring must find that again.
        Outline stitch = Sketch.outline("0,0 (60,2 90,0) 120,-20 (150,60 170,120) 172,200 180,600 0,600");
        double[] out = new double[stitch.segments().size()];
        java.util.Arrays.fill(out, -15);
        Outline cut =
                easewright.topology.Allowance.of(stitch, out).orElseThrow().outline();
        Level hip = Level.of("hip", LevelKind.HIP);
        for (double y : new double[] {20, 100, 200, 350, 580}) {
            List<LevelMark> mark = List.of(LevelMark.through("hip", new Point(20, y)));
            Piece sewn = Piece.bare("a", stitch).withLevels(mark);
            Piece drawn = Piece.bare("a", cut).withLevels(mark).toBuilder()
                    .drawn(LineKind.CUTTING, 15)
                    .build();
            assertThat(Measures.width(drawn, hip).orElseThrow().net())
                    .isCloseTo(Measures.width(sewn, hip).orElseThrow().net(), within(1e-4));
        }
    }

    @Test
    void allowanceWiderThanThePieceIsAFault() {
        Piece piece = rectangle("a", 1, 2, false);
        PieceMeasures measures = Measures.of(piece, List.of(BUST));
        assertThat(measures.levels()).isEmpty();
        assertThat(measures.findings()).extracting("code").containsExactly("allowance-too-wide");
    }

    private static Piece skirt(String shape, boolean dartOnEdge) {
        return Piece.bare("skirt", Sketch.outline(shape)).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(0, 0), new Point(200, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(200, 0), new Point(200, 500))))
                .darts(List.of(new Dart(
                        "d",
                        new Point(80, 0),
                        new Point(104, 0),
                        new Point(92, 100),
                        Optional.empty(),
                        dartOnEdge ? Optional.of("waist") : Optional.empty())))
                .build();
    }

    @Test
    void dartMouthComesOffTheEdgeHoweverDrawn() {
        for (Piece piece : List.of(
                skirt("0,0 200,0 200,500 0,500", true),
                skirt("0,0 80,0 92,100 104,0 200,0 200,500 0,500", true),
                skirt("0,0 80,0 92,100 104,0 200,0 200,500 0,500", false))) {
            EdgeLength waist = Measures.of(piece, List.of()).edge("waist").orElseThrow();
            assertThat(waist.mm()).isCloseTo(176, EXACT);
            assertThat(waist.dartMm()).isCloseTo(24, EXACT);
            assertThat(Measures.of(piece, List.of()).edge("side").orElseThrow().mm())
                    .isCloseTo(500, EXACT);
        }
    }

    /** On the cutting line the mouth is wider than on the stitching line, which the legs cross further in. */
    @Test
    void dartMouthIsReadOnTheStitchingLine() {
        Piece piece = skirt("0,0 200,0 200,500 0,500", true).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .build();
        EdgeLength waist = Measures.of(piece, List.of()).edge("waist").orElseThrow();
        assertThat(waist.dartMm()).isCloseTo(24 * 0.9, EXACT);
        assertThat(waist.mm()).isCloseTo(180 - 24 * 0.9, EXACT);
    }

    @Test
    void dartLegsMarkedAsEdgesKeepTheirLength() {
        Piece cut = skirt("0,0 80,0 92,100 104,0 200,0 200,500 0,500", true);
        Piece piece = cut.withEdges(List.of(
                Edge.of("leg", EdgeRole.SEAM, new Point(80, 0), new Point(92, 100)),
                cut.edges().get(0)));
        PieceMeasures measures = Measures.of(piece, List.of());
        assertThat(measures.edge("leg").orElseThrow().mm()).isCloseTo(Math.hypot(12, 100), EXACT);
        assertThat(measures.edge("waist").orElseThrow().mm()).isCloseTo(176, EXACT);
    }

    @Test
    void dartBesideTheEdgeIsAFinding() {
        Piece piece = skirt("0,0 200,0 200,500 0,500", true);
        Dart high = new Dart(
                "d", new Point(80, 3), new Point(300, 3), new Point(92, 3), Optional.empty(), Optional.of("waist"));
        assertThat(Measures.of(piece.toBuilder().darts(List.of(high)).build(), List.of())
                        .findings())
                .extracting("code")
                .containsExactly("dart-off-edge");
    }

    /** Seam walking: mouths folded out, each edge taken its number of times, declared ease taken off. */
    @Test
    void matesAreWalked() {
        Piece skirt = skirt("0,0 200,0 200,500 0,500", true).toBuilder()
                .notches(List.of(new Notch("n", new Point(150, 0))))
                .build();
        Piece band = Piece.bare("band", Sketch.outline("0,0 346,0 346,40 0,40")).toBuilder()
                .edges(List.of(Edge.of("long", EdgeRole.WAIST, new Point(0, 0), new Point(346, 0))))
                .notches(List.of(new Notch("n", new Point(346 - 126, 0))))
                .build();
        Pattern pattern = Pattern.bare(List.of(skirt, band), TRUE_SCALE)
                .withMates(List.of(new Mate(
                        "waist seam",
                        List.of(new EdgeRef("skirt", "waist", 2)),
                        List.of(EdgeRef.of("band", "long")),
                        6)));
        MateWalk walk = Measures.of(pattern).mate("waist seam").orElseThrow();
        assertThat(walk.first()).isCloseTo(352, EXACT);
        assertThat(walk.second()).isCloseTo(346, EXACT);
        assertThat(walk.drift()).isCloseTo(0, EXACT);
        assertThat(walk.notches()).hasSize(1);
        assertThat(walk.notches().get(0).first()).as("150 less the mouth").isCloseTo(126, EXACT);
        assertThat(walk.notches().get(0).second()).isCloseTo(126, EXACT);
    }

    @Test
    void missingMateEdgeIsAFinding() {
        Piece skirt = skirt("0,0 200,0 200,500 0,500", true);
        Pattern pattern = Pattern.bare(List.of(skirt), TRUE_SCALE)
                .withMates(List.of(
                        new Mate("m", List.of(EdgeRef.of("skirt", "waist")), List.of(EdgeRef.of("skirt", "hem")), 0)));
        GarmentMeasures measures = Measures.of(pattern);
        assertThat(measures.mates()).isEmpty();
        assertThat(measures.findings()).extracting("code").containsExactly("mate-edge-missing");
    }

    @Test
    void unchangedPiecesAreNotMeasuredAgain() {
        Piece front = rectangle("front", 10, 0.5, true);
        Piece back = rectangle("back", 11, 0.5, false);
        Pattern before = Pattern.bare(List.of(front, back), TRUE_SCALE).withLevels(List.of(BUST));
        GarmentMeasures measured = Measures.of(before);
        Pattern after = before.withPiece(rectangle("back", 12, 0.5, false));
        GarmentMeasures again = Measures.again(after, before, measured);
        assertThat(again.piece("front").orElseThrow())
                .isSameAs(measured.piece("front").orElseThrow());
        assertThat(again.girth("bust").orElseThrow().finished()).isCloseTo(girth(after), EXACT);
    }
}
