package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Alteration;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Step;
import easewright.alter.Within;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.SetAside;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.suggest.Suggestions;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a line is, said only after pieces were changed. */
class SaidLaterTest {
    private static final String OUTER = "shape-2";
    private static final String INNER = "shape-3";

    private Bare bare;

    @BeforeEach
    void aSkirtWhoseFrontHasBothLines() throws Exception {
        bare = Bare.of(Files.readString(Path.of("src/test/resources/lines/dart-cut-in.svg")));
    }

    private Pattern pattern() {
        return bare.session.desk().pattern();
    }

    private Piece front() {
        return pattern().piece("Skirt front").orElseThrow();
    }

    /** Marked without a word of the other line: all else that is suggested, and a hip. */
    private void markedWithoutTheLine(boolean innerIsThePiece) throws MarkRefused {
        if (innerIsThePiece) {
            bare.session.edit(PieceEdits.noPiece(pattern(), OUTER));
            bare.session.edit(OtherLines.ownPiece(bare.marker.sheet(), bare.other(INNER)));
        }
        Set<String> line = Set.of("line " + OUTER, "line " + INNER);
        bare.session.edit(Suggestions.of(bare.marker.sheet(), line).outcome());
    }

    private String level() {
        return Measures.of(pattern()).girths().get(0).name();
    }

    private double girth() {
        return Measures.of(pattern()).girth(level()).orElseThrow().finished();
    }

    private static String seam(Piece piece) {
        return piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .findFirst()
                .orElseThrow()
                .name();
    }

    private void widen(Piece piece, double mm) throws Refusal {
        SeamChange change = SeamChange.at(level(), mm).withShares(new Share(EdgeRef.of(piece.id(), seam(piece)), 1));
        bare.session.edit(change.apply(pattern()).pattern());
    }

    private void savedAndReadAgain() throws Exception {
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        SvgFile saved = SvgFile.read(file.write(pattern()), "saved.svg");
        assertThat(saved.findings()).extracting(Finding::severity).doesNotContain(Severity.FAULT);
        Pattern again = saved.pattern();
        assertThat(again.changes()).isEqualTo(pattern().changes());
        assertThat(again.aside()).isEqualTo(pattern().aside());
        assertThat(again.pieces())
                .extracting(Piece::id)
                .isEqualTo(pattern().pieces().stream().map(Piece::id).toList());
        assertThat(Measures.of(again).girth(level()).orElseThrow().finished()).isCloseTo(girth(), within(1e-4));
    }

    @Test
    void theOuterLineIsCutAndTheChangeIsMadeAgainWithIt() throws Exception {
        markedWithoutTheLine(true);
        Piece before = front();
        Outline outer = bare.other(OUTER).bare().outline();
        widen(front(), 20);
        double wide = girth();
        SaidLater said = SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(OUTER), false);
        said.edit(bare.session);
        assertThat(said.off()).isEmpty();
        assertThat(said.again()).isEqualTo(1);
        assertThat(bare.session.desk().notice().orElseThrow().key()).isEqualTo("editor.said.again");
        assertThat(front().original()).contains(before.outline());
        assertThat(girth()).isCloseTo(wide, within(0.01));
        Rider along = front().riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .findFirst()
                .orElseThrow();
        assertThat(along.id()).isEqualTo(OUTER);
        double right = new Outline(along.segments()).box().maxX();
        assertThat(right - front().outline().box().maxX())
                .as("the cutting line went along with the change")
                .isCloseTo(outer.box().maxX() - before.outline().box().maxX(), within(0.5));
        savedAndReadAgain();
        bare.session.undo();
        assertThat(girth()).isCloseTo(wide, within(0.01));
    }

    /** The piece is another line from now on: what was changed at its side is changed at the side of that. */
    @Test
    void bothLinesChangePlacesUnderTheChange() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        assertThat(front().id()).isEqualTo(INNER);
        double drawn = girth();
        widen(front(), 20);
        assertThat(girth()).isCloseTo(drawn + 20, within(0.01));
        SaidLater said = SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(OUTER), true);
        said.edit(bare.session);
        assertThat(said.off()).as(said.why()).isEmpty();
        assertThat(front().id()).isEqualTo(OUTER);
        assertThat(front().drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(pattern().changes().get(0).settings().get("edge.1")).startsWith(OUTER + "/");
        Pattern widened = pattern();
        bare.session.recast(List.of());
        double without = girth();
        bare.session.undo();
        assertThat(pattern()).isEqualTo(widened);
        assertThat(girth()).isCloseTo(without + 20, within(0.01));
        savedAndReadAgain();
    }

    @Test
    void aPieceThatIsNoneTakesItsChangesOffAndLeavesTheOthers() throws Exception {
        markedWithoutTheLine(false);
        Piece back = pattern().piece("Skirt back").orElseThrow();
        widen(back, 12);
        widen(front(), 20);
        SaidLater said = SaidLater.noPiece(bare.session.desk(), bare.marker.sheet(), back.id());
        said.edit(bare.session);
        assertThat(pattern().piece("Skirt back")).isEmpty();
        assertThat(pattern().noPieces()).contains(back.id());
        assertThat(said.off()).hasSize(1);
        assertThat(said.why()).isNotBlank();
        assertThat(said.again()).isEqualTo(1);
        assertThat(pattern().aside()).hasSize(1);
        assertThat(pattern().aside().get(0).before()).as("before the other one").isZero();
        assertThat(bare.session.desk().notice().orElseThrow().bad()).isTrue();
        savedAndReadAgain();
        bare.session.undo();
        assertThat(pattern().changes()).hasSize(2);
        assertThat(pattern().piece("Skirt back")).isPresent();
    }

    /** What is a piece of its own is that as it is drawn, not as it was moved with another. */
    @Test
    void aPieceOfItsOwnIsFreeOfTheChange() throws Exception {
        Outline drawn = bare.other(INNER).bare().outline();
        markedWithoutTheLine(false);
        widen(front(), 20);
        SaidLater.ownPiece(bare.session.desk(), bare.marker.sheet(), bare.other(INNER))
                .edit(bare.session);
        assertThat(pattern().piece(INNER).orElseThrow().outline()).isEqualTo(drawn);
        assertThat(pattern().changes()).hasSize(1);
        savedAndReadAgain();
    }

    /** One that is switched off may be switched on again, on the line that the piece is then. */
    @Test
    void whatIsSetAsideFollowsTheLineToo() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        widen(front(), 20);
        ChangeNote note = pattern().changes().get(0);
        bare.session.recast(List.of(new Step(note, false)));
        assertThat(pattern().aside()).containsExactly(new SetAside(0, note));
        SaidLater said = SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(OUTER), true);
        said.edit(bare.session);
        assertThat(said.again()).isZero();
        assertThat(bare.session.desk().notice()).isEmpty();
        ChangeNote now = pattern().aside().get(0).note();
        assertThat(now.settings().get("edge.1")).startsWith(OUTER + "/");
        bare.session.recast(List.of(new Step(now, true)));
        assertThat(pattern().changes()).containsExactly(now);
    }

    @Test
    void aChangeThatCannotBeTakenOutIsNamed() throws Exception {
        markedWithoutTheLine(true);
        bare.session.edit(pattern().withChange(new ChangeNote("seam", Map.of("amount", "20"))));
        Pattern changed = pattern();
        OtherLines.Other outer = bare.other(OUTER);
        assertThatThrownBy(() -> SaidLater.line(bare.session.desk(), bare.marker.sheet(), outer, false))
                .isInstanceOfSatisfying(MarkRefused.class, e -> {
                    assertThat(e.code()).isEqualTo("said-after-change");
                    assertThat(String.valueOf(e.values().get("which"))).isNotBlank();
                });
        assertThat(pattern()).isSameAs(changed);
    }

    private void lay(String name) throws Exception {
        bare = Bare.of(Files.readString(Path.of("src/test/resources/lines", name + ".svg")));
    }

    private void say(String line, boolean swap) throws MarkRefused {
        SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(line), swap)
                .edit(bare.session);
    }

    /** The line that is sewn is open where the fold is, and is said to be so without a suggestion. */
    @Test
    void anOpenLineIsSaidToBeSewn() throws Exception {
        lay("open-at-fold");
        assertThat(bare.marker.outlineAt(new Point(170, 659), 4)).contains("sew");
        assertThat(bare.marker.outlineAt(new Point(40, 300), 4))
                .as("the fold belongs to the outline")
                .isEmpty();
        say("sew", false);
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        Piece front = front();
        assertThat(front.id()).isEqualTo("cut");
        assertThat(front.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(front.darts()).hasSize(1);
        assertThat(front.edges())
                .filteredOn(e -> e.role() == EdgeRole.FOLD)
                .allMatch(e -> e.allowance().orElse(-1) == 0);
        assertThat(front.edges())
                .filteredOn(e -> e.role() == EdgeRole.HEM)
                .allMatch(e -> Math.abs(e.allowance().orElse(-1) - 40) < 0.3);
        widen(front, 20);
        savedAndReadAgain();
        assertThatThrownBy(() -> say("sew", true))
                .isInstanceOfSatisfying(
                        MarkRefused.class, e -> assertThat(e.code()).isEqualTo("line-open"));
    }

    /** Both lines are drawn by one element, with a pocket in it that stays where it is. */
    @Test
    void linesOfOneElementChangePlacesToo() throws Exception {
        lay("one-element");
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        Piece drawn = pattern().pieces().get(0);
        assertThat(drawn.id()).isEqualTo("both");
        assertThat(drawn.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(drawn.darts()).hasSize(1);
        double girth = girth();
        widen(drawn, 20);
        say("both#1", true);
        Piece sewn = pattern().pieces().get(0);
        assertThat(sewn.id()).isEqualTo("both#1");
        assertThat(sewn.drawn()).isEqualTo(LineKind.STITCHING);
        assertThat(sewn.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.PARALLEL)
                .extracting(Rider::id)
                .containsExactly("both#0");
        assertThat(sewn.riders()).extracting(Rider::id).contains("both#2").doesNotHaveDuplicates();
        // The lines are not quite evenly apart, and one allowance is kept for each edge.
        assertThat(girth()).isCloseTo(girth + 20, within(4.0));
        savedAndReadAgain();
        say("both#0", true);
        assertThat(pattern().pieces().get(0).id()).isEqualTo("both#0");
        assertThat(pattern().pieces().get(0).drawn()).isEqualTo(LineKind.CUTTING);
        savedAndReadAgain();
    }

    private void widenRightSide(Piece piece, double mm) throws Refusal {
        SeamChange change = SeamChange.at(level(), mm).withShares(new Share(EdgeRef.of(piece.id(), seam(piece)), 1));
        Alteration onOne = Within.of(new Scope(Optional.empty(), Side.RIGHT), change);
        bare.session.edit(onOne.apply(pattern()).pattern());
    }

    private Piece frontDrawn(String id) {
        return pattern().piece(id).orElseThrow();
    }

    /** What is drawn once for both sides is named twice in the records. */
    @Test
    void aChangeOfTheOtherSideFollowsTheLineToo() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        widenRightSide(front(), 10);
        Piece copy = SidePair.with(pattern(), frontDrawn(INNER)).orElseThrow().copy();
        widen(copy, 6);
        assertThat(pattern().changes().get(1).settings().get("edge.1")).startsWith(copy.id() + "/");
        say(OUTER, true);
        Piece now = SidePair.with(pattern(), frontDrawn(OUTER)).orElseThrow().copy();
        assertThat(pattern().aside()).isEmpty();
        assertThat(pattern().changes()).hasSize(2);
        assertThat(pattern().changes().get(1).settings().get("edge.1")).startsWith(now.id() + "/");
        savedAndReadAgain();
    }

    @Test
    void theCopyForTheOtherSideIsRefusedPolitely() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        widenRightSide(front(), 10);
        Piece copy = SidePair.with(pattern(), frontDrawn(INNER)).orElseThrow().copy();
        Pattern changed = pattern();
        assertThatThrownBy(() -> SaidLater.noPiece(bare.session.desk(), bare.marker.sheet(), copy.id()))
                .isInstanceOfSatisfying(MarkRefused.class, e -> {
                    assertThat(e.code()).isEqualTo("piece-in-changes");
                    assertThat(e.values()).containsEntry("piece", copy.name());
                });
        assertThat(pattern()).isSameAs(changed);
    }
}
