package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Nothing moves under the mouse while suggestions are unticked. */
class SuggestionsStayJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static CheckBox box(FxRobot robot, String said) {
        return robot.lookup(n -> n instanceof CheckBox box && said.equals(box.getAccessibleText()))
                .queryAs(CheckBox.class);
    }

    private static ScrollPane page(Node part) {
        Node around = part;
        while (!(around instanceof ScrollPane)) {
            around = around.getParent();
        }
        return (ScrollPane) around;
    }

    private static double top(CheckBox box) {
        return box.localToScreen(new Point2D(0, 0)).getY();
    }

    @Test
    void whatIsUntickedStaysInItsPlace(FxRobot robot) throws Exception {
        Path file = folder.resolve("blouse.svg");
        Files.copy(Path.of("src/test/resources/bare/yoke-blouse.svg"), file);
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#step-suggested");
        untilThought(robot);

        // Seen and clicked on at the end of the list: the edges of the sleeve take seams and a level with them.
        CheckBox sleeve = box(robot, "Edges: cap, right underarm, hem, left underarm (Sleeve)");
        robot.interact(() -> page(sleeve).setVvalue(1));
        WaitForAsyncUtils.waitForFxEvents();
        CheckBox cuff = box(robot, "Sewn together: cuff");
        double place = top(sleeve);
        robot.clickOn(sleeve);
        untilThought(robot);
        assertThat(sleeve.isSelected()).isFalse();
        assertThat(top(sleeve)).isCloseTo(place, within(0.5));
        assertThat(box(robot, "Sewn together: cuff")).isSameAs(cuff);
        assertThat(cuff.isDisabled()).isTrue();
        robot.clickOn(sleeve);
        untilThought(robot);
        assertThat(sleeve.isSelected()).isTrue();
        assertThat(top(sleeve)).isCloseTo(place, within(0.5));
        assertThat(cuff.isDisabled()).isFalse();
    }
}
