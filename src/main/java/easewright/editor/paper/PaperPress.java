package easewright.editor.paper;

import easewright.editor.model.Desk;
import easewright.print.pdf.PdfBook;
import easewright.svg.disk.AtomicSave;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.concurrent.Task;

/**
 * Makes and saves pages away from the window's thread, one thing at a time: what is asked for next takes the place of
 * what is still being done. For the window's thread only.
 */
public final class PaperPress {
    /** Nothing is being done. */
    public static final double IDLE = 1;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(job -> {
        Thread thread = new Thread(job, "paper");
        thread.setDaemon(true);
        return thread;
    });
    private final DoubleProperty progress = new SimpleDoubleProperty(IDLE);
    private Optional<Task<?>> going = Optional.empty();

    /** Share done of what is going on; below 0 while it cannot be told, {@link #IDLE} when there is nothing. */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress;
    }

    /** Makes pages. */
    public void make(Desk desk, PaperChoice choice, Consumer<PaperPages> done, Consumer<Throwable> failed) {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        start(
                new Task<PaperPages>() {
                    @Override
                    protected PaperPages call() throws Exception {
                        return PaperPages.of(desk, choice, today);
                    }
                },
                false,
                done,
                failed);
    }

    /** Saves pages as a PDF, or the report as a page where the file is called so. */
    public void save(PaperPages pages, Path file, Consumer<Path> done, Consumer<Throwable> failed) {
        String name = String.valueOf(file.getFileName()).toLowerCase(java.util.Locale.ROOT);
        boolean page = name.endsWith(".html") || name.endsWith(".htm");
        start(
                new Task<Path>() {
                    @Override
                    protected Path call() throws Exception {
                        byte[] bytes = page && pages.html().isPresent()
                                ? pages.html().get()
                                : PdfBook.of(
                                        pages.leaves(), pages.title(), pages.date(), share -> updateProgress(share, 1));
                        if (!isCancelled()) {
                            AtomicSave.save(file, bytes);
                        }
                        return file;
                    }
                },
                true,
                done,
                failed);
    }

    /** Gives up what is going on. Nothing is saved of it. */
    public void cancel() {
        going.ifPresent(task -> task.cancel(true));
        going = Optional.empty();
        progress.unbind();
        progress.set(IDLE);
    }

    /** Gives up what is going on, and ends. */
    public void close() {
        cancel();
        worker.shutdownNow();
    }

    /**
     * @param late whether what has been done is told though it is given up by then: it may have ended in this moment
     */
    private <T> void start(Task<T> task, boolean late, Consumer<T> done, Consumer<Throwable> failed) {
        cancel();
        going = Optional.of(task);
        task.setOnSucceeded(e -> {
            if (rest(task) || late) {
                done.accept(task.getValue());
            }
        });
        task.setOnFailed(e -> {
            if (rest(task)) {
                failed.accept(task.getException());
            }
        });
        progress.bind(task.progressProperty());
        worker.execute(task);
    }

    /** Nothing is going on any more; whether that still was. */
    private boolean rest(Task<?> task) {
        boolean still = going.filter(task::equals).isPresent();
        if (still) {
            going = Optional.empty();
            progress.unbind();
            progress.set(IDLE);
        }
        return still;
    }
}
