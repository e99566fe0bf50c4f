package easewright.editor.model;

import easewright.geom.Point;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A place on the table that is asked for: who asks says what it is for, and the next click there answers. */
public final class Picking {
    private final ReadOnlyObjectWrapper<Optional<Ask>> ask = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** What a place is of that is asked for. */
    public enum Of {
        /** It stands alone. */
        ITSELF,
        /** A line begins there, whose end is asked for next. */
        BEGINNING,
        /** A line ends there. */
        END
    }

    /**
     * A question for a place.
     *
     * @param field   the key of the setting that asks
     * @param what    what the place is for, in words
     * @param of      what it is of
     * @param from    where the line begins whose end is asked for
     * @param stopped run when no answer will come
     */
    public record Ask(
            String field, String what, Of of, Optional<Point> from, Consumer<Point> taker, Runnable stopped) {}

    public ReadOnlyObjectProperty<Optional<Ask>> askProperty() {
        return ask.getReadOnlyProperty();
    }

    public boolean isAsking() {
        return ask.get().isPresent();
    }

    /** Asks for a place, instead of what was asked before. */
    public void ask(String field, String what, Consumer<Point> taker, Runnable stopped) {
        ask(new Ask(field, what, Of.ITSELF, Optional.empty(), taker, stopped));
    }

    /** Asks for the place where a line begins. */
    public void askBeginning(String field, String what, Consumer<Point> taker, Runnable stopped) {
        ask(new Ask(field, what, Of.BEGINNING, Optional.empty(), taker, stopped));
    }

    /** Asks for the end of a line that begins at a place. */
    public void askEnd(String field, String what, Point from, Consumer<Point> taker, Runnable stopped) {
        ask(new Ask(field, what, Of.END, Optional.of(from), taker, stopped));
    }

    private void ask(Ask question) {
        stop();
        ask.set(Optional.of(question));
    }

    /** Answers with a place on the table, mm. */
    public void give(Point place) {
        Optional<Ask> asked = ask.get();
        ask.set(Optional.empty());
        asked.ifPresent(a -> a.taker().accept(place));
    }

    /** Asks no more. */
    public void stop() {
        Optional<Ask> asked = ask.get();
        ask.set(Optional.empty());
        asked.ifPresent(a -> a.stopped().run());
    }
}
