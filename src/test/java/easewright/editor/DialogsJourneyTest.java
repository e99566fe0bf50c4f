package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.file.Dialogs;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is asked in the very dialogs that the user meets, answered with the keys. */
class DialogsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        app.start(stage, state(), new Dialogs(stage, () -> app.session().desk().words()));
        stage.requestFocus();
    }

    private Asking dialogs() {
        return new Dialogs(stage, () -> desk().words());
    }

    private Asking.Leave leaving(FxRobot robot, KeyCode... keys) throws Exception {
        return answered(robot, a -> a.leaving("skirt.svg"), keys);
    }

    private Asking.Meanwhile meanwhile(FxRobot robot, KeyCode... keys) throws Exception {
        return answered(robot, a -> a.changedMeanwhile("skirt.svg"), keys);
    }

    private boolean throwAway(FxRobot robot, KeyCode... keys) throws Exception {
        return answered(robot, a -> a.throwAway("skirt.svg"), keys);
    }

    /** Asks, presses the keys once the dialog is there, and gives what was answered. */
    private <T> T answered(FxRobot robot, Function<Asking, T> question, KeyCode... keys) throws Exception {
        AtomicReference<T> answer = new AtomicReference<>();
        Platform.runLater(() -> answer.set(question.apply(dialogs())));
        press(robot, keys);
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> answer.get() != null);
        return answer.get();
    }

    private static void press(FxRobot robot, KeyCode... keys) throws Exception {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> asks(robot));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".dialog-pane .button").queryAllAs(Button.class))
                .as("answers are to be read whole")
                .allSatisfy(b -> assertThat(b.getWidth()).isGreaterThanOrEqualTo(b.prefWidth(-1)));
        robot.push(keys[0]);
        for (int i = 1; i < keys.length; i++) {
            WaitForAsyncUtils.waitForFxEvents();
            robot.push(keys[i]);
        }
    }

    private static boolean asks(FxRobot robot) {
        return robot.lookup(".dialog-pane")
                .tryQuery()
                .filter(n -> n.getScene().getWindow().isFocused())
                .isPresent();
    }

    @Test
    void enterAndEscapeNeverTakeTheAnswerThatCannotBeTakenBack(FxRobot robot) throws Exception {
        assertThat(leaving(robot, KeyCode.ENTER)).isEqualTo(Asking.Leave.SAVE_FIRST);
        assertThat(leaving(robot, KeyCode.ESCAPE)).isEqualTo(Asking.Leave.STAY);
        assertThat(meanwhile(robot, KeyCode.ENTER)).isEqualTo(Asking.Meanwhile.OTHER_NAME);
        assertThat(meanwhile(robot, KeyCode.ESCAPE)).isEqualTo(Asking.Meanwhile.STAY);
        assertThat(throwAway(robot, KeyCode.ENTER)).isFalse();
        assertThat(throwAway(robot, KeyCode.ESCAPE)).isFalse();
        assertThat(throwAway(robot, KeyCode.SPACE)).isFalse();
    }

    /** The keyboard begins at the safe answer, and each other one is a Tab away. */
    @Test
    void tabAndSpaceReachEveryAnswer(FxRobot robot) throws Exception {
        assertThat(leaving(robot, KeyCode.SPACE)).isEqualTo(Asking.Leave.SAVE_FIRST);
        assertThat(leaving(robot, KeyCode.TAB, KeyCode.SPACE)).isEqualTo(Asking.Leave.WITHOUT_SAVING);
        assertThat(leaving(robot, KeyCode.TAB, KeyCode.TAB, KeyCode.SPACE)).isEqualTo(Asking.Leave.STAY);
        assertThat(leaving(robot, KeyCode.TAB, KeyCode.TAB, KeyCode.ENTER)).isEqualTo(Asking.Leave.STAY);
        assertThat(meanwhile(robot, KeyCode.TAB, KeyCode.SPACE)).isEqualTo(Asking.Meanwhile.REPLACE);
        assertThat(throwAway(robot, KeyCode.TAB, KeyCode.SPACE)).isTrue();
    }

    /** The whole way: the window is closed, the work is saved on the way or stays. */
    @Test
    void closingAWindowWithUnsavedWorkAsks(FxRobot robot) throws Exception {
        Path file = Files.write(
                folder.resolve("closing.svg"), Sample.all().get(0).read().bytes());
        byte[] before = Files.readAllBytes(file);
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.interact(() -> {
            app.session().chooseLevel("hip");
            app.session().want(desk().wanted().orElseThrow().withAmount(20));
            app.session().keep();
        });
        close(KeyCode.ESCAPE, robot);
        assertThat(stage.isShowing()).isTrue();
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        close(KeyCode.ENTER, robot);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !stage.isShowing());
        assertThat(desk().isSaved()).isTrue();
        assertThat(Files.readAllBytes(file)).isNotEqualTo(before);
        assertThat(file.resolveSibling("closing.svg.bak")).hasBinaryContent(before);
    }

    private void close(KeyCode key, FxRobot robot) throws Exception {
        Platform.runLater(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        press(robot, key);
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !asks(robot));
    }
}
