package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Begun;
import easewright.editor.model.Unfinished;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What was half marked is written down, read again, and gone on with. */
class HalfMarkedTest {
    private static final double REACH = 3;

    private static Begun.Marking throughText(MarkState state) {
        Begun begun = new Begun("marks", List.of(), Optional.of(HalfMarked.in(state)), Optional.empty());
        Unfinished hand = new Unfinished(Optional.empty(), Optional.empty(), begun, true);
        return Unfinished.of(hand.text()).begun().marking().orElseThrow();
    }

    /** One click short, with each tool that takes more than one. */
    @ParameterizedTest
    @EnumSource(
            value = Tool.class,
            names = {"KNOWN_LINE", "TAPE", "DART", "GRAIN", "SEW"})
    void aToolComesBackWithItsPlaces(Tool tool) throws Exception {
        Bare before = Bare.twoPieces();
        before.marker.go(tool == Tool.SEW ? MarkState.Step.SEAMS : MarkState.Step.PIECES);
        before.marker.take(tool);
        for (int i = 0; i < tool.clicks() - 1; i++) {
            Point place = new Point(100 + 20 * i, 100);
            before.marker.hover(place, REACH);
            before.marker.click(place, REACH);
        }
        assertThat(before.marker.state().picks()).hasSize(tool.clicks() - 1);
        Begun.Marking kept = throughText(before.marker.state());
        assertThat(kept.isHalfDone()).isTrue();

        Bare after = Bare.twoPieces();
        assertThat(after.marker.resume(kept)).isTrue();
        MarkState state = after.marker.state();
        assertThat(state.tool()).isEqualTo(tool);
        assertThat(state.step()).isEqualTo(before.marker.state().step());
        assertThat(state.picks()).isEqualTo(before.marker.state().picks());
        assertThat(HalfMarked.in(state)).isEqualTo(HalfMarked.in(before.marker.state()));
    }

    @Test
    void aLineThatWaitsForItsTrueLengthAndSuggestionsLeftOutComeBack() throws Exception {
        Bare before = Bare.twoPieces();
        String key =
                before.marker.suggesting().ready().orElseThrow().all().get(0).key();
        before.marker.suggesting().tick(key, false);
        Begun.Marking unticked = throughText(before.marker.state());
        assertThat(unticked.leftOut()).contains(key);
        Bare after = Bare.twoPieces();
        assertThat(after.marker.resume(unticked)).isTrue();
        assertThat(after.marker.state().leftOut())
                .isEqualTo(before.marker.state().leftOut());
        assertThat(after.marker.suggesting().ready().orElseThrow().outcome())
                .isEqualTo(before.marker.suggesting().ready().orElseThrow().outcome());

        before.marker.go(MarkState.Step.SCALE);
        before.marker.take(Tool.KNOWN_LINE);
        before.marker.click(new Point(150, 100), REACH);
        Begun.Marking measured = throughText(before.marker.state());
        assertThat(measured.line()).isPresent();
        assertThat(after.marker.resume(measured)).isTrue();
        assertThat(after.marker.state().line()).isEqualTo(before.marker.state().line());
    }

    /** A tool in hand, a page that is open, a tape that was read: nothing of that is to be done again. */
    @Test
    void whatIsNotHalfDoneIsNotKept() throws Exception {
        Bare bare = Bare.twoPieces();
        assertThat(HalfMarked.in(bare.marker.state()).isHalfDone()).isFalse();
        bare.marker.go(MarkState.Step.PIECES);
        bare.marker.take(Tool.DART);
        assertThat(HalfMarked.in(bare.marker.state()).isHalfDone()).isFalse();
        bare.marker.take(Tool.TAPE);
        bare.marker.click(new Point(100, 100), REACH);
        bare.marker.click(new Point(300, 100), REACH);
        assertThat(bare.marker.state().line()).isPresent();
        assertThat(HalfMarked.in(bare.marker.state()).isHalfDone()).isFalse();
    }

    @Test
    void whatHasNoPlaceAnyMoreIsNotGoneOnWith() throws Exception {
        Bare bare = Bare.twoPieces();
        Begun.Place gone = new Begun.Place("CORNER", new Point(1, 1), Optional.of("no such piece"), Optional.empty());
        Begun.Place free = new Begun.Place("FREE", new Point(1, 1), Optional.empty(), Optional.empty());
        MarkState before = bare.marker.state();
        for (Begun.Marking marking : List.of(
                marking("PIECES", "DART", gone),
                marking("PIECES", "SCISSORS", free),
                marking("ELSEWHERE", "DART", free),
                marking("PIECES", "SPLIT", free),
                marking("LEVELS", "LEVEL", free))) {
            assertThat(bare.marker.resume(marking)).as(marking.toString()).isFalse();
            assertThat(bare.marker.state()).isSameAs(before);
        }
    }

    private static Begun.Marking marking(String step, String tool, Begun.Place place) {
        return new Begun.Marking(
                true, step, tool, Optional.empty(), Optional.empty(), List.of(place), Optional.empty(), Set.of());
    }
}
