package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.SidePair;
import easewright.suggest.Suggestions;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a line is, said only after pieces were changed. */
class SaidLaterTest extends BothLines {
    /** Marked without a word of the other line: all else that is suggested, and a hip. */
    private void markedWithoutTheLine(boolean innerIsThePiece) throws MarkRefused {
        if (innerIsThePiece) {
            bare.session.edit(PieceEdits.noPiece(pattern(), OUTER));
            bare.session.edit(OtherLines.ownPiece(bare.marker.sheet(), bare.other(INNER)));
        }
        Set<String> line = Set.of("line " + OUTER, "line " + INNER);
        bare.session.edit(Suggestions.of(bare.marker.sheet(), line).outcome());
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

    @Test
    void theCopyForTheOtherSideIsRefusedPolitely() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        widenRightSide(front(), 10);
        Piece copy = SidePair.with(pattern(), pattern().piece(INNER).orElseThrow())
                .orElseThrow()
                .copy();
        Pattern changed = pattern();
        assertThatThrownBy(() -> SaidLater.noPiece(bare.session.desk(), bare.marker.sheet(), copy.id()))
                .isInstanceOfSatisfying(MarkRefused.class, e -> {
                    assertThat(e.code()).isEqualTo("piece-in-changes");
                    assertThat(e.values()).containsEntry("piece", copy.name());
                });
        assertThat(pattern()).isSameAs(changed);
    }
}
