package easewright.editor.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.concurrent.Task;

/**
 * Looks after every step, away from the window's thread, for what could be made to fit or be made true. For the
 * window's thread only.
 */
public final class TrueBench {
    private final Session session;
    private final ReadOnlyObjectWrapper<Optional<TrueWork>> work = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "truing");
        thread.setDaemon(true);
        return thread;
    });
    /** The desk that is looked into. Others that wait their turn are passed over. */
    private volatile Optional<Desk> asked = Optional.empty();

    public TrueBench(Session session) {
        this.session = session;
        session.deskProperty().addListener((o, before, now) -> follow(now));
        follow(session.desk());
    }

    /** What was found in the present pattern; empty while it is looked for. */
    public Optional<TrueWork> work() {
        return work.get();
    }

    public ReadOnlyObjectProperty<Optional<TrueWork>> workProperty() {
        return work.getReadOnlyProperty();
    }

    private void follow(Desk desk) {
        if (asked.isPresent() && isAlike(asked.get(), desk)) {
            return;
        }
        // The list is about a pattern, not about a trial of it.
        Desk still = desk.untried();
        asked = Optional.of(still);
        work.set(Optional.empty());
        away(() -> asked.get() == still ? TrueWork.of(still) : TrueWork.none(still.pattern()), found -> {
            if (asked.get() == still) {
                work.set(Optional.of(found));
            }
        });
    }

    /** Whether the same is found for both. Which level is at work matters only where it says in which sizes it lies. */
    private static boolean isAlike(Desk one, Desk other) {
        Set<String> also = one.wanted().map(Wanted::alsoIn).orElse(Set.of());
        boolean alike = one.pattern() == other.pattern()
                && one.unit() == other.unit()
                && one.size().equals(other.size())
                && also.equals(other.wanted().map(Wanted::alsoIn).orElse(Set.of()));
        return alike
                && (also.isEmpty()
                        || one.wanted().map(Wanted::level).equals(other.wanted().map(Wanted::level)));
    }

    /**
     * Puts every place in the list right that can be; one step that can be undone, and one change in the list for each.
     *
     * @param protectedToo whether those that redraw what is protected are meant as well
     */
    public void trueAll(boolean protectedToo) {
        Desk desk = session.desk();
        List<String> sizes = desk.sizesTaking();
        away(() -> TrueWork.all(desk.pattern(), sizes, protectedToo), made -> {
            if (session.desk().pattern() == desk.pattern() && made != desk.pattern()) {
                session.edit(made);
            }
        });
    }

    private <T> void away(Callable<T> job, Consumer<T> done) {
        Task<T> task = new Task<>() {
            @Override
            protected T call() throws Exception {
                return job.call();
            }
        };
        task.setOnSucceeded(e -> done.accept(task.getValue()));
        task.setOnFailed(e -> {
            throw new IllegalStateException(task.getException());
        });
        worker.execute(task);
    }
}
