package easewright.history;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * The states a document has been through, with one of them present and one of them, perhaps, saved. Immutable.
 *
 * @param states  oldest first
 * @param index   which of them is present
 * @param savedAt which of them was last saved; −1 if that one has been overwritten by a different course
 */
public record History<T>(List<T> states, int index, int savedAt) {
    /**
     * @throws IllegalArgumentException if there is no present state
     */
    public History {
        states = List.copyOf(states);
        if (index < 0 || index >= states.size() || savedAt < -1 || savedAt >= states.size()) {
            throw new IllegalArgumentException("History of " + states.size() + " without present state " + index);
        }
    }

    /** A document as it was opened, counted as saved. */
    public static <T> History<T> of(T first) {
        return new History<>(List.of(first), 0, 0);
    }

    public T present() {
        return states.get(index);
    }

    /** The states up to the present one, oldest first. */
    public List<T> upToPresent() {
        return states.subList(0, index + 1);
    }

    /** Goes on to a new state and forgets what had been undone; this very history if nothing differs. */
    public History<T> to(T next) {
        if (next.equals(present())) {
            return this;
        }
        List<T> kept = new ArrayList<>(states.subList(0, index + 1));
        kept.add(next);
        return new History<>(kept, index + 1, savedAt <= index ? savedAt : -1);
    }

    public boolean canUndo() {
        return index > 0;
    }

    public boolean canRedo() {
        return index < states.size() - 1;
    }

    /**
     * @throws NoSuchElementException if there is nothing to undo
     */
    public History<T> undone() {
        if (!canUndo()) {
            throw new NoSuchElementException("Nothing to undo");
        }
        return new History<>(states, index - 1, savedAt);
    }

    /**
     * @throws NoSuchElementException if there is nothing to redo
     */
    public History<T> redone() {
        if (!canRedo()) {
            throw new NoSuchElementException("Nothing to redo");
        }
        return new History<>(states, index + 1, savedAt);
    }

    /** The same history with another state, or with −1 none, counted as saved. */
    public History<T> withSavedAt(int state) {
        return new History<>(states, index, state);
    }

    public boolean isSaved() {
        return savedAt == index;
    }
}
