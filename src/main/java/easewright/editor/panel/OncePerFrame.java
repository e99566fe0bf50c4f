package easewright.editor.panel;

import javafx.animation.AnimationTimer;

/**
 * Something to be done before the next picture, however often it is asked for until then: a pointer tells of itself
 * several times between two pictures, and only where it is at last can be seen. For the window's thread.
 */
final class OncePerFrame {
    private final Runnable work;
    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            stop();
            waiting = false;
            work.run();
        }
    };
    private boolean waiting;

    OncePerFrame(Runnable work) {
        this.work = work;
    }

    void ask() {
        waiting = true;
        timer.start();
    }

    /** Does it at once, if it was asked for. */
    void catchUp() {
        if (waiting) {
            forget();
            work.run();
        }
    }

    /** Leaves undone what was asked for. */
    void forget() {
        waiting = false;
        timer.stop();
    }
}
