package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.Viewport;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Side;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the window does around a change while it is tried, kept and undone: it stays where the eye expects it. */
class ChangeJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private boolean isAllInView(CuttingTable table) {
        Box all = desk().shown().pieces().stream()
                .map(p -> p.outline().box())
                .reduce(Box::union)
                .orElseThrow();
        Point least = table.view().toScreen(new Point(all.minX(), all.minY()));
        Point most = table.view().toScreen(new Point(all.maxX(), all.maxY()));
        return least.x() >= 0 && least.y() >= 0 && most.x() <= table.getWidth() && most.y() <= table.getHeight();
    }

    @Test
    void piecesMadeOutsideTheViewAreShown(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Viewport fitted = table.view();
        write(robot, "#amount", "1 cm");
        assertThat(table.view()).as("nothing new lies outside").isEqualTo(fitted);
        openHow(robot);
        robot.clickOn("#side-left");
        until(d -> d.shown().pieces().size() > d.pattern().pieces().size());
        assertThat(isAllInView(table)).isTrue();
        robot.interact(() -> table.zoom(3));
        Viewport near = table.view();
        write(robot, "#amount", "2 cm");
        assertThat(table.view()).as("what was left outside stays there").isEqualTo(near);
    }

    @Test
    void theViewKeepsStillUnderAHandThatPulls(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        openHow(robot);
        robot.clickOn("#side-left");
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Viewport before = table.view();
        Point hold = table.holdsOnScreen().get(0);
        var grip = table.localToScreen(hold.x(), hold.y());
        robot.moveTo(grip).press(MouseButton.PRIMARY).moveTo(grip.add(8, 0)).moveTo(grip.add(14, 0));
        until(d -> d.shownTrial().isPresent());
        assertThat(isAllInView(table)).as("this change makes pieces outside").isFalse();
        assertThat(table.view()).isEqualTo(before);
        robot.release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isAllInView(table)).isTrue();
        robot.push(KeyCode.ESCAPE);
        until(d -> d.trial().isEmpty());
        assertThat(table.view()).as("the pieces it made are gone").isEqualTo(before);
    }

    /** Whatever is said of a trial, the next click meets the same field and the same buttons. */
    @ParameterizedTest
    @ValueSource(strings = {"ease", "rings"})
    void theAmountKeepsItsPlace(String page, FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-" + page);
        WaitForAsyncUtils.waitForFxEvents();
        List<Bounds> still = places(robot);
        write(robot, "#amount", "2 cm");
        assertThat(desk().shownTrial()).isPresent();
        assertThat(places(robot)).as("tried").isEqualTo(still);
        write(robot, "#amount", "-70 cm");
        assertThat(robot.lookup("#doubt-yes").query().isVisible()).isTrue();
        assertThat(places(robot)).as("asked about").isEqualTo(still);
        robot.clickOn("#doubt-yes");
        assertThat(desk().refusedTrial()).isPresent();
        assertThat(places(robot)).as("refused").isEqualTo(still);
        write(robot, "#amount", "much");
        assertThat(places(robot)).as("not understood").isEqualTo(still);
        // Of a change on one side more is said: what is done with it keeps its place at the foot.
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withSide(Side.LEFT)));
        write(robot, "#amount", "2 cm");
        assertThat(places(robot)).as("on one side").endsWith(last(still, 0), last(still, 1));
    }

    private static Bounds last(List<Bounds> all, int of) {
        return all.get(all.size() - 2 + of);
    }

    private static List<Bounds> places(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        return Stream.of("#amount", "#less", "#more", "#keep", "#leave")
                .map(id -> (Node) robot.lookup(id).query())
                .filter(Node::isVisible)
                .map(n -> n.localToScene(n.getLayoutBounds()))
                .toList();
    }

    /** What the lines mean stands in a corner of its own, however small the window. */
    @Test
    void theLegendCoversNoButton(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#ease-waist .level-name");
        write(robot, "#amount", "2 cm");
        Node legend = robot.lookup("#legend").query();
        for (double width : new double[] {1280, 940}) {
            robot.interact(() -> stage.setWidth(width));
            WaitForAsyncUtils.waitForFxEvents();
            Bounds at = legend.localToScene(legend.getLayoutBounds());
            for (Node button : robot.lookup(".view-buttons").queryAll()) {
                assertThat(at.intersects(button.localToScene(button.getLayoutBounds())))
                        .as("at a width of %s", width)
                        .isFalse();
            }
            assertThat(at.getMinX()).isGreaterThan(0);
            assertThat(robot.lookup("#sheet").query().localToScene(0, 0).getX()).isGreaterThan(at.getMaxX());
        }
    }

    @Test
    void whatIsKeptIsSaidWhereItWasTried(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        WaitForAsyncUtils.waitForFxEvents();
        String said = "Kept: hip +2\u00a0cm. The page Changes lists it.";
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).isEqualTo(said);
        assertThat(robot.lookup("#amount").query().getAccessibleHelp()).isEqualTo(said);
        assertThat(robot.lookup("#table").query().getAccessibleText()).startsWith(said);
        write(robot, "#amount", "1 cm");
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).startsWith("hip: ");
    }
}
