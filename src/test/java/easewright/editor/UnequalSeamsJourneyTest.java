package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.Cutting;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A skirt drawn with sides that do not fit: from the note of it to a way out, looked at, taken back and kept. */
class UnequalSeamsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private void openUnequal(FxRobot robot) throws Exception {
        Path file = folder.resolve("unequal.svg");
        Files.writeString(
                file,
                Files.readString(Path.of("sample-pieces/skirt.svg"))
                        .replace("L400,730 L655,730", "L400,722 L655,730")
                        .replace("\"400 730\"", "\"400 722\"")
                        .replace("via=\"527.5 730\"", "via=\"527.5 726\""));
        robot.interact(() -> app.files().open(file));
        until(d -> d.isOpen());
    }

    private static void untilThere(FxRobot robot, String id) throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup(id)
                        .match(n -> n.isVisible() && !n.isDisabled())
                        .tryQuery()
                        .isPresent());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private double drift() {
        return desk().shownReading().measures().mate("side seam").orElseThrow().drift();
    }

    @Test
    void fromTheNoteToAWayOut(FxRobot robot) throws Exception {
        openUnequal(robot);
        double before = drift();
        assertThat(Math.abs(before)).isGreaterThan(Cutting.WORKS);
        robot.clickOn("#page-notes");
        untilThere(robot, "Make it fit \u2026");
        robot.clickOn("Make it fit \u2026");
        untilThere(robot, "#follow-take-0");
        assertThat(stage.getScene().getFocusOwner().getId()).isEqualTo("follow-take-0");

        robot.clickOn("#follow-take-0");
        until(d -> d.shownTrial().isPresent());
        assertThat(drift()).isCloseTo(0, within(1e-6));
        assertThat(robot.lookup("#outcome").queryAs(Label.class).getText()).startsWith("Front, side: length +0.8");
        robot.clickOn("#leave");
        until(d -> d.trial().isEmpty());
        assertThat(drift()).isEqualTo(before);
        assertThat(desk().pattern().changes()).isEmpty();

        untilThere(robot, "#follow-take-0-1");
        robot.clickOn("#follow-take-0-1").clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(drift()).isCloseTo(0, within(1e-6));
        assertThat(robot.lookup("#outcome").queryAs(Label.class).getText())
                .startsWith("Kept: Back, side: length \u22120.8")
                .endsWith("The page Changes lists it.");
    }

    /** The list cannot be pressed while one of its ways is tried: the keys go on where that is decided. */
    @Test
    void aWayOutIsTriedAndKeptByKeys(FxRobot robot) throws Exception {
        openUnequal(robot);
        robot.clickOn("#page-true");
        untilThere(robot, "#follow-take-0");
        Keys keys = new Keys(stage);
        robot.interact(() -> robot.lookup("#follow-take-0").query().requestFocus());
        keys.press(KeyCode.SPACE);
        until(d -> d.shownTrial().isPresent());
        assertThat(stage.getScene().getFocusOwner().getId()).isEqualTo("keep");

        keys.press(KeyCode.ALT, KeyCode.DIGIT0);
        assertThat(stage.getScene().getFocusOwner().getId()).isEqualTo("amount");
        keys.press(KeyCode.ENTER);
        until(d -> d.pattern().changes().size() == 1);
        assertThat(drift()).isCloseTo(0, within(1e-6));
        keys.press(KeyCode.ENTER);
        assertThat(desk().pattern().changes()).as("nothing more to keep").hasSize(1);
    }
}
