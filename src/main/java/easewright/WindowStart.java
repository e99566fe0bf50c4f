package easewright;

import easewright.editor.EditorApp;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;

/** Opens the editor. The only class outside {@code editor} that loads JavaFX. */
final class WindowStart {
    private WindowStart() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @param files drawings to open
     * @return why no window can be opened here, in the words of the toolkit; empty if one was
     */
    static Optional<String> open(String... files) {
        Optional<String> hindrance = toolkit();
        if (hindrance.isEmpty()) {
            EditorApp.open(files);
        }
        return hindrance;
    }

    /** Starts the toolkit by itself, so that its failure can be told from a failure of the editor. */
    private static Optional<String> toolkit() {
        PrintStream err = System.err;
        CountDownLatch started = new CountDownLatch(1);
        // The toolkit reports a missing display by a stack trace of its own on standard error, and on success warns
        // that it was found on the class path; neither helps anyone.
        System.setErr(new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8));
        try {
            Platform.startup(started::countDown);
            started.await();
            return Optional.empty();
        } catch (RuntimeException | LinkageError e) {
            return Optional.of(e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        } finally {
            System.setErr(err);
        }
    }
}
