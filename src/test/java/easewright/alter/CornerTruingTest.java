package easewright.alter;

import static easewright.alter.Panels.edited;
import static easewright.alter.Panels.kept;
import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.sewn;
import static easewright.alter.Panels.slanted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Corners at folds become square, lines across seams straight, and nothing else moves. */
class CornerTruingTest {
    static final Trued WAIST = Trued.square(EdgeRef.of("front", "waist"), false);

    private static final Trued HEM = Trued.square(EdgeRef.of("front", "hem"), true);

    static Pattern pattern(Piece piece) {
        return Cloths.pattern(List.of(), piece);
    }

    /** The angle of an edge at the fold or side, as it is drawn, degrees. */
    static double angle(Piece piece, String edge, String guide) {
        Edge one = piece.edge(edge).orElseThrow();
        Edge other = piece.edge(guide).orElseThrow();
        boolean atEnd = other.to().equals(one.from());
        SewnPiece sewn = new SewnPiece(piece, List.of());
        return Math.toDegrees(SewnCorner.of(sewn, other, atEnd).orElseThrow().angle());
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 90, 135, 200, 300})
    void angleIsTakenThroughTheCloth(double degrees) {
        SewnPiece panel = new SewnPiece(panel("front", 600), List.of());
        Edge side = panel.piece().edge("side").orElseThrow();
        for (boolean atEnd : new boolean[] {false, true}) {
            SewnCorner corner = SewnCorner.of(panel, side, atEnd).orElseThrow();
            assertThat(corner.edge().name()).isEqualTo(atEnd ? "hem" : "waist");
            assertThat(Math.toDegrees(corner.angle())).isCloseTo(90, within(1e-9));
            // From the side into the cloth is clockwise at its start, which lies above, and anticlockwise at its end.
            double turn = Math.toRadians(atEnd ? -degrees : degrees);
            Point into = corner.alongGuide().turned(turn);
            assertThat(Math.toDegrees(corner.through(corner.alongGuide(), into)))
                    .isCloseTo(degrees, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"87", "93", "80", "105"})
    void cornersAtTheFoldBecomeSquareAndTheRestStays(double angle) throws Refusal {
        for (boolean atHem : new boolean[] {false, true}) {
            Piece drawn = atHem ? slanted("front", 600, 90, angle) : slanted("front", 600, angle, 90);
            Piece darted = drawn.toBuilder()
                    .notches(List.of(new Notch("n", new Point(200, 300))))
                    .build();
            for (Piece before : List.of(drawn, darted, Cloths.reversed(drawn))) {
                boolean turned = before.outline().signedArea() * drawn.outline().signedArea() < 0;
                String edge = atHem ? "hem" : "waist";
                Trued truing = Trued.square(EdgeRef.of("front", edge), atHem != turned);
                Altered done = truing.apply(pattern(before));
                Piece after = done.pattern().pieces().get(0);
                assertThat(angle(after, edge, "fold")).isCloseTo(90, within(1e-6));
                assertThat(after.edges()).isEqualTo(before.edges());
                assertThat(after.notches()).isEqualTo(before.notches());
                assertRestIsTheSame(before, after, Set.of(edge));
                assertBeyondStays(before, after, 60, 0);
                assertThat(done.moved()).isNotEmpty().allSatisfy(m -> {
                    assertThat(m.pieceId()).isEqualTo("front");
                    assertThat(after.outline()
                                    .nearest(m.after().pointAtLength(m.after().length() / 2))
                                    .distance())
                            .isLessThan(1e-9);
                    assertThat(before.outline()
                                    .nearest(m.before().pointAtLength(m.before().length() / 2))
                                    .distance())
                            .isLessThan(1e-9);
                });
            }
        }
    }

    static void assertRestIsTheSame(Piece before, Piece after, Set<String> redrawn) {
        for (Edge edge : before.edges()) {
            if (!redrawn.contains(edge.name())) {
                for (Segment s : before.outline().segments()) {
                    if (s.start().equals(edge.from())) {
                        assertThat(after.outline().segments()).as(edge.name()).anyMatch(a -> a == s);
                    }
                }
            }
        }
    }

    /** What lies farther than so from the fold, and lower than so from the waist, is as it was. */
    private static void assertBeyondStays(Piece before, Piece after, double aside, double below) {
        for (Segment s : after.outline().segments()) {
            for (double t = 0; t < 1; t += 0.05) {
                Point p = s.at(t);
                if (p.x() > aside + 1 || below > 0 && p.y() > below) {
                    assertThat(before.outline().nearest(p).distance())
                            .as("%s", p)
                            .isLessThan(1e-9);
                }
            }
        }
    }

    /** A waist that is measured keeps its length, with the corner moved along the fold where the bend is not short enough. */
    @ParameterizedTest
    @CsvSource({"88", "93", "80", "75", "107"})
    void measuredWaistKeepsItsLength(double angle) throws Refusal {
        Piece before = slanted("front", 600, angle, 90).withLevels(List.of(LevelMark.along("waist", "waist")));
        Pattern pattern = Cloths.pattern(List.of(Cloths.WAIST), before);
        Proposal proposal = only(pattern, "corner-not-square");
        Piece after = proposal.apply(pattern).pattern().pieces().get(0);
        assertThat(angle(after, "waist", "fold")).isCloseTo(90, within(1e-4));
        assertThat(Cloths.sewn(after, "waist")).isCloseTo(Cloths.sewn(before, "waist"), within(0.0025));
        assertBeyondStays(before, after, 60, 0);
        boolean foldMoved = !after.edge("fold").equals(before.edge("fold"));
        assertThat(proposal.protectedEdges()).isEqualTo(foldMoved ? List.of("front/fold") : List.of());
        assertThat(foldMoved).isEqualTo(Math.abs(angle - 90) > 9);
        if (foldMoved) {
            Refusal refusal = Cloths.refusal(WAIST, pattern);
            assertThat(refusal.code()).isEqualTo("edge-protected");
            assertThat(refusal.values()).containsEntry("edge", "fold").containsEntry("piece", "front");
            assertThat(after.edge("fold").orElseThrow().to().x())
                    .as("along the fold")
                    .isEqualTo(0.0);
            assertThat(Math.abs(after.edge("fold").orElseThrow().to().y())).isBetween(0.01, 2.0);
        } else {
            assertRestIsTheSame(before, after, Set.of("waist"));
        }
    }

    @Test
    void protectedWaistIsTreatedLikeAMeasuredOne() throws Refusal {
        Piece before = kept(slanted("front", 600, 78, 90), "waist");
        Piece after = WAIST.acceptingProtected()
                .apply(pattern(before))
                .pattern()
                .pieces()
                .get(0);
        assertThat(Cloths.sewn(after, "waist")).isCloseTo(Cloths.sewn(before, "waist"), within(1e-3));
        Piece plain = slanted("front", 600, 78, 90);
        Piece free = WAIST.apply(pattern(plain)).pattern().pieces().get(0);
        assertThat(free.edge("fold")).isEqualTo(plain.edge("fold"));
        assertThat(Math.abs(Cloths.sewn(free, "waist") - Cloths.sewn(plain, "waist")))
                .as("nothing asks for its length")
                .isGreaterThan(0.01);
    }

    /** What became longer is told; as the same for cutting, or with a caution where it is much and protected. */
    @Test
    void lengthsThatChangeAreTold() throws Refusal {
        Piece plain = slanted("front", 600, 78, 90);
        Altered done = WAIST.apply(pattern(plain));
        double by = Cloths.sewn(done.pattern().pieces().get(0), "waist") - Cloths.sewn(plain, "waist");
        assertThat(done.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("trued-length-little");
            assertThat(f.severity()).isEqualTo(Severity.NOTE);
            assertThat(f.piece()).isEqualTo("front");
            assertThat(f.values()).containsEntry("edge", "waist");
            assertThat((Double) f.values().get("by.signed")).isCloseTo(by, within(1e-9));
        });
        Piece steep = kept(slanted("front", 600, 75, 90), "waist");
        Altered slid = WAIST.acceptingProtected().apply(pattern(steep));
        List<Finding> cautions = slid.findings().stream()
                .filter(f -> f.values().containsValue("fold"))
                .toList();
        assertThat(cautions).extracting(Finding::code).containsExactly("trued-length-little");
        // No sample is changed so much by a truing; what would be is told as something to be walked.
        Piece higher = kept(slanted("front", 600, 88, 90), "waist");
        assertThat(new TruingPromise(pattern(higher), pattern(steep)).consequences())
                .filteredOn(f -> f.values().containsValue("waist"))
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo("trued-length"))
                .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    }

    @Test
    void cornersFarFromSquareAreTooSharp() {
        Piece sharp = slanted("front", 600, 10, 90);
        Refusal refusal = Cloths.refusal(WAIST, pattern(sharp));
        assertThat(refusal.code()).isEqualTo("corner-too-sharp");
        assertThat(refusal.values()).containsEntry("piece", "front").containsEntry("edge", "waist");
    }

    /** Drawn by the cutting line it is the stitching line that becomes square. */
    @ParameterizedTest
    @CsvSource({"87", "94"})
    void onTheCuttingLineTheSewnCornerBecomesSquare(double angle) throws Refusal {
        Piece drawn = slanted("front", 600, angle, 90).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .build();
        Pattern before = pattern(drawn);
        Proposal proposal = only(before, "corner-not-square");
        assertThat((Double) proposal.finding().values().get("y"))
                .as("told of the sewn corner")
                .isCloseTo(10 / Math.sin(Math.toRadians(angle)), within(1e-6));
        Pattern after = proposal.apply(before).pattern();
        Piece sewn = SewnCopy.of(after, Measures.of(after)).pieces().get(0);
        assertThat(angle(sewn, "waist", "fold")).isCloseTo(90, within(0.05));
        Piece was = SewnCopy.of(before, Measures.of(before)).pieces().get(0);
        for (Segment s : sewn.outline().segments()) {
            if (s.at(0.5).x() > 65) {
                assertThat(was.outline().nearest(s.at(0.5)).distance()).isLessThan(0.004);
            }
        }
        assertThat(HEM.apply(before).pattern().pieces().get(0).outline())
                .as("square already")
                .isEqualTo(drawn.outline());
    }

    @Test
    void sewnCopyIsOfThePiecesThatAreMeant() {
        Piece cut = panel("front", 600).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .notches(List.of(new Notch("n", new Point(200, 300))))
                .darts(List.of(Panels.DART))
                .build();
        Piece other = cut.toBuilder().id("b").name("The back").build();
        Piece stitched = panel("sleeve", 600);
        Pattern pattern = Cloths.pattern(List.of(), cut, other, stitched);
        for (Set<String> meant : List.of(Set.of("front"), Set.of("b"), Set.of("The back"), Set.of("sleeve"))) {
            Pattern copy = SewnCopy.of(pattern, Measures.of(pattern), meant);
            assertThat(copy.pieces().get(0) != cut).isEqualTo(meant.contains("front"));
            assertThat(copy.pieces().get(1) != other).isEqualTo(meant.contains("b") || meant.contains("The back"));
            assertThat(copy.pieces().get(2)).isSameAs(stitched);
        }
        Piece sewn = SewnCopy.of(pattern, Measures.of(pattern)).pieces().get(0);
        assertThat(sewn.drawn()).isEqualTo(LineKind.STITCHING);
        assertThat(Math.abs(sewn.outline().signedArea())).isCloseTo(190 * 580, within(1e-6));
        assertThat(sewn.notches().get(0).at().distance(new Point(190, 300))).isLessThan(1e-9);
        assertThat(sewn.edge("side").orElseThrow().from().distance(new Point(190, 10)))
                .isLessThan(1e-9);
        assertThat(sewn.darts().get(0).mouth1().distance(new Point(90 + 10 / 9.0, 10)))
                .isLessThan(1e-6);
        assertThat(sewn.darts().get(0).mouth2().distance(new Point(110 - 10 / 9.0, 10)))
                .isLessThan(1e-6);
        Pattern all = Cloths.pattern(List.of(), stitched);
        assertThat(SewnCopy.of(all, Measures.of(all))).isSameAs(all);
    }

    @Test
    void edgesOfOtherRolesMeetNoMiddle() {
        Piece slanted = slanted("front", 600, 85, 90);
        Piece opening = edited(
                slanted, "fold", e -> new Edge("fold", EdgeRole.OPENING, e.from(), e.to(), false, e.allowance()));
        assertThat(Cloths.refusal(WAIST, pattern(opening)).code()).isEqualTo("corner-unknown");
    }
}
