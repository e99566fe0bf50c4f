package easewright.editor.panel;

import java.util.Optional;
import javafx.animation.AnimationTimer;

/**
 * Work that keeps the window from painting for a while: it is begun once what was shown for it has been seen. For the
 * window's thread only.
 */
final class OnceSeen {
    /** What is laid out before one picture is painted beside the next, and reaches the screen before the one after. */
    private static final int PICTURES = 3;

    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            left--;
            if (left <= 0) {
                catchUp();
            }
        }
    };
    private Optional<Runnable> waiting = Optional.empty();
    private int left;

    /** Does it soon; what was asked for before, at once. */
    void ask(Runnable work) {
        catchUp();
        waiting = Optional.of(work);
        left = PICTURES;
        timer.start();
    }

    /** Does at once what was asked for, before anything that would else overtake it. */
    void catchUp() {
        Optional<Runnable> now = waiting;
        waiting = Optional.empty();
        timer.stop();
        now.ifPresent(Runnable::run);
    }
}
