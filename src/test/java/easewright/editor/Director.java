package easewright.editor;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ButtonBase;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/**
 * Plays something in the editor's window, step by step from a thread of its own, and takes pictures of it into the
 * folder named first on the command line. Needs a display (Xvfb will do).
 */
abstract class Director extends Application {
    private static Exception failed;

    final Answers answers = new Answers();
    final EditorApp app = new EditorApp();
    private Path folder;
    private Stage stage;

    /** What is played. */
    abstract void play() throws Exception;

    /** Plays it to its end; ends the program with a failure where it did not get there. */
    static void direct(Class<? extends Director> what, String... args) {
        launch(what, args);
        if (failed != null) {
            failed.printStackTrace();
            System.exit(1);
        }
    }

    @Override
    public void start(Stage shown) throws Exception {
        stage = shown;
        folder = Files.createDirectories(Path.of(getParameters().getRaw().get(0)));
        app.start(stage, Files.createTempDirectory("easewright"), answers);
        Thread director = new Thread(this::playToTheEnd, "director");
        director.setDaemon(true);
        director.start();
    }

    private void playToTheEnd() {
        try {
            play();
        } catch (Exception e) {
            failed = e;
        }
        Platform.exit();
    }

    Path folder() {
        return folder;
    }

    Stage stage() {
        return stage;
    }

    /** Presses a button by its id. */
    void press(String id) throws InterruptedException {
        rest();
        act(() -> {
            if (stage.getScene().lookup(id) instanceof ButtonBase button) {
                button.fire();
            } else {
                throw new IllegalStateException("No button " + id);
            }
        });
    }

    /** Whether a button is on show. */
    boolean shows(String id) throws InterruptedException {
        rest();
        AtomicBoolean there = new AtomicBoolean();
        act(() -> there.set(stage.getScene().lookup(id) instanceof ButtonBase));
        return there.get();
    }

    void size(double width, double height) throws InterruptedException {
        act(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        rest();
    }

    /** One step on the window's own thread. */
    static void act(Runnable step) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        AtomicReference<RuntimeException> thrown = new AtomicReference<>();
        Platform.runLater(() -> {
            try {
                step.run();
            } catch (RuntimeException e) {
                thrown.set(e);
            }
            done.countDown();
        });
        done.await();
        if (thrown.get() != null) {
            throw thrown.get();
        }
    }

    /** Until the window has settled. */
    static void rest() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> {
            PauseTransition pause = new PauseTransition(Duration.millis(700));
            pause.setOnFinished(e -> done.countDown());
            pause.play();
        });
        done.await();
    }

    void picture(String name) throws InterruptedException {
        picture(name, 1);
    }

    void picture(String name, double scale) throws InterruptedException {
        rest();
        act(() -> {
            SnapshotParameters how = new SnapshotParameters();
            how.setTransform(new Scale(scale, scale));
            write(stage.getScene().getRoot().snapshot(how, null), folder.resolve(name + ".png"));
        });
    }

    private static void write(WritableImage image, Path file) {
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        int[] pixels = new int[w * h];
        image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
        out.setRGB(0, 0, w, h, pixels, 0, w);
        try {
            ImageIO.write(out, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
