package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the place for "this much, here" has to say is in sight, whatever page stands above it and however low it is. */
class ToldInSightJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static void settle(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> robot.window(0).getScene().getRoot().layout());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static Bounds place(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private static ScrollPane room(FxRobot robot) {
        return robot.lookup("#here .here-room").queryAs(ScrollPane.class);
    }

    private static void isInSight(FxRobot robot, Node node) {
        assertThat(node.isVisible()).isTrue();
        Bounds room = place(room(robot));
        Bounds at = place(node);
        assertThat(at.getMinY()).as("top of %s", node).isGreaterThanOrEqualTo(room.getMinY() - 0.5);
        assertThat(at.getMaxY()).as("foot of %s", node).isLessThanOrEqualTo(room.getMaxY() + 0.5);
    }

    /** The sample skirt: 5 cm of ease at the hip. */
    @ParameterizedTest
    @ValueSource(strings = {"ease", "true", "changes", "notes"})
    void theEaseThatComesIsToldBelowEveryPage(String page, FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-" + page);
        write(robot, "#amount", "2 cm");
        until(d -> d.shownTrial().isPresent());
        settle(robot);
        Label outcome = robot.lookup("#outcome").queryAs(Label.class);
        assertThat(outcome.getText())
                .startsWith(
                        page.equals("ease")
                                ? "hip: ease from 5\u00a0cm to 7\u00a0cm."
                                : "hip: ease 5\u00a0cm \u2192 7\u00a0cm");
        assertThat(((Text) outcome.lookup(".text")).getText().replaceAll("[ \n]+", " "))
                .as("no part of it is cut off")
                .isEqualTo(outcome.getText().replaceAll("[ \n]+", " "));
        isInSight(robot, outcome);
    }

    /** In a low window, and wherever its settings were scrolled to: first the question, then the answer with its press. */
    @Test
    void whereItBelongsIsAskedAndAnsweredInSight(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> robot.window(0).setHeight(600));
        write(robot, "#amount", "2 cm");
        settle(robot);
        robot.interact(() -> room(robot).setVvalue(1));
        robot.clickOn("#ask-where");
        settle(robot);
        Node feels = robot.lookup("#feels-pulls").query();
        assertThat(feels.getScene().getFocusOwner())
                .isEqualTo(robot.lookup("#where .chip").query());
        isInSight(robot, robot.lookup("#where .label").query());
        isInSight(robot, feels);
        robot.clickOn(feels).clickOn("#sign-tight-all-round");
        settle(robot);
        assertThat(room(robot).getContent().getLayoutBounds().getHeight())
                .as("not all of it has room")
                .isGreaterThan(room(robot).getViewportBounds().getHeight() + 1);
        assertThat(room(robot).getVvalue()).isPositive();
        isInSight(robot, robot.lookup("#sign-tight-all-round").query());
        isInSight(robot, robot.lookup("#where-take").query());
    }
}
