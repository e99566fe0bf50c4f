package easewright.editor;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Window;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.robot.BaseRobot;
import org.testfx.robot.KeyboardRobot;
import org.testfx.robot.Motion;
import org.testfx.robot.MouseRobot;
import org.testfx.service.query.PointQuery;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Lends a test the window and a robot whose pointer jumps. What the robot of the library does in parts, each with a rest
 * as long as after the whole, this one does at a stroke: it rests once a click, a chord or a text has been given. A click
 * is for where its target stands when all has been laid out, on a slow machine too.
 */
final class Swift extends ApplicationExtension {
    static {
        System.setProperty("testfx.robot.move_max_count", "1");
        System.setProperty("testfx.robot.write_sleep", "0");
    }

    /** A window that is painted no more is not waited for longer, ms. */
    private static final int WAIT = 5000;

    /** What moves on and on is pressed where it is then. */
    private static final int MOST_MOVES = 8;

    @Override
    public FxRobot clickOn(PointQuery at, Motion motion, MouseButton... buttons) {
        Motion way = at.queryMotion().orElse(motion);
        if (way == Motion.HORIZONTAL_FIRST || way == Motion.VERTICAL_FIRST) {
            // Through menus, which close beside the way.
            return super.clickOn(at, motion, buttons);
        }
        MouseRobot mouse = robotContext().getMouseRobot();
        Point2D place = at.query();
        for (int i = 0; i < MOST_MOVES; i++) {
            mouse.moveNoWait(place);
            untilNextPicture();
            Point2D now = at.query();
            if (now.equals(place)) {
                break;
            }
            // It has found its place only now, or moves for the pointer.
            place = now;
        }
        return clickOn(buttons);
    }

    /** Everything has been laid out once more after what was asked for. */
    private void untilNextPicture() {
        CountDownLatch laidOut = new CountDownLatch(1);
        Scene scene = inFront().getScene();
        WaitForAsyncUtils.waitForAsyncFx(WAIT, () -> {
            scene.addPostLayoutPulseListener(new Runnable() {
                @Override
                public void run() {
                    scene.removePostLayoutPulseListener(this);
                    laidOut.countDown();
                }
            });
            Platform.requestNextPulse();
        });
        try {
            laidOut.await(WAIT, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public FxRobot push(KeyCode... chord) {
        KeyboardRobot keys = robotContext().getKeyboardRobot();
        keys.pressNoWait(chord);
        KeyCode[] back = new KeyCode[chord.length];
        for (int i = 0; i < chord.length; i++) {
            back[i] = chord[chord.length - 1 - i];
        }
        keys.releaseNoWait(back);
        WaitForAsyncUtils.waitForFxEvents();
        return this;
    }

    @Override
    public FxRobot write(String text) {
        BaseRobot keys = robotContext().getBaseRobot();
        Scene scene = inFront().getScene();
        text.chars().forEach(c -> keys.typeKeyboard(scene, KeyCode.UNDEFINED, Character.toString((char) c)));
        WaitForAsyncUtils.waitForFxEvents();
        return this;
    }

    private Window inFront() {
        return listTargetWindows().stream()
                .filter(Window::isFocused)
                .findFirst()
                .orElseGet(this::targetWindow);
    }
}
