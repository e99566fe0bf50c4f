package easewright.editor;

import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import easewright.text.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/**
 * Plays something in the editor's window, step by step from a thread of its own, and takes pictures of it into the
 * folder named first on the command line. {@code --size=1280x800} is how large the window is where the play does not
 * say, {@code --dark} is by lamplight, {@code --inch} in inches. Needs a display (Xvfb will do).
 */
abstract class Director extends Application {
    private static final int MOST_RESTS = 40;
    private static Exception failed;

    final Answers answers = new Answers();
    final EditorApp app = new EditorApp();
    private Path folder;
    private Path state;
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
        folder = Files.createDirectories(Path.of(getParameters().getUnnamed().get(0)));
        state = Files.createTempDirectory("easewright");
        app.start(stage, state, answers);
        app.session().setDark(getParameters().getUnnamed().contains("--dark"));
        if (getParameters().getUnnamed().contains("--inch")) {
            app.session().setUnit(LengthUnit.INCH);
        }
        Thread director = new Thread(this::playToTheEnd, "director");
        director.setDaemon(true);
        director.start();
    }

    private void playToTheEnd() {
        try {
            Journey.untilFilled(stage);
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
        press(stage, id);
    }

    /** Presses a button of another window. */
    static void press(Stage window, String id) throws InterruptedException {
        rest();
        act(() -> ((ButtonBase) find(window, id)).fire());
    }

    /** Until a button is there to be pressed: what it is about may be thought over away from the window. */
    void until(String id) throws InterruptedException {
        until(stage, id);
    }

    /** The same in another window. */
    static void until(Stage window, String id) throws InterruptedException {
        until(
                "something to press at " + id,
                () -> window.getScene().lookup(id) instanceof ButtonBase button
                        && isSeen(button)
                        && !button.isDisabled());
    }

    private static boolean isSeen(Node node) {
        return node == null || node.isVisible() && isSeen(node.getParent());
    }

    /** Until something has come about, which is looked at on the window's own thread. */
    static void until(String what, BooleanSupplier come) throws InterruptedException {
        AtomicBoolean there = new AtomicBoolean();
        for (int i = 0; i < MOST_RESTS && !there.get(); i++) {
            rest();
            act(() -> there.set(come.getAsBoolean()));
        }
        if (!there.get()) {
            throw new IllegalStateException("It did not come: " + what);
        }
    }

    /** Types into a field and presses Enter. */
    void type(String id, String text) throws InterruptedException {
        rest();
        act(() -> {
            TextField field = (TextField) find(stage, id);
            field.requestFocus();
            field.setText(text);
            field.fireEvent(new ActionEvent());
        });
    }

    private static Node find(Stage window, String id) {
        Node found = window.getScene().lookup(id);
        if (found == null) {
            throw new IllegalStateException("No " + id);
        }
        return found;
    }

    /** Something of the window by its id. */
    Node find(String id) {
        return find(stage, id);
    }

    /** Whether a button is on show. */
    boolean shows(String id) throws InterruptedException {
        rest();
        AtomicBoolean there = new AtomicBoolean();
        act(() -> there.set(stage.getScene().lookup(id) instanceof ButtonBase));
        return there.get();
    }

    /** Clicks on a place of the table, mm. */
    void clickOn(Point place) throws InterruptedException {
        act(() -> {
            CuttingTable table = (CuttingTable) find("#table");
            Point at = table.view().toScreen(place);
            Point2D screen = table.localToScreen(at.x(), at.y());
            Robot hand = new Robot();
            hand.mouseMove(screen);
            hand.mouseClick(MouseButton.PRIMARY);
        });
    }

    /** Scrolls a page, or what is scrolled in it, to a share of its length. */
    void scroll(String page, double to) throws InterruptedException {
        act(() -> Stream.concat(Stream.of(find(page)), find(page).lookupAll(".scroll-pane").stream())
                .filter(ScrollPane.class::isInstance)
                .forEach(n -> ((ScrollPane) n).setVvalue(to)));
    }

    /** The window over that of the editor. */
    Stage other() {
        return (Stage) Window.getWindows().stream()
                .filter(w -> w != stage && w instanceof Stage)
                .findFirst()
                .orElseThrow();
    }

    /** As large as was asked for on the command line. */
    void size() throws InterruptedException {
        String[] sides =
                getParameters().getNamed().getOrDefault("size", "1280x800").split("x", 2);
        size(Double.parseDouble(sides[0]), Double.parseDouble(sides[1]));
    }

    void size(double width, double height) throws InterruptedException {
        act(() -> {
            stage.setX(0);
            stage.setY(0);
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

    /** A picture of the screen where the window is, with whatever lies over it, in the screen's own pixels. */
    void picture(String name) throws InterruptedException {
        rest();
        act(() -> write(
                new Robot()
                        .getScreenCapture(
                                null,
                                new Rectangle2D(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight()),
                                false),
                folder.resolve(name + ".png")));
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
