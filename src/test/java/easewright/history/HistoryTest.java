package easewright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HistoryTest {
    @Test
    void goesBackAndForth() {
        History<String> history = History.of("a").to("b").to("c");
        assertThat(history.undone().present()).isEqualTo("b");
        assertThat(history.undone().undone().redone().present()).isEqualTo("b");
        assertThat(history.canRedo()).isFalse();
        assertThat(history.undone().undone().canUndo()).isFalse();
    }

    @Test
    void aNewCourseForgetsWhatWasUndone() {
        History<String> history = History.of("a").to("b").undone().to("c");
        assertThat(history.states()).containsExactly("a", "c");
        assertThat(history.canRedo()).isFalse();
    }

    @Test
    void knowsTheSavedPosition() {
        History<String> history = History.of("a");
        assertThat(history.isSaved()).isTrue();
        History<String> edited = history.to("b");
        assertThat(edited.isSaved()).isFalse();
        assertThat(edited.undone().isSaved()).isTrue();
        assertThat(edited.withSavedAt(1).isSaved()).isTrue();
        assertThat(edited.withSavedAt(1).undone().isSaved()).isFalse();
    }

    @Test
    void aSavedStateThatWasOverwrittenNeverCountsAsSavedAgain() {
        History<String> other = History.of("a").to("b").withSavedAt(1).undone().to("c");
        assertThat(other.isSaved()).isFalse();
        assertThat(other.undone().isSaved()).isFalse();
    }

    @Test
    void anEqualStateIsNoStep() {
        History<String> history = History.of("a");
        assertThat(history.to("a")).isSameAs(history);
    }

    @Test
    void refusesToLeaveItsEnds() {
        assertThatThrownBy(() -> History.of("a").undone()).isInstanceOf(NoSuchElementException.class);
        assertThatThrownBy(() -> History.of("a").redone()).isInstanceOf(NoSuchElementException.class);
        assertThatThrownBy(() -> new History<>(List.of(), 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Against the plainest model: a list and a position. */
    @Test
    void agreesWithAListAndAPosition() {
        Random random = new Random(7);
        History<Integer> history = History.of(0);
        List<Integer> model = new ArrayList<>(List.of(0));
        int at = 0;
        for (int i = 1; i < 2000; i++) {
            int what = random.nextInt(4);
            if (what < 2) {
                history = history.to(i);
                model = new ArrayList<>(model.subList(0, at + 1));
                model.add(i);
                at++;
            } else if (what == 2 && history.canUndo()) {
                history = history.undone();
                at--;
            } else if (what == 3 && history.canRedo()) {
                history = history.redone();
                at++;
            }
            assertThat(history.present()).isEqualTo(model.get(at));
            assertThat(history.canUndo()).isEqualTo(at > 0);
            assertThat(history.canRedo()).isEqualTo(at < model.size() - 1);
        }
    }
}
