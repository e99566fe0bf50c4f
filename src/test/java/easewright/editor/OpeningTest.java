package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.Ink;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.paint.Paint;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** A window by lamplight is there before what lies in it. */
class OpeningTest extends Journey {
    private boolean shownAtOnce;
    private boolean empty;
    private Paint ground;

    @Override
    Path state() throws Exception {
        Path state = super.state();
        Files.writeString(state.resolve("settings.properties"), "dark=true\n");
        return state;
    }

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        shownAtOnce = shown.isShowing();
        empty = shown.getScene().lookup("#start") == null;
        ground = shown.getScene().getFill();
    }

    @Test
    void isShownInTheColourOfTheTableAndFilledThen(FxRobot robot) {
        assertThat(shownAtOnce).isTrue();
        assertThat(empty).isTrue();
        assertThat(ground).isEqualTo(Ink.DARK.table());
        Node start = robot.lookup("#start").query();
        assertThat(start.isVisible()).isTrue();
        assertThat(start.getEffect()).as("its shadow").isNotNull();
        assertThat(robot.lookup("#start-open").queryAs(Button.class).isDisabled())
                .isFalse();
        assertThat(stage.getTitle()).isEqualTo(desk().words().of("editor.title"));
    }

    /** What lies in a window is styled and laid out with it, whether it is hidden or not. */
    @Test
    void pagesCannotBeFoundInItBeforeTheyAreTurnedTo(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        assertThat(robot.lookup("#ease-sheet").tryQuery()).isPresent();
        for (String hidden : List.of("#marks", "#notes", "#cloth-stretched")) {
            assertThat(robot.lookup(hidden).tryQuery()).as(hidden).isEmpty();
        }
        robot.clickOn("#page-notes");
        assertThat(robot.lookup("#notes").tryQuery()).isPresent();
        robot.clickOn("#page-ease").clickOn("#cloth-test");
        assertThat(robot.lookup("#cloth-stretched").tryQuery()).isPresent();
    }
}
