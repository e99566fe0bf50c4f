package easewright.editor.mark;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Has a thought thought, away from the window's thread where there is a window. */
@FunctionalInterface
public interface Thinker {
    /**
     * Both of the last two are called where this was called from, at once or later. A thought that is followed by another
     * before it is done is forgotten.
     *
     * @param stopped somebody gave it up
     */
    void think(Callable<Thought> thought, Consumer<Thought> done, Runnable stopped);

    /** Thinks at once, for where no window waits. */
    static Thinker atOnce() {
        return (thought, done, stopped) -> {
            try {
                done.accept(thought.call());
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        };
    }
}
