package easewright.editor;

import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.editor.model.Course;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Sample;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
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
            picture("opened", 1);
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
            picture("measured", 1);
            fire("#ask-where");
            fire("#feels-pulls");
            fire("#sign-seat");
            picture("where", 1);
            fire("#ask-where");
            act(() -> app.session()
                    .want(app.session().desk().wanted().orElseThrow().withAmount(40)));
            picture("trial", 1);
            act(() -> {
                var wanted = app.session().desk().wanted().orElseThrow();
                app.session().want(wanted.withOther(Ways.of("slash").map(OtherWay::of)));
            });
            picture("way", 1);
            act(() -> {
                var wanted = app.session().desk().wanted().orElseThrow();
                app.session()
                        .want(wanted.withOther(
                                wanted.other().map(o -> o.with("slash", List.of("Back/hem@50% > Back/waist@50%")))));
            });
            picture("way-trial", 1);
            act(() -> app.session()
                    .want(app.session().desk().wanted().orElseThrow().withOther(Optional.empty())));
            size(1920, 1080);
            picture("trial-large", 1);
            picture("trial-double", 2);
            act(() -> app.session().setDark(true));
            picture("trial-dark", 1);
            act(() -> app.session().keep());
            act(() -> app.session().setUnit(LengthUnit.INCH));
            act(() -> {
                try {
                    Desk desk = app.session().desk();
                    app.session().chooseLevel(desk.pattern().levels().get(0).name());
                    app.session()
                            .want(app.session().desk().wanted().orElseThrow().withAmount(8));
                    app.session().keep();
                    app.session().recast(Course.of(app.session().desk()).switched(0, false));
                } catch (StepRefused e) {
                    throw new IllegalStateException(e);
                }
            });
            for (String page : new String[] {"rings", "size", "changes", "notes"}) {
                turn(page);
                size(1280, 800);
                picture("page-" + page, 1);
                act(() -> app.session().setDark(false));
            }
        } catch (Exception e) {
            e.printStackTrace();
        }
        Platform.exit();
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
