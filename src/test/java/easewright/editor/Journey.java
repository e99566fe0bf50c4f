package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseLine;
import easewright.editor.model.Desk;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.api.FxToolkitContext;
import org.testfx.service.support.FiredEvents;
import org.testfx.util.WaitForAsyncUtils;

/** A whole task in the window, with mouse and keyboard. Settings and unsaved work are kept in a folder of its own. */
@ExtendWith(Swift.class)
abstract class Journey {
    @TempDir
    static Path folder;

    final EditorApp app = new EditorApp();
    final Answers answers = new Answers();
    Stage stage;

    /** Opens the window. Each test class calls it from its own start method, where the extension looks for one. */
    void open(Stage shown) throws Exception {
        stage = shown;
        app.start(stage, state(), answers);
        stage.requestFocus();
    }

    /** A window is shown empty and filled a moment later; the bar for work left behind comes last. */
    @BeforeEach
    void untilFilled() throws TimeoutException {
        untilFilled(stage);
        ofOneSize(stage);
    }

    /** One stage is lent to all test classes: shown again it has the size that the last one left it. */
    static void ofOneSize(Stage shown) {
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            shown.setWidth(1280);
            shown.setHeight(800);
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    static void untilFilled(Stage shown) throws TimeoutException {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> shown.getScene().lookup("#left-behind") != null);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @AfterEach
    void close() {
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> app.files().close());
        forgetEvents();
    }

    /** The robot's library keeps every event of the stage it lends, and with it the window in which it happened. */
    static void forgetEvents() {
        try {
            Field kept = FxToolkitContext.class.getDeclaredField("firedEvents");
            kept.setAccessible(true);
            FiredEvents events = (FiredEvents) kept.get(FxToolkit.toolkitContext());
            WaitForAsyncUtils.waitForAsyncFx(5000, events::clearEvents);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Where settings and unsaved work are kept. */
    Path state() throws Exception {
        return Files.createTempDirectory(folder, "state");
    }

    /** Files of work that is kept from a crash. */
    static List<Path> kept(Path state) throws IOException {
        Path recovery = state.resolve("recovery");
        if (!Files.isDirectory(recovery)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(recovery)) {
            return all.filter(p -> p.toString().endsWith(".kept")).toList();
        }
    }

    /** What is said over the table; empty for nothing. */
    String said() {
        return desk().notice().map(n -> desk().words().of(n.key(), n.values())).orElse("");
    }

    Desk desk() {
        return app.session().desk();
    }

    void until(Predicate<Desk> wanted) throws TimeoutException {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> wanted.test(desk()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Until the changes are made again that something was asked of: between one and the next nothing is going on. */
    void untilMade() throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> WaitForAsyncUtils.waitForAsyncFx(
                        20_000,
                        () -> app.files().background().workProperty().get().isEmpty()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    EaseLine line(String level) {
        return desk().shownReading().sheet().lines().stream()
                .filter(l -> l.level().name().equals(level))
                .findFirst()
                .orElseThrow();
    }

    /** What is suggested is thought about away from the window. */
    static void untilThought(FxRobot robot) throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#suggest-accept").query().isDisabled());
        WaitForAsyncUtils.waitForFxEvents();
    }

    void openTheSkirt(FxRobot robot) throws TimeoutException {
        robot.clickOn("#sample-skirt");
        until(Desk::isOpen);
        robot.clickOn("#ease-hip .level-name");
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
    }

    /** Unfolds the settings of how a change is made. */
    static void openHow(FxRobot robot) {
        ToggleButton how = robot.lookup("#here-how").queryAs(ToggleButton.class);
        if (!how.isSelected()) {
            robot.interact(how::fire);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Unfolds all of the place for an amount, beside a page that is read. */
    static void unfoldHere(FxRobot robot) {
        robot.clickOn("#here-less");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isShown(robot.lookup("#here-how").query())).isTrue();
    }

    /** Whether something is there to be seen, with all that it lies in. */
    static boolean isShown(Node node) {
        return node == null || node.isVisible() && isShown(node.getParent());
    }

    static void write(FxRobot robot, String field, String text) {
        robot.clickOn(field);
        robot.push(KeyCode.SHORTCUT, KeyCode.A).write(text).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Whether anything there is told to be wrong. */
    static boolean complains(FxRobot robot, String around) {
        WaitForAsyncUtils.waitForFxEvents();
        return !robot.lookup(around + " .complaint")
                .match(n -> n.isVisible() && !((Labeled) n).getText().isEmpty())
                .queryAll()
                .isEmpty();
    }

    /** Where a place of the table lies on the screen. */
    static Point2D onScreen(FxRobot robot, Point place) {
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point at = table.view().toScreen(place);
        return table.localToScreen(at.x(), at.y());
    }
}
