package easewright.editor.mark;

import java.util.Optional;

/**
 * How far thinking about a drawing has come. Immutable.
 *
 * @param last what came out last, which may be about another set of ticks while the next is thought
 * @param way  what is going on
 */
public record Thoughts(Optional<Thought> last, Way way) {
    /** What is going on. */
    public enum Way {
        /** The last thought is about what lies there now, or none was asked for. */
        DONE,
        THINKING,
        /** Somebody gave it up. */
        STOPPED
    }

    public static final Thoughts NONE = new Thoughts(Optional.empty(), Way.DONE);

    /** What may be accepted now. */
    public Optional<Thought> ready() {
        return last.filter(t -> way == Way.DONE);
    }

    Thoughts on(Way now) {
        return new Thoughts(last, now);
    }
}
