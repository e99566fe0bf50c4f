package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The changes beside a larger size. */
class SizeUpJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Test
    void theLevelOfTheComparisonIsChosen(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#unit-inch");
        write(robot, "#amount", "1 7/8 in");
        robot.clickOn("#keep").clickOn("#page-size");
        assertThat(robot.lookup("#size-levels").query().isVisible())
                .as("one change, one level")
                .isFalse();
        robot.interact(() -> app.session().chooseLevel("waist"));
        write(robot, "#amount", "1/2 in");
        robot.clickOn("#keep");
        assertThat(robot.lookup("#size-at-waist").queryAs(ToggleButton.class).isSelected())
                .isTrue();
        robot.clickOn("#size-at-hip");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#size-at-hip").queryAs(ToggleButton.class).isSelected())
                .isTrue();
        assertThat(robot.lookup(".page-intro").queryAllAs(Label.class))
                .anyMatch(l -> l.getText().contains("to a hip girth"));
    }
}
