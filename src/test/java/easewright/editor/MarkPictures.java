package easewright.editor;

import easewright.editor.model.OpenFile;
import easewright.svg.SvgFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ButtonBase;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javafx.util.Duration;

/** Takes pictures of marking a bare drawing: run with the folder to write to and the drawing. Needs a display. */
public final class MarkPictures extends Application {
    private static Path folder;
    private static Path drawing;
    private final EditorApp app = new EditorApp();
    private Stage stage;

    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) throws IOException {
            folder = Files.createDirectories(Path.of(args[0]));
            drawing = Path.of(args[1]);
            launch(MarkPictures.class);
        }
    }

    @Override
    public void start(Stage shown) throws Exception {
        stage = shown;
        app.start(stage, Files.createTempDirectory("easewright"));
        Thread director = new Thread(this::play, "director");
        director.setDaemon(true);
        director.start();
    }

    private void play() {
        try {
            size(1280, 800);
            SvgFile svg = SvgFile.read(drawing);
            act(() -> app.session()
                    .open(new OpenFile(
                            svg, Optional.empty(), drawing.getFileName().toString())));
            press("#step-scale");
            picture("scale");
            press("#scale-check");
            press("#scale-offer-0");
            picture("scale-done");
            press("#step-suggested");
            picture("suggested");
            press("#suggest-accept");
            picture("accepted");
            press("#step-pieces");
            picture("pieces");
            press("#tool-dart");
            picture("dart");
            press("#step-seams");
            picture("seams");
            press("#step-levels");
            picture("levels");
            press("#mark-next");
            picture("ease");
            act(() -> app.session().setDark(true));
            size(1920, 1080);
            press("#page-marks");
            picture("levels-dark");
            press("#step-pieces");
            picture("pieces-dark");
        } catch (Exception e) {
            e.printStackTrace();
        }
        Platform.exit();
    }

    private void press(String id) throws InterruptedException {
        act(() -> {
            if (stage.getScene().lookup(id) instanceof ButtonBase button) {
                button.fire();
            }
        });
    }

    private void size(double width, double height) throws InterruptedException {
        act(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        rest();
    }

    private static void act(Runnable step) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> {
            try {
                step.run();
            } catch (RuntimeException e) {
                e.printStackTrace();
            }
            done.countDown();
        });
        done.await();
    }

    private static void rest() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> {
            PauseTransition pause = new PauseTransition(Duration.millis(700));
            pause.setOnFinished(e -> done.countDown());
            pause.play();
        });
        done.await();
    }

    private void picture(String name) throws InterruptedException {
        rest();
        act(() -> {
            WritableImage image = stage.getScene().getRoot().snapshot(new SnapshotParameters(), null);
            Pictures.write(image, folder.resolve(name + ".png"));
        });
    }
}
