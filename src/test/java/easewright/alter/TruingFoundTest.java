package easewright.alter;

import static easewright.alter.Panels.edited;
import static easewright.alter.Panels.kept;
import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.proposals;
import static easewright.alter.Panels.sewn;
import static easewright.alter.Panels.slanted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as untrue, from where on and up to where (docs/decisions/0013-truing.md), and what is told of it. */
class TruingFoundTest {
    @ParameterizedTest
    @CsvSource({"-0.9, 0", "0.9, 0", "1.1, 1", "-1.1, 1", "29.5, 1", "-29.5, 1", "30.5, 0", "-30.5, 0"})
    void joinedLinesBendFromOneDegreeToThirty(double degrees, int found) {
        Pattern pattern = TruingTest.skirt(90 - degrees / 2, 90 - degrees / 2, 90);
        assertThat(proposals(pattern, "joined-line-bends")).hasSize(found);
    }

    @Test
    void joinedLineIsToldWithItsPlaceAndWhatWouldBeRedrawn() {
        Pattern plain = TruingTest.skirt(86, 88, 90);
        Proposal proposal = only(plain, "joined-line-bends");
        assertThat(proposal.finding().piece()).isEqualTo("front");
        assertThat(proposal.finding().values())
                .containsEntry("mate", "side seam")
                .containsEntry("edge", "waist")
                .containsEntry("one", List.of("front"))
                .containsEntry("other", List.of("back"))
                .containsEntry("x", 200.0)
                .containsEntry("y", 0.0);
        assertThat(proposal.truing()).isEqualTo(Trued.join("side seam", false));
        assertThat(proposal.protectedEdges()).isEmpty();
        Piece back = kept(plain.pieces().get(1), "waist");
        Proposal asks = only(plain.withPiece(back), "joined-line-bends");
        assertThat(asks.protectedEdges()).containsExactly("back/waist");
        assertThat(asks.truing()).isEqualTo(Trued.join("side seam", false).acceptingProtected());
    }

    @ParameterizedTest
    @CsvSource({"90.9, 0", "89.1, 0", "91.1, 1", "88.9, 1", "109.5, 1", "70.5, 1", "110.5, 0", "69.5, 0"})
    void foldsAreLeftSquareWithinOneDegree(double angle, int found) {
        assertThat(proposals(Cloths.pattern(List.of(), slanted("front", 600, angle, 90)), "corner-not-square"))
                .hasSize(found);
        assertThat(proposals(Cloths.pattern(List.of(), slanted("front", 600, 90, angle)), "corner-not-square"))
                .hasSize(found);
    }

    @Test
    void cornerAtTheFoldIsToldWithItsPlace() {
        Proposal waist = only(Cloths.pattern(List.of(), slanted("front", 600, 87, 90)), "corner-not-square");
        assertThat(waist.finding().values())
                .containsEntry("edge", "waist")
                .containsEntry("guide", "fold")
                .containsEntry("x", 0.0)
                .containsEntry("y", 0.0);
        assertThat((Double) waist.finding().values().get("degrees.degrees")).isCloseTo(3, within(1e-9));
        assertThat(waist.truing()).isEqualTo(Trued.square(EdgeRef.of("front", "waist"), false));
        Proposal hem = only(Cloths.pattern(List.of(), kept(slanted("front", 600, 90, 94), "hem")), "corner-not-square");
        assertThat(hem.finding().values()).containsEntry("edge", "hem").containsEntry("y", 600.0);
        assertThat((Double) hem.finding().values().get("degrees.degrees")).isCloseTo(4, within(1e-9));
        assertThat(hem.truing().target()).isEqualTo(Map.of("edge", "front/hem", "end", "end"));
        assertThat(hem.protectedEdges()).contains("front/hem");
        assertThat(hem.truing().acceptProtected()).isTrue();
    }

    /** Only lines that both halves go on in, and only at a middle. */
    @Test
    void otherCornersAreNotLookedAt() {
        Piece slanted = slanted("front", 600, 85, 90);
        for (EdgeRole role : EdgeRole.values()) {
            boolean middle = role == EdgeRole.FOLD || role == EdgeRole.CENTRE;
            assertThat(proposals(as(slanted, "fold", role), "corner-not-square"))
                    .as("at %s", role)
                    .hasSize(middle ? 1 : 0);
            boolean goesOn = role == EdgeRole.WAIST || role == EdgeRole.NECK || role == EdgeRole.HEM;
            assertThat(proposals(as(slanted, "waist", role), "corner-not-square"))
                    .as("%s", role)
                    .hasSize(goesOn ? 1 : 0);
        }
    }

    private static Pattern as(Piece piece, String edge, EdgeRole role) {
        return Cloths.pattern(
                List.of(), edited(piece, edge, e -> new Edge(e.name(), role, e.from(), e.to(), false, e.allowance())));
    }

    /** What lies beside the ends of the seams tells which of them meet; where both ends look alike, the notches. */
    @Test
    void endsThatMeetAreKnown() {
        Piece front = slanted("front", 600, 87, 90);
        Piece back = panel("back", 600);
        for (Piece one : List.of(front, Cloths.reversed(front))) {
            for (Piece other : List.of(back, Cloths.reversed(back))) {
                Proposal found = only(sewn(one, other), "joined-line-bends");
                assertThat((Double) found.finding().values().get("degrees.degrees"))
                        .isCloseTo(3, within(1e-9));
                assertThat(found.truing()).isEqualTo(Trued.join("seam", one != front));
            }
        }
    }

    /** A sleeve is sewn to itself: it is told which of its edges meet there. */
    @Test
    void wherePiecesAreSewnToThemselvesTheEdgesAreNamed() {
        Piece sleeve = Cloths.polygon(
                        "sleeve",
                        List.of(new Point(0, 0), new Point(300, 0), new Point(270, 400), new Point(30, 400)),
                        "cap CAP, underarm front SEAM, hem HEM, underarm back SEAM")
                .withName("Sleeve");
        Pattern sewn = Cloths.pattern(List.of(), sleeve)
                .withMates(List.of(new Mate(
                        "sleeve seam",
                        List.of(EdgeRef.of("sleeve", "underarm front")),
                        List.of(EdgeRef.of("sleeve", "underarm back")),
                        0)));
        assertThat(proposals(sewn, "joined-line-bends"))
                .hasSize(2)
                .extracting(p -> Words.english(LengthUnit.CM).of(p.finding()))
                .allSatisfy(said ->
                        assertThat(said).contains("joins Sleeve underarm front to Sleeve underarm back, the line of"));
    }

    @Test
    void endsThatLookAlikeAreToldByTheNotches() {
        Piece front = hemmedTwice(slanted("front", 600, 87, 92));
        Piece back = hemmedTwice(panel("back", 600));
        assertThat(proposals(sewn(front, back), "joined-line-bends"))
                .as("nothing tells")
                .isEmpty();
        Piece one = Panels.notched(front, "n", 100);
        for (Piece other : List.of(
                Panels.notched(back, "n", 100),
                Panels.notched(back, "n", 500),
                Cloths.reversed(Panels.notched(back, "n", 100)))) {
            assertThat(proposals(sewn(one, other), "joined-line-bends")).hasSize(2);
        }
        Piece odd = edited(back, "hem", e -> new Edge("hem", EdgeRole.OTHER, e.from(), e.to(), false, e.allowance()));
        assertThat(proposals(sewn(one, odd), "joined-line-bends"))
                .as("what lies beside the ends does not fit")
                .isEmpty();
    }

    private static Piece hemmedTwice(Piece piece) {
        return edited(piece, "waist", e -> new Edge("waist", EdgeRole.HEM, e.from(), e.to(), false, e.allowance()));
    }

    @Test
    void seamsOfSeveralEdgesAreNotLookedAt() {
        Pattern pattern = sewn(slanted("front", 600, 87, 90), panel("back", 600));
        List<EdgeRef> front = List.of(EdgeRef.of("front", "side"));
        List<EdgeRef> two = List.of(EdgeRef.of("back", "side"), EdgeRef.of("back", "fold"));
        assertThat(proposals(pattern.withMates(List.of(new Mate("m", front, two, 0))), "joined-line-bends"))
                .isEmpty();
        assertThat(proposals(pattern.withMates(List.of(new Mate("m", two, front, 0))), "joined-line-bends"))
                .isEmpty();
    }

    /** Only what concerns the pieces asked for, by id or by name; a mate brings the other piece with it. */
    @Test
    void ofSomePiecesOnlyWhatConcernsThem() {
        Pattern pattern = sewn(slanted("front", 600, 87, 90), slanted("back", 600, 90, 93));
        Pattern more = pattern.withPieces(List.of(
                pattern.pieces().get(0).withName("The front"),
                pattern.pieces().get(1),
                slanted("pocket", 200, 85, 90)));
        for (int i = 0; i < 3; i++) {
            List<Proposal> found = Truing.proposals(
                    more, Measures.of(more), List.of(more.pieces().get(i)));
            assertThat(found.stream().map(Proposal::truing).toList())
                    .isEqualTo(
                            switch (i) {
                                case 0 ->
                                    List.of(
                                            Trued.join("seam", false),
                                            Trued.join("seam", true),
                                            Trued.square(EdgeRef.of("front", "waist"), false));
                                case 1 ->
                                    List.of(
                                            Trued.join("seam", false),
                                            Trued.join("seam", true),
                                            Trued.square(EdgeRef.of("back", "hem"), true));
                                default -> List.of(Trued.square(EdgeRef.of("pocket", "waist"), false));
                            });
        }
        assertThat(Truing.proposals(more)).hasSize(5);
    }

    @Test
    void findingsOfOtherChecksAreNotItsOwn() {
        Pattern pattern = sewn(slanted("front", 600, 87, 90), panel("back", 600));
        assertThat(Truing.proposals(pattern)).isNotEmpty().allMatch(p -> Truing.tells(p.finding()));
        assertThat(Truing.tells(Finding.of("something-else", Severity.NOTE, "")))
                .isFalse();
    }
}
