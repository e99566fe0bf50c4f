package easewright.editor;

import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.editor.model.Course;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Sample;
import easewright.editor.model.Wanted;
import easewright.pattern.Level;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.function.UnaryOperator;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/**
 * Takes pictures of the editor for {@code docs/pictures} and for looking at: run with the folder to write to. Needs a
 * display (Xvfb will do).
 */
public final class Pictures extends Application {
    private static Path folder;
    private final EditorApp app = new EditorApp();
    private Stage stage;

    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) throws IOException {
            folder = Files.createDirectories(Path.of(args[0]));
            launch(Pictures.class);
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
            picture("start", 1);
            act(() -> app.files().openSample(Sample.all().get(Integer.getInteger("sample", 0))));
            rest();
            rest();
            measured();
            fire("#ask-where");
            fire("#feels-pulls");
            fire("#sign-seat");
            picture("where", 1);
            fire("#ask-where");
            want(w -> w.withAmount(40));
            picture("trial", 1);
            size(1920, 1080);
            picture("large", 1);
            picture("large-double", 2);
            act(() -> app.session().setDark(true));
            picture("large-dark", 1);
            act(() -> app.session().setDark(false));
            size(1280, 800);
            if (Integer.getInteger("sample", 0) == 0) {
                cut();
            }
            changes();
            for (String page : new String[] {"rings", "size", "notes", "changes"}) {
                turn(page);
                picture(page, 1);
            }
        } catch (Exception e) {
            e.printStackTrace();
        }
        Platform.exit();
    }

    /** Body girths that leave 3 cm of ease, and a wish at the last level. */
    private void measured() throws InterruptedException {
        act(() -> {
            Desk desk = app.session().desk();
            for (Level level : desk.pattern().levels()) {
                double finished = desk.reading()
                        .measures()
                        .girth(level.name())
                        .orElseThrow()
                        .finished();
                app.session().setBody(level, OptionalDouble.of(Math.round(finished / 10 - 3) * 10), level.name());
            }
            Level last = desk.pattern().levels().get(desk.pattern().levels().size() - 1);
            app.session().setWish(last.name(), OptionalDouble.of(70));
            app.session().chooseLevel(last.name());
        });
    }

    private void want(UnaryOperator<Wanted> step) throws InterruptedException {
        act(() -> app.session().want(step.apply(app.session().desk().wanted().orElseThrow())));
    }

    /** Another way, its cut shown on the table. */
    private void cut() throws InterruptedException {
        want(w -> w.withOther(Ways.of("slash").map(OtherWay::of)));
        want(w -> w.withOther(w.other().map(o -> o.with("slash", List.of("Back/hem@50% > Back/waist@50%")))));
        picture("way", 1);
        want(w -> w.withOther(Optional.empty()));
    }

    /** Two changes, the first of them switched off. */
    private void changes() throws InterruptedException {
        act(() -> app.session().keep());
        act(() -> app.session()
                .chooseLevel(app.session().desk().pattern().levels().get(0).name()));
        want(w -> w.withAmount(8));
        act(() -> {
            app.session().keep();
            try {
                app.session().recast(Course.of(app.session().desk()).switched(0, false));
            } catch (StepRefused refused) {
                throw new IllegalStateException(refused);
            }
        });
    }

    private void fire(String id) throws InterruptedException {
        rest();
        act(() -> {
            if (stage.getScene().lookup(id) instanceof ToggleButton button) {
                button.fire();
            }
        });
    }

    private void turn(String page) throws InterruptedException {
        act(() -> {
            if (stage.getScene().lookup("#page-" + page) instanceof ToggleButton tab) {
                tab.fire();
            }
        });
    }

    private void size(double width, double height) throws InterruptedException {
        act(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        rest();
        act(() -> {
            if (stage.getScene().lookup("#table") instanceof easewright.editor.panel.CuttingTable table) {
                table.fit();
            }
        });
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

    private void picture(String name, double scale) throws InterruptedException {
        rest();
        act(() -> {
            Scene scene = stage.getScene();
            SnapshotParameters how = new SnapshotParameters();
            how.setTransform(new Scale(scale, scale));
            WritableImage image = scene.getRoot().snapshot(how, null);
            write(image, folder.resolve(name + ".png"));
        });
    }

    static void write(WritableImage image, Path file) {
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        int[] pixels = new int[w * h];
        image.getPixelReader().getPixels(0, 0, w, h, javafx.scene.image.PixelFormat.getIntArgbInstance(), pixels, 0, w);
        out.setRGB(0, 0, w, h, pixels, 0, w);
        try {
            ImageIO.write(out, "png", file.toFile());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
