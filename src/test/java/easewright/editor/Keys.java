package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A hand on the keyboard of a window off screen. It goes on as soon as the window's thread has done what a key asks for,
 * where the robot rests a good while after each.
 */
final class Keys {
    private static final int MOST_STEPS = 120;

    private final Stage stage;

    Keys(Stage stage) {
        this.stage = stage;
    }

    /** Presses keys one on top of the other. */
    Keys press(KeyCode... together) {
        List<KeyCode> down = new ArrayList<>();
        for (KeyCode key : together) {
            // A window off screen has the keys of neither platform; its shortcut key is this one.
            down.add(key == KeyCode.SHORTCUT ? KeyCode.CONTROL : key);
        }
        onWindow(() -> {
            Robot robot = new Robot();
            down.forEach(robot::keyPress);
            Collections.reverse(down);
            down.forEach(robot::keyRelease);
            return null;
        });
        settle();
        return this;
    }

    /** Presses one key several times. */
    Keys times(int count, KeyCode... together) {
        for (int i = 0; i < count; i++) {
            press(together);
        }
        return this;
    }

    /** Types a text. */
    Keys write(String text) {
        text.codePoints()
                .forEach(character -> onWindow(() -> {
                    String typed = Character.toString(character);
                    Event.fireEvent(
                            stage.getScene().getFocusOwner(),
                            new KeyEvent(KeyEvent.KEY_TYPED, typed, "", KeyCode.UNDEFINED, false, false, false, false));
                    return null;
                }));
        settle();
        return this;
    }

    /** Types a text in place of what stands in a field, and takes it. */
    Keys fill(String text) {
        return press(KeyCode.SHORTCUT, KeyCode.A).write(text).press(KeyCode.ENTER);
    }

    /** From control to control until the one is reached. */
    Keys tabTo(String id) {
        for (int i = 0; i < MOST_STEPS && !focused().equals(id); i++) {
            press(KeyCode.TAB);
        }
        assertThat(focused()).isEqualTo(id);
        return this;
    }

    /** What has the keys. */
    String focused() {
        return onWindow(() -> {
            Node owner = stage.getScene().getFocusOwner();
            return owner == null || owner.getId() == null ? "" : owner.getId();
        });
    }

    /** What a key has put off until the next picture has been done after this. */
    private static void settle() {
        onWindow(() -> null);
        onWindow(() -> null);
    }

    private static <T> T onWindow(Callable<T> act) {
        try {
            return WaitForAsyncUtils.asyncFx(act).get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }
}
