package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.editor.paint.Viewport;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Box;
import easewright.pattern.Piece;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javafx.css.PseudoClass;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
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

    /** Which of the findings the table shows is to be seen in the list, and what its lines mean on the table. */
    @Test
    void theFindingThatIsShownIsMarkedAndItsLinesAreExplained(FxRobot robot) throws Exception {
        openUntrue(robot);
        Node legend = robot.lookup("#legend").query();
        for (int i = 0; i < 2; i++) {
            robot.clickOn("#true-show-" + i);
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(robot.lookup(".true-row").queryAllAs(Node.class))
                    .filteredOn(row -> row.getPseudoClassStates().contains(PseudoClass.getPseudoClass("chosen")))
                    .extracting(Node::getId)
                    .containsExactly("true-" + i);
            assertThat(legend.isVisible()).isTrue();
            assertThat(robot.lookup("#legend .label").queryAllAs(Labeled.class))
                    .extracting(Labeled::getText)
                    .contains("would be drawn so", "the place", "stitching line now");
        }
        robot.clickOn("#page-notes");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".true-row").queryAllAs(Node.class))
                .noneMatch(row -> row.getPseudoClassStates().contains(PseudoClass.getPseudoClass("chosen")));
    }

    /** The room that is kept beside a word for a number is not underlined. */
    @Test
    void theLineBelowATabIsAsWideAsItsWord(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        for (String page : List.of("true", "notes", "ease")) {
            robot.clickOn("#page-" + page);
            WaitForAsyncUtils.waitForFxEvents();
            Node line = robot.lookup("#page-" + page + " .sheet-tab-line").query();
            Node word =
                    robot.lookup("#page-" + page + " .sheet-tab-word .label").query();
            assertThat(line.localToScene(line.getLayoutBounds()).getWidth())
                    .as(page)
                    .isEqualTo(word.localToScene(word.getLayoutBounds()).getWidth());
            assertThat(right(line)).as(page).isEqualTo(right(word));
        }
        Desk skirt = desk();
        robot.interact(() -> app.files().open(Path.of("src/test/resources/command/untrue-bodice.svg")));
        until(d -> d.isOtherWork(skirt));
        robot.clickOn("#page-true");
        WaitForAsyncUtils.waitForFxEvents();
        Node counted = robot.lookup("#page-true .sheet-tab-word").query();
        Node line = robot.lookup("#page-true .sheet-tab-line").query();
        assertThat(right(line)).as("with its number").isCloseTo(right(counted), within(0.5));
    }

    /** The table has the keys then, which is seen with the first of them. */
    @Test
    void whatWasJustOpenedIsNotFramed(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.push(KeyCode.F6);
        assertThat(framed()).isTrue();
        Desk skirt = desk();
        robot.interact(() -> app.files().open(Path.of("src/test/resources/command/untrue-bodice.svg")));
        until(d -> d.isOtherWork(skirt));
        assertThat(framed()).isFalse();
        robot.push(KeyCode.F6);
        assertThat(framed()).isTrue();
    }

    private boolean framed() {
        return stage.getScene().getRoot().getPseudoClassStates().contains(PseudoClass.getPseudoClass("by-keys"));
    }

    /** However long the names of pieces are, what is said beside the table keeps to its place. */
    @Test
    void longNamesWidenNothing(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        String name = "Front bodice lining with the princess seam, upper left part 2";
        robot.interact(() -> app.session()
                .edit(desk().pattern()
                        .withPieces(desk().pattern().pieces().stream()
                                .map(p -> p.withName(name + " " + p.name()))
                                .toList())));
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(20)));
        WaitForAsyncUtils.waitForFxEvents();
        robot.clickOn("#here-how");
        WaitForAsyncUtils.waitForFxEvents();
        double edge = right(robot.lookup("#here").query());
        Set<Node> chips = robot.lookup("#here .chip").queryAll();
        assertThat(chips).hasSizeGreaterThan(3).allMatch(chip -> !chip.isVisible() || right(chip) < edge);
        assertThat(right(robot.lookup("#outcome").query())).isLessThan(edge);
    }

    private static double right(Node node) {
        return node.localToScene(node.getLayoutBounds()).getMaxX();
    }

    private static int last(FxRobot robot) {
        return robot.lookup(".change-row").queryAll().size() - 1;
    }

    private static double left(FxRobot robot, String id) {
        Node node = robot.lookup(id).query();
        return node.localToScene(node.getLayoutBounds()).getMinX();
    }

    /** What is said over the foot of the table lies beside the pieces or below them, as long as all are to be seen. */
    @Test
    void nothingThatIsSaidLiesOverAPiece(FxRobot robot) throws Exception {
        List<Desk.Notice> all = List.of(
                new Desk.Notice(
                        false,
                        "editor.said.saved",
                        Map.of(
                                "file", "trousers-with-room.svg",
                                "does", " Redrawn: Back and Front. All else is as it was.",
                                "still", " Switched off, and so still missing: hip 3 cm."),
                        false),
                new Desk.Notice(
                        true, "editor.said.failed", Map.of("file", "a-file.svg", "reason", "nothing there"), true));
        robot.interact(() -> app.files().open(Path.of("src/test/resources/marking/four-pieces.svg")));
        until(Desk::isOpen);
        nothingLiesOverAPiece(robot, all);
        robot.interact(() -> app.files().openSample(Sample.all().get(0)));
        until(d -> d.pattern().levels().size() > 1);
        CuttingTable table = robot.lookup("#table").query();
        robot.interact(() -> app.session().hush());
        robot.interact(table::fit);
        Viewport fitted = table.view();
        robot.interact(() -> app.session().say(all.get(0)));
        assertThat(table.view()).as("nothing moves for an ordinary line").isEqualTo(fitted);
        nothingLiesOverAPiece(robot, all);
    }

    private void nothingLiesOverAPiece(FxRobot robot, List<Desk.Notice> all) {
        CuttingTable table = robot.lookup("#table").query();
        for (Desk.Notice said : all) {
            robot.interact(() -> app.session().say(said));
            WaitForAsyncUtils.waitForFxEvents();
            Node notice = robot.lookup("#notice").query();
            assertThat(notice.isVisible()).isTrue();
            Bounds bar = notice.localToScene(notice.getLayoutBounds());
            for (Piece piece : desk().shown().pieces()) {
                Box box = piece.outline().box();
                Bounds lies = table.localToScene(new BoundingBox(
                        table.view().screenX(box.minX()),
                        table.view().screenY(box.minY()),
                        box.width() * table.view().scale(),
                        box.height() * table.view().scale()));
                assertThat(lies.intersects(bar))
                        .as("%s, %s", piece.name(), said.key())
                        .isFalse();
            }
        }
    }
}
