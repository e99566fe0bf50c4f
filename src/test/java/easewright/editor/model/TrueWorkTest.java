package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Truing;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TrueWorkTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void open() throws Exception {
        Sample bodice = Sample.all().stream()
                .filter(s -> s.id().equals("bodice"))
                .findFirst()
                .orElseThrow();
        // Drafted with an armhole, a cap and a hem that meet slanted seams level.
        SvgFile untrue = SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"));
        session.open(Opened.of(new OpenFile(untrue, Optional.empty(), bodice.fileName())));
    }

    @Test
    void eachPlaceSaysWhatItIsAndWhatPuttingItRightMoves() {
        TrueWork work = TrueWork.of(session.desk());
        assertThat(work.places()).hasSameSizeAs(Truing.proposals(session.desk().pattern()));
        assertThat(work.possible()).isPositive();
        assertThat(Truing.proposals(session.desk().pattern())).allMatch(p -> Truing.tells(p.finding()));
        for (TrueWork.Place place : work.places()) {
            assertThat(place.words() + place.brings()).isNotBlank().doesNotContain("editor.", "finding.", "{");
            Pointed pointed = place.pointed().orElseThrow();
            Point at = pointed.at().orElseThrow();
            double off = session.desk()
                    .pattern()
                    .piece(pointed.piece())
                    .orElseThrow()
                    .outline()
                    .nearest(at)
                    .distance();
            // The middle of a dart's mouth lies inside the seam.
            assertThat(off).isLessThan(40);
            assertThat(pointed.around().orElseThrow().width()).isGreaterThan(40);
        }
    }

    /** A waist that bends across the side seam is redrawn on both pieces; what of the side seam follows by less than can be seen is neither told nor drawn. */
    @Test
    void wordsAndDrawingNameTheSameEdgesAndPieces() throws Exception {
        session.open(OpenedSample.of("skirt"));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(30));
        session.keep();
        TrueWork.Place place = TrueWork.of(session.desk()).places().get(0);
        assertThat(place.words()).contains("Front", "Back", "waist");
        Pointed pointed = place.pointed().orElseThrow();
        Set<String> drawn = new TreeSet<>();
        for (Piece piece : session.desk().pattern().pieces()) {
            for (Edge edge : piece.edges()) {
                List<Segment> run = edge.on(piece.outline()).segments();
                boolean isDrawn = pointed.lines().stream()
                        .anyMatch(l -> run.stream()
                                .anyMatch(r -> r.at(r.nearest(l.at(0.5))).distance(l.at(0.5)) < 1));
                if (isDrawn) {
                    drawn.add(piece.name() + " " + edge.name());
                }
            }
            boolean ringed = pointed.places().stream()
                    .anyMatch(at -> piece.outline().nearest(at).distance() < 1);
            assertThat(ringed).as(piece.name()).isEqualTo(drawn.stream().anyMatch(d -> d.startsWith(piece.name())));
        }
        assertThat(drawn).containsExactly("Back waist", "Front waist");
        assertThat(place.brings()).contains("Redrawn: Back waist; Front waist.");
    }

    /** Of the line beside an edge only what is drawn otherwise is shown. */
    @Test
    void onlyTheChangedPartOfALineBesideIsDrawn() throws Exception {
        session.open(OpenedSample.of("bodice"));
        session.chooseLevel("bust");
        session.want(session.desk().wanted().orElseThrow().withAmount(60));
        session.keep();
        for (TrueWork.Place place : TrueWork.of(session.desk()).places()) {
            Pointed pointed = place.pointed().orElseThrow();
            Piece piece = session.desk().pattern().piece(pointed.piece()).orElseThrow();
            Edge side = piece.edge("side").orElseThrow();
            assertThat(place.words()).contains("Along edge");
            double farthest = pointed.lines().stream()
                    .mapToDouble(line -> side.on(piece.outline()).segments().stream()
                            .mapToDouble(r -> r.at(r.nearest(line.at(0.5))).distance(line.at(0.5)))
                            .min()
                            .orElseThrow())
                    .max()
                    .orElseThrow();
            assertThat(farthest).isLessThan(40);
        }
    }

    /** What a press redraws although it is protected stands beside the press, and not among what else it brings. */
    @Test
    void whatIsProtectedIsNamedBesideThePress() {
        TrueWork work = TrueWork.of(session.desk());
        assertThat(work.places())
                .filteredOn(p -> !p.redraws().isEmpty())
                .hasSize((int) work.redrawing())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.redraws()).startsWith("redraws what is protected: "))
                .anySatisfy(p -> assertThat(p.redraws()).contains("Front armhole and Back armhole"));
        assertThat(work.places()).extracting(TrueWork.Place::brings).noneMatch(b -> b.contains("protected"));
    }

    /** Among fractions of an inch nobody can read decimals off a tape. */
    @Test
    void inInchesItTellsNoMoveInDecimals() throws Exception {
        Session inches = new Session(LengthUnit.INCH, false);
        SvgFile untrue = SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"));
        inches.open(Opened.of(new OpenFile(untrue, Optional.empty(), "untrue.svg")));
        assertThat(TrueWork.of(inches.desk()).places())
                .extracting(TrueWork.Place::brings)
                .allSatisfy(said -> assertThat(said).doesNotContainPattern("moves by 0\\.\\d"))
                .allSatisfy(said -> assertThat(said).doesNotContain("1/64", "0.0"))
                .anySatisfy(said -> assertThat(said).contains("The line moves by less than 1/16 in."));
        assertThat(TrueWork.of(inches.desk()).places())
                .extracting(TrueWork.Place::words)
                .allSatisfy(said -> assertThat(said).doesNotContain("1/64", "0.0"));
    }

    /** Nobody need do anything about it, but whoever has trued finds what is left, by how much, and the way out. */
    @Test
    void whatIsStillUnequalByALittleIsListedWithItsWayOut() throws Exception {
        for (LengthUnit unit : List.of(LengthUnit.CM, LengthUnit.INCH)) {
            Session other = new Session(unit, false);
            other.open(OpenedSample.skirt());
            assertThat(TrueWork.of(other.desk()).still())
                    .as("nothing was changed")
                    .isEmpty();
            Pattern drawn = other.desk().pattern();
            other.edit(SeamChange.at("hip", 12)
                    .withShares(new Share(EdgeRef.of("skirt-front", "side"), 1))
                    .apply(drawn)
                    .pattern());
            double off = other.desk()
                    .reading()
                    .measures()
                    .mate("side seam")
                    .orElseThrow()
                    .drift();
            assertThat(Math.abs(off)).isBetween(0.5, 1.5);
            TrueWork work = TrueWork.of(other.desk());
            assertThat(work.offers()).isEmpty();
            assertThat(work.still()).hasSize(1);
            FollowUp still = work.still().get(0);
            String much = unit == LengthUnit.CM ? "0.1" : "1/";
            assertThat(still.words().replace('\u00a0', ' '))
                    .startsWith("Seam \u201cside seam\u201d is longer on Front, by " + much);
            assertThat(still.presses()).isNotEmpty();
            other.edit(still.presses().get(0).result());
            assertThat(other.desk()
                            .reading()
                            .measures()
                            .mate("side seam")
                            .orElseThrow()
                            .drift())
                    .isCloseTo(0, within(0.01));
            assertThat(TrueWork.of(other.desk()).still()).isEmpty();
        }
    }

    @Test
    void oneMadeTrueIsAChangeLikeAnyOtherAndLeavesTheList() {
        TrueWork work = TrueWork.of(session.desk());
        TrueWork.Place first = work.places().stream()
                .filter(p -> p.result().isPresent())
                .findFirst()
                .orElseThrow();
        session.edit(first.result().orElseThrow());
        assertThat(Course.of(session.desk()).lines()).hasSize(1);
        assertThat(Course.of(session.desk()).lines().get(0).words()).startsWith("Made true: ");
        assertThat(TrueWork.of(session.desk()).places())
                .extracting(TrueWork.Place::words)
                .doesNotContain(first.words());
        session.undo();
        assertThat(TrueWork.of(session.desk()).places())
                .extracting(TrueWork.Place::words)
                .contains(first.words());
    }

    @Test
    void allAtOnceAreAChangeEachAndOneStepBack() {
        long possible = TrueWork.of(session.desk()).possible();
        session.edit(TrueWork.all(session.desk().pattern(), List.of(), true));
        assertThat(Course.of(session.desk()).lines()).hasSize((int) possible);
        session.undo();
        assertThat(session.desk().pattern().changes()).isEmpty();
    }

    /** Whoever does not ask for what is protected to be redrawn keeps it, point for point. */
    @Test
    void allThatIsNotProtectedLeavesProtectedEdgesAlone() {
        Pattern before = session.desk().pattern();
        TrueWork work = TrueWork.of(session.desk());
        assertThat(work.redrawing()).isPositive().isLessThan(work.possible());
        Pattern made = TrueWork.all(before, List.of(), false);
        assertThat(made.changes()).hasSizeGreaterThanOrEqualTo((int) (work.possible() - work.redrawing()));
        for (Piece piece : before.pieces()) {
            Piece now = made.piece(piece.id()).orElseThrow();
            for (Edge edge : piece.edges()) {
                if (edge.isProtected()) {
                    assertThat(now.edge(edge.name()).orElseThrow().on(now.outline()))
                            .as(piece.name() + " " + edge.name())
                            .isEqualTo(edge.on(piece.outline()));
                }
            }
        }
    }

    @Test
    void nothingUntrueIsToldAgainInTheNotes() {
        long told = session.desk().reading().findings().stream()
                .filter(Truing::tells)
                .count();
        assertThat(told).isPositive().isEqualTo(Notes.untrue(session.desk()));
        assertThat(Notes.of(session.desk()))
                .extracting(Notes.Note::words)
                .noneMatch(w -> TrueWork.of(session.desk()).places().stream()
                        .anyMatch(p -> p.words().equals(w)));
    }

    @Test
    void aSeamThatNoLongerFitsIsToldOnceInTheNotes() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(Notes.of(session.desk()))
                .filteredOn(n -> n.words().contains("waistband"))
                .hasSize(1);
    }

    @Test
    void whatSeveralChangesAskForIsOfferedTogetherUntilItIsDone() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("waist");
        keep(12);
        session.chooseLevel("hip");
        keep(10);
        session.chooseLevel("waist");
        keep(8);
        assertThat(FollowUp.of(session.desk())).hasSize(1);
        double drift = drift("waistband");
        session.edit(FollowUp.of(session.desk()).get(0).presses().get(0).result());
        assertThat(drift - drift("waistband")).isCloseTo(20, within(1e-6));
        assertThat(FollowUp.of(session.desk())).isEmpty();
        keep(-5);
        session.edit(FollowUp.of(session.desk()).get(0).presses().get(0).result());
        assertThat(drift - drift("waistband")).isCloseTo(20, within(1e-6));
    }

    /** A file keeps six decimals; what was done to a band by slashes can still be taken back from it. */
    @Test
    void aMatchingChangeCanBeTakenBackAfterTheFileIsOpenedAgain() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("waist");
        keep(24);
        session.edit(FollowUp.of(session.desk()).get(0).presses().get(0).result());
        session.edit(TrueWork.all(session.desk().pattern(), List.of(), true));
        byte[] written =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        double drift = drift("waistband");
        session.open(Opened.of(new OpenFile(SvgFile.read(written, "again.svg"), Optional.empty(), "again.svg")));
        Recasting.on(session, Course.of(session.desk()).switched(1, false));
        assertThat(drift("waistband") - drift).isCloseTo(24, within(1e-3));
        assertThat(FollowUp.of(session.desk())).hasSize(1);
        session.chooseLevel("waist");
        assertThat(SizeWords.of(session.desk()).lines()).isNotEmpty();
    }

    private void keep(double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        session.keep();
    }

    private double drift(String mate) {
        return session.desk().reading().measures().mate(mate).orElseThrow().drift();
    }

    /** What is redrawn on two pieces means both. */
    @Test
    void whatIsRedrawnOnTwoPiecesMeansBoth() {
        Pointed pointed = TrueWork.of(session.desk()).places().get(0).pointed().orElseThrow();
        assertThat(pointed.redrawn()).as("drawn there, with no band around it").isTrue();
        assertThat(session.desk().pattern().pieces().stream()
                        .filter(p -> pointed.means(p.id()))
                        .map(Piece::name))
                .containsExactlyInAnyOrder("Back", "Front");
    }
}
