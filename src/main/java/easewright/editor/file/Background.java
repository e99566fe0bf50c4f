package easewright.editor.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
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

    private static final String THINKING = "thinking";

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

    /** What is going on and is shown, each when it is the latest of those that have not ended. */
    private final List<Going> going = new ArrayList<>();

    private final ReadOnlyObjectWrapper<Optional<Work>> work = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * A piece of work that is going on.
     *
     * @param what   in the bundle under {@code editor.busy.<what>}
     * @param file   the file it is about
     * @param cancel gives it up; empty where that would leave things half done
     */
    public record Work(String what, String file, Optional<Runnable> cancel) {}

    private record Going(Work shown, Job<?> job) {}

    /** What is going on, if anything is; of several things what was begun last. */
    public ReadOnlyObjectProperty<Optional<Work>> workProperty() {
        return work.getReadOnlyProperty();
    }

    /** Work that can be given up; whatever could be given up before is. */
    <T> void whileWaiting(String what, String file, Callable<T> job, Consumer<T> done, Consumer<Throwable> failed) {
        giveUpAll();
        Job<T> task = task(job, done, failed);
        start(task, new Work(what, file, Optional.of(() -> giveUp(task))));
    }

    /** What waited for something that is given up may begin thereby, and is given up as well. */
    private void giveUpAll() {
        Optional<Runnable> next = cancelOfLast();
        while (next.isPresent()) {
            next.get().run();
            next = cancelOfLast();
        }
    }

    private Optional<Runnable> cancelOfLast() {
        return going.stream().flatMap(g -> g.shown().cancel().stream()).reduce((before, last) -> last);
    }

    /**
     * Thinking about what lies on the table, which can be given up. What was thought about before is forgotten.
     *
     * @param stopped somebody gave it up, and nothing else is thought about in its place; or it failed
     */
    public <T> void thinking(Callable<T> job, Consumer<T> done, Runnable stopped) {
        List<Going> before =
                going.stream().filter(g -> g.shown().what().equals(THINKING)).toList();
        before.forEach(g -> giveUp(g.job()));
        Job<T> task = task(job, done, problem -> {
            stopped.run();
            throw new IllegalStateException(problem);
        });
        start(task, new Work(THINKING, "", Optional.of(() -> {
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
        start(task, new Work("making", "", Optional.of(cancel)));
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
        ended(task);
    }

    private void start(Job<?> task, Work shown) {
        going.add(new Going(shown, task));
        show();
        // By its state: what runs in the worker may not be done yet when the window hears that it succeeded.
        task.stateProperty().addListener((o, before, now) -> {
            if (ENDED.contains(now)) {
                ended(task);
            }
        });
        workers.execute(task);
    }

    private void ended(Job<?> task) {
        going.removeIf(g -> g.job() == task);
        show();
    }

    private void show() {
        work.set(
                going.isEmpty()
                        ? Optional.empty()
                        : Optional.of(going.get(going.size() - 1).shown()));
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

    /**
     * The window ends: what has to come to its end, and what was given in order, is still done, unless the disk takes
     * longer than anybody waits.
     */
    void end() {
        long until = System.nanoTime() + AT_THE_END.toNanos();
        inOrder.shutdown();
        try {
            for (Going at : going) {
                if (at.shown().cancel().isEmpty()) {
                    await(at.job(), until);
                }
            }
            if (!inOrder.awaitTermination(until - System.nanoTime(), TimeUnit.NANOSECONDS)) {
                inOrder.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void await(Job<?> job, long until) throws InterruptedException {
        try {
            job.get(until - System.nanoTime(), TimeUnit.NANOSECONDS);
        } catch (ExecutionException | TimeoutException nobodyIsThereToBeTold) {
            return;
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
