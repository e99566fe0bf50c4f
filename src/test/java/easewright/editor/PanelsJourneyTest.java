package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** How pages, lists and the windows over the table lie. */
class PanelsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private void openSample(FxRobot robot, String sample) throws Exception {
        robot.clickOn("#sample-" + sample);
        until(d -> d.isOpen() && !d.pattern().levels().isEmpty());
        settle(robot);
    }

    private static void settle(FxRobot robot) {
        for (int i = 0; i < 3; i++) {
            WaitForAsyncUtils.waitForFxEvents();
            robot.interact(() -> robot.window(0).getScene().getRoot().layout());
        }
        WaitForAsyncUtils.waitForFxEvents(20);
    }

    /** What is seen of a page: the room it has, less what is left out at its edges; from top to bottom in its content. */
    private static double[] seen(ScrollPane page) {
        double room = page.getViewportBounds().getHeight();
        double whole = page.getContent().getLayoutBounds().getHeight();
        double top = page.getVvalue() * Math.max(0, whole - room);
        return page.getContent().getClip() instanceof Rectangle clip
                ? new double[] {clip.getY(), clip.getY() + clip.getHeight()}
                : new double[] {top, top + room};
    }

    private static void noLineIsCut(ScrollPane page, String when) {
        double[] seen = seen(page);
        Node content = page.getContent();
        assertThat(seen[1] - seen[0]).as("most of the page is seen, %s", when).isGreaterThan(100);
        for (Node node : content.lookupAll(".text")) {
            if (node instanceof Text text && !text.getText().isBlank() && shown(text)) {
                Bounds at = content.sceneToLocal(text.localToScene(text.getLayoutBounds()));
                boolean oneLine = at.getHeight() < text.getFont().getSize() * 1.8;
                for (double edge : seen) {
                    boolean cut = at.getMinY() < edge - 2 && at.getMaxY() > edge + 2;
                    assertThat(oneLine && cut)
                            .as("%s, %s", text.getText(), when)
                            .isFalse();
                }
            }
        }
    }

    private static boolean shown(Node node) {
        return node == null || node.isVisible() && shown(node.getParent());
    }

    @Test
    void noLineOfAPageIsCutInItsHeight(FxRobot robot) throws Exception {
        openSample(robot, "trousers");
        ScrollPane ease = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        for (int i = 0; i <= 20; i++) {
            double at = i / 20.0;
            robot.interact(() -> ease.setVvalue(at));
            settle(robot);
            noLineIsCut(ease, "scrolled to " + at);
        }
        robot.interact(() -> ease.setVvalue(0));
        settle(robot);
        // The page ends with a whole level: nothing of it has to be left out.
        double[] seen = seen(ease);
        Node last = robot.lookup(".ease-row").queryAll().stream()
                .filter(row -> inContent(ease, row).getMaxY() <= seen[1] + 0.5)
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(inContent(ease, last).getMaxY()).isBetween(seen[1] - 7, seen[1]);
    }

    private static Bounds inContent(ScrollPane page, Node node) {
        return page.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds()));
    }

    @Test
    void edgesAreChosenByTheirPiecesAndThoseOfThePieceInHandFirst(FxRobot robot) throws Exception {
        openSample(robot, "trousers");
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        var pieces = desk().pattern().pieces();
        ComboBox<?> choice = robot.lookup("#piece-choice").queryAs(ComboBox.class);
        robot.interact(() -> choice.getSelectionModel().select(1));
        robot.clickOn("#step-levels");
        settle(robot);
        MenuButton along = robot.lookup("#marks .menu-button").queryAllAs(MenuButton.class).stream()
                .filter(m -> m.isVisible() && m.getText().startsWith("Along"))
                .findFirst()
                .orElseThrow();
        List<MenuItem> offered = along.getItems();
        assertThat(offered).hasSize(pieces.size()).allSatisfy(i -> assertThat(i).isInstanceOf(Menu.class));
        assertThat(offered.get(0).getText()).isEqualTo(pieces.get(1).name());
        assertThat(offered.get(1).getText()).isEqualTo(pieces.get(0).name());
        assertThat(((Menu) offered.get(0)).getItems())
                .extracting(MenuItem::getText)
                .containsExactlyElementsOf(
                        pieces.get(1).edges().stream().map(e -> e.name()).toList());
        String level = desk().pattern().levels().get(0).name();
        robot.interact(() -> ((Menu) offered.get(0)).getItems().get(0).fire());
        assertThat(desk().pattern().level(level)).isPresent();
        assertThat(desk().history().canUndo()).isTrue();
    }

    /** What is asked of the garment comes before a list of pieces that may be long, and the table steps back. */
    @Test
    void theTableStepsBackBehindThePrintsAndCautionsStandAboveThePieces(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        Node root = stage.getScene().getRoot();
        assertThat(root.getOpacity()).isEqualTo(1);
        robot.clickOn("#print");
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup("#print-save").tryQuery().isPresent());
        settle(robot);
        assertThat(root.getOpacity()).isLessThan(1);
        CheckBox child = robot.lookup("#print-use-child").queryAs(CheckBox.class);
        CheckBox piece = robot.lookup("#print-piece-skirt-back").queryAs(CheckBox.class);
        assertThat(child.localToScene(0, 0).getY())
                .isLessThan(piece.localToScene(0, 0).getY());
        robot.interact(() -> ((Stage) child.getScene().getWindow()).close());
        settle(robot);
        assertThat(root.getOpacity()).isEqualTo(1);
    }
}
