package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What stands on the table and beside it can be told apart, stands in line and goes when it is done with. */
class TableJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private void openUntrue(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().open(Path.of("src/test/resources/command/untrue-bodice.svg")));
        until(Desk::isOpen);
        robot.clickOn("#page-true");
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup("#true-make-0").tryQuery().isPresent());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void theSignsOfAllChangesStandOneBelowTheOther(FxRobot robot) throws Exception {
        openUntrue(robot);
        robot.clickOn("#true-make-0");
        until(d -> d.history().canUndo());
        robot.interact(() -> app.session().chooseLevel("waist"));
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(10)));
        robot.interact(() -> app.session().keep());
        robot.clickOn("#page-changes");
        for (String sign : List.of("up", "down", "remove")) {
            assertThat(left(robot, "#change-" + sign + "-0"))
                    .as(sign)
                    .isEqualTo(left(robot, "#change-" + sign + "-" + last(robot)));
        }
    }

    private static int last(FxRobot robot) {
        return robot.lookup(".change-row").queryAll().size() - 1;
    }

    private static double left(FxRobot robot, String id) {
        Node node = robot.lookup(id).query();
        return node.localToScene(node.getLayoutBounds()).getMinX();
    }
}
