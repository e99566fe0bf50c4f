package easewright.editor.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.concurrent.Task;
import javafx.concurrent.Worker;

/**
 * Work away from the window's thread, one piece at a time to be seen. A piece that is cancelled is forgotten: it may
 * run to its end, but nobody hears of what came out. For the window's thread only.
 */
public final class Background {
    /** So long a window that is closed waits for a disk. */
    private static final Duration AT_THE_END = Duration.ofSeconds(4);

    private static final String MAKING = "making";

    private static final Set<Worker.State> ENDED =
            EnumSet.of(Worker.State.SUCCEEDED, Worker.State.FAILED, Worker.State.CANCELLED);

    private final ExecutorService workers = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "files");
        thread.setDaemon(true);
        return thread;
    });
    private final ExecutorService inOrder = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "keeping");
        thread.setDaemon(true);
        return thread;
    });
    /** What waits until a pattern is made. */
    private final List<Runnable> afterwards = new ArrayList<>();

    private boolean making;
    private final ReadOnlyObjectWrapper<Optional<Work>> work = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * A piece of work that is going on.
     *
     * @param what   in the bundle under {@code editor.busy.<what>}
     * @param file   the file it is about
     * @param cancel gives it up; empty where that would leave things half done
     */
    public record Work(String what, String file, Optional<Runnable> cancel) {}

    /** What is going on, if anything is. */
    public ReadOnlyObjectProperty<Optional<Work>> workProperty() {
        return work.getReadOnlyProperty();
    }

    /** Work that can be given up; whatever could be given up before is. */
    <T> void whileWaiting(String what, String file, Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        work.get().flatMap(Work::cancel).ifPresent(Runnable::run);
        Job<T> task = task(job, done, failed);
        start(task, new Work(what, file, Optional.of(() -> giveUp(task))));
    }

    /**
     * Thinking about what lies on the table, which can be given up.
     *
     * @param stopped somebody gave it up, and nothing else is thought about in its place
     */
    public <T> void thinking(Callable<T> job, Consumer<T> done, Runnable stopped) {
        work.get().filter(w -> !w.what().equals(MAKING)).flatMap(Work::cancel).ifPresent(Runnable::run);
        Job<T> task = task(job, done, problem -> {
            throw new IllegalStateException(problem);
        });
        start(task, new Work("thinking", "", Optional.of(() -> {
            giveUp(task);
            stopped.run();
        })));
    }

    /**
     * Making another pattern of what lies on the table. What is done to files meanwhile waits for it.
     *
     * @param stopped somebody gave it up, or it failed
     * @return gives it up
     */
    public <T> Runnable making(Callable<T> job, Consumer<T> done, Runnable stopped) {
        Job<T> task = task(job, made -> made(() -> done.accept(made)), problem -> {
            made(stopped);
            throw new IllegalStateException(problem);
        });
        Runnable cancel = () -> {
            giveUp(task);
            made(stopped);
        };
        making = true;
        start(task, new Work(MAKING, "", Optional.of(cancel)));
        return cancel;
    }

    private void made(Runnable end) {
        making = false;
        end.run();
        if (!making) {
            List<Runnable> next = List.copyOf(afterwards);
            afterwards.clear();
            next.forEach(Runnable::run);
        }
    }

    /** Does it now, or as soon as the pattern that is being made is there, or is given up. */
    public void onceMade(Runnable next) {
        if (making) {
            afterwards.add(next);
        } else {
            next.run();
        }
    }

    /** Work that has to come to its end. */
    <T> void throughout(String what, String file, Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        start(task(job, done, failed), new Work(what, file, Optional.empty()));
    }

    private void giveUp(Job<?> task) {
        task.forget();
        work.set(Optional.empty());
    }

    private void start(Task<?> task, Work shown) {
        work.set(Optional.of(shown));
        // By its state: what runs in the worker may not be done yet when the window hears that it succeeded.
        task.stateProperty().addListener((o, before, now) -> {
            if (ENDED.contains(now) && work.get().filter(shown::equals).isPresent()) {
                work.set(Optional.empty());
            }
        });
        workers.execute(task);
    }

    /** Work that nobody waits for, and that is not shown. */
    <T> void quietly(Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        workers.execute(task(job, done, failed));
    }

    /** Work that nobody waits for, one after the other in the order in which it is given; none after the end. */
    <T> void inOrder(Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        if (!inOrder.isShutdown()) {
            inOrder.execute(task(job, done, failed));
        }
    }

    /** The same where nothing comes of it that the window would hear. */
    void inOrder(Runnable job) {
        if (!inOrder.isShutdown()) {
            inOrder.execute(job);
        }
    }

    /** The window ends: what was given in order is still done, unless the disk takes longer than anybody waits. */
    void end() {
        inOrder.shutdown();
        try {
            if (!inOrder.awaitTermination(AT_THE_END.toMillis(), TimeUnit.MILLISECONDS)) {
                inOrder.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static <T> Job<T> task(Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        Job<T> task = new Job<>(job);
        task.setOnSucceeded(e -> task.unlessForgotten(() -> done.accept(task.getValue())));
        task.setOnFailed(e -> task.unlessForgotten(() -> failed.accept(task.getException())));
        return task;
    }

    /** What has ended in its worker can be cancelled no more, though the window has not heard of it yet. */
    private static final class Job<T> extends Task<T> {
        private final Callable<T> job;
        private boolean forgotten;

        Job(Callable<T> job) {
            this.job = job;
        }

        @Override
        protected T call() throws Exception {
            return job.call();
        }

        void forget() {
            forgotten = true;
            // What can stop early does; the rest runs to its end unheard.
            cancel(true);
        }

        void unlessForgotten(Runnable told) {
            if (!forgotten) {
                told.run();
            }
        }
    }
}
