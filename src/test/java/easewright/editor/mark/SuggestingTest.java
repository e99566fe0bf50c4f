package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Thinking that takes its time. */
class SuggestingTest {
    private record Thinking(Callable<Thought> thought, Consumer<Thought> done, Runnable stopped) {
        void finish() throws Exception {
            done.accept(thought.call());
        }
    }

    private final Deque<Thinking> waiting = new ArrayDeque<>();
    private final Session session = new Session(LengthUnit.CM, false);
    private final Marker marker =
            new Marker(session, (thought, done, stopped) -> waiting.add(new Thinking(thought, done, stopped)));

    @BeforeEach
    void open() throws Exception {
        open(Samples.svg(Samples.drafts().get(0).draft()).replaceFirst("(?s)<metadata>.*</metadata>", ""));
    }

    private void open(String svg) throws Exception {
        session.open(OpenedSample.drawn(svg, "bare.svg"));
        marker.begin();
        marker.go(MarkState.Step.SUGGESTED);
    }

    @Test
    void nothingIsAcceptedBeforeItIsThought() throws Exception {
        var before = session.desk().pattern();
        marker.suggesting().accept();
        assertThat(session.desk().pattern()).isSameAs(before);
        waiting.remove().finish();
        assertThat(waiting).isEmpty();
        assertThat(marker.suggesting().ready()).isPresent();
        String key = marker.suggesting().ready().orElseThrow().all().get(0).key();

        // A tick is another thought; until then what was suggested before is looked at, and not accepted.
        marker.suggesting().tick(key, false);
        assertThat(marker.state().thoughts().last()).isPresent();
        assertThat(marker.suggesting().ready()).isEmpty();
        marker.suggesting().accept();
        assertThat(session.desk().pattern()).isSameAs(before);
        waiting.remove().finish();
        marker.suggesting().accept();
        assertThat(session.desk().pattern()).isNotEqualTo(before);
    }

    @Test
    void whatIsAcceptedOrNotWantedIsSeenThrough() throws Exception {
        assertThat(isDone()).isFalse();
        waiting.remove().finish();
        assertThat(isDone()).as("there is something ticked").isFalse();
        marker.suggesting().tickAll(false);
        waiting.remove().finish();
        assertThat(isDone()).as("nothing of it is wanted").isTrue();
        marker.suggesting().tickAll(true);
        waiting.remove().finish();
        assertThat(isDone()).isFalse();
        while (MarkProgress.isOpen(marker.state())) {
            marker.suggesting().accept();
            waiting.remove().finish();
        }
        assertThat(isDone()).as("accepted").isTrue();
        open("<svg xmlns='http://www.w3.org/2000/svg' width='90mm' height='90mm'><path d='M0 0H90V90H0z'/></svg>");
        assertThat(isDone()).as("another file").isFalse();
    }

    private boolean isDone() {
        return MarkProgress.isDone(
                MarkState.Step.SUGGESTED, marker.state(), session.desk().pattern());
    }

    @Test
    void whatIsGivenUpCanBeLookedAtAgain() throws Exception {
        waiting.remove().stopped().run();
        assertThat(marker.state().thoughts().way()).isEqualTo(Thoughts.Way.STOPPED);
        assertThat(waiting).isEmpty();
        marker.suggesting().again();
        waiting.remove().finish();
        assertThat(marker.suggesting().ready()).isPresent();
    }

    @Test
    void aThoughtAboutAnotherFileIsForgotten() throws Exception {
        Thinking late = waiting.remove();
        open("<svg xmlns='http://www.w3.org/2000/svg' width='90mm' height='90mm'><path d='M0 0H90V90H0z'/></svg>");
        late.finish();
        assertThat(marker.suggesting().ready()).isEmpty();
        waiting.remove().finish();
        assertThat(marker.suggesting().ready().orElseThrow().outcome().pieces()).hasSize(1);
    }

    @Test
    void whatWasThoughtOfAnotherFileSaysNothingOfThisOne() throws Exception {
        waiting.remove().finish();
        String key = marker.suggesting().ready().orElseThrow().all().get(0).key();
        marker.suggesting().tick(key, false);
        session.open(OpenedSample.drawn(Samples.svg(Samples.drafts().get(1).draft()), "other.svg"));
        waiting.remove().finish();
        assertThat(marker.state().leftOut()).isEmpty();
        assertThat(marker.suggesting().ready()).isEmpty();
    }

    /** What is made of a part takes the place of a thought that is going on: it is not waited for in vain. */
    @Test
    void whatIsTakenInTheMidstOfAThoughtLeavesNothingOpen() throws Exception {
        waiting.remove().finish();
        SuggestView view =
                SuggestView.of(session.desk(), marker.suggesting().ready().orElseThrow(), marker.state());
        SuggestView.Group group = view.groups().stream()
                .filter(g -> !g.piece().isEmpty())
                .findFirst()
                .orElseThrow();
        String left = group.rows().get(0).key();
        marker.suggesting().tick(left, false);
        waiting.clear();
        marker.suggesting().accept(group);
        waiting.remove().stopped().run();
        assertThat(marker.state().thoughts().way()).as("given up").isEqualTo(Thoughts.Way.STOPPED);

        marker.suggesting().again();
        waiting.clear();
        marker.suggesting().accept(new SuggestView.Group(group.piece(), group.title(), List.of()));
        waiting.remove().finish();
        waiting.remove().finish();
        assertThat(waiting).isEmpty();
        assertThat(marker.state().leftOut()).containsExactly(left);
        assertThat(marker.suggesting().ready()).as("thought again").isPresent();
    }
}
