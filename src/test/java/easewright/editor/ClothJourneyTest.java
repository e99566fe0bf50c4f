package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Cloth;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is found out about the cloth by hand. */
class ClothJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private Cloth cloth() {
        return desk().pattern().cloth();
    }

    private static boolean seen(FxRobot robot, String id) {
        // What was never unfolded is not in the window.
        for (Node node = robot.lookup(id).tryQuery().orElse(null); node != null; node = node.getParent()) {
            if (!node.isVisible()) {
                return false;
            }
        }
        return robot.lookup(id).tryQuery().isPresent();
    }

    /** Wherever on the sheet the field has been scrolled to. */
    private static void enter(FxRobot robot, String id, String text) {
        TextField field = robot.lookup(id).queryAs(TextField.class);
        robot.interact(field::requestFocus);
        robot.interact(() -> {
            field.setText(text);
            field.fireEvent(new ActionEvent());
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void stretchWashAndTheClassOfAKnit(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        assertThat(seen(robot, "#cloth-stretched"))
                .as("nobody is asked before they look")
                .isFalse();
        robot.clickOn("#cloth-test");
        assertThat(seen(robot, "#cloth-washed")).isTrue();
        assertThat(seen(robot, "#cloth-along"))
                .as("how far a woven stretches matters to nobody")
                .isFalse();
        assertThat(robot.lookup("#cloth-washed").queryAs(TextField.class).getPromptText())
                .as("a length is asked for, and no per cent")
                .isEqualTo("50\u00a0cm");
        enter(robot, "#cloth-washed", "48 cm");
        assertThat(cloth().shrinkage().orElseThrow()).isCloseTo(4, within(1e-9));
        assertThat(cloth().knit()).isFalse();
        enter(robot, "#cloth-washed", "52 cm");
        assertThat(cloth().shrinkage().orElseThrow())
                .as("no cloth grows in the wash")
                .isCloseTo(4, within(1e-9));
        enter(robot, "#cloth-washed", "");
        assertThat(cloth().shrinkage()).isEmpty();

        enter(robot, "#body-hip", "110 cm");
        assertThat(robot.lookup("#cloth-untested").queryAs(Label.class).getText())
                .as("a woven that is too small")
                .isEqualTo("stretch not tested yet");
        assertThat(seen(robot, "#cloth-stretched")).as("there it is asked").isTrue();
        enter(robot, "#cloth-stretched", "12 cm");
        assertThat(cloth().across().orElseThrow()).isCloseTo(20, within(1e-9));
        assertThat(cloth().knit()).as("a woven that stretches stays a woven").isFalse();
        assertThat(seen(robot, "#cloth-said")).isFalse();

        robot.interact(
                () -> robot.lookup("#cloth-knit").queryAs(ToggleButton.class).fire());
        assertThat(robot.lookup("#cloth-said").queryAs(Label.class).getText())
                .contains("is called \u201cstable\u201d")
                .contains("Armstrong")
                .contains("from memory");
    }

    /** Lengthwise, and how far it springs back: kept with the cloth, and shown as the lengths that were found. */
    @Test
    void stretchLengthwiseAndWhatSpringsBack(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(
                () -> robot.lookup("#cloth-knit").queryAs(ToggleButton.class).fire());
        assertThat(seen(robot, "#cloth-stretched"))
                .as("a knit whose stretch is not known is asked for it")
                .isTrue();
        assertThat(robot.lookup("#cloth-rested").query().isDisabled())
                .as("nothing springs back that was not stretched")
                .isTrue();
        enter(robot, "#cloth-stretched", "14 cm");
        enter(robot, "#cloth-along", "12 cm");
        enter(robot, "#cloth-rested", "10.2 cm");
        assertThat(cloth().along().orElseThrow()).isCloseTo(20, within(1e-9));
        assertThat(cloth().recovery().orElseThrow()).isCloseTo(95, within(1e-9));
        enter(robot, "#cloth-rested", "15 cm");
        assertThat(robot.lookup(".complaint").queryAllAs(Label.class).stream()
                        .map(Label::getText)
                        .filter(text -> !text.isEmpty()))
                .as("what is expected stands beside it")
                .containsExactly("It can be 10\u00a0cm to 14\u00a0cm long now. Measure once more.");
        assertThat(cloth().recovery().orElseThrow())
                .as("longer than it was stretched")
                .isCloseTo(95, within(1e-9));
        assertThat(cloth().across().orElseThrow()).isCloseTo(40, within(1e-9));
        assertThat(robot.lookup("#cloth-now").queryAs(Label.class).getText())
                .isEqualTo(
                        "stretches\u00a040\u00a0%\u00a0across, 20\u00a0%\u00a0lengthwise, springs\u00a0back\u00a095\u00a0%");
        enter(robot, "#cloth-along", "");
        assertThat(cloth().along()).isEmpty();
    }
}
