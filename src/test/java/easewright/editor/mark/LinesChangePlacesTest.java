package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Step;
import easewright.editor.model.Recasting;
import easewright.pattern.ChangeNote;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.SetAside;
import easewright.pattern.SidePair;
import easewright.suggest.Suggestions;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The piece is the other of its two lines from now on, after it was changed: its changes follow it there. */
class LinesChangePlacesTest extends BothLines {
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
        Recasting.on(bare.session, List.of());
        double without = girth();
        bare.session.undo();
        assertThat(pattern()).isEqualTo(widened);
        assertThat(girth()).isCloseTo(without + 20, within(0.01));
        savedAndReadAgain();
    }

    /** One that is switched off may be switched on again, on the line that the piece is then. */
    @Test
    void whatIsSetAsideFollowsTheLineToo() throws Exception {
        bare.session.edit(Suggestions.of(bare.marker.sheet(), Set.of()).outcome());
        widen(front(), 20);
        ChangeNote note = pattern().changes().get(0);
        Recasting.on(bare.session, List.of(new Step(note, false)));
        assertThat(pattern().aside()).containsExactly(new SetAside(0, note));
        SaidLater said = SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(OUTER), true);
        said.edit(bare.session);
        assertThat(said.again()).isZero();
        assertThat(bare.session.desk().notice()).isEmpty();
        ChangeNote now = pattern().aside().get(0).note();
        assertThat(now.settings().get("edge.1")).startsWith(OUTER + "/");
        Recasting.on(bare.session, List.of(new Step(now, true)));
        assertThat(pattern().changes()).containsExactly(now);
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
}
