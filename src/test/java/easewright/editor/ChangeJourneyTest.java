package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import atlantafx.base.controls.CustomTextField;
import easewright.editor.paint.Viewport;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
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
        robot.interact(
                () -> robot.lookup("#side-left").queryAs(ToggleButton.class).fire());
        assertThat(places(robot)).as("on one side").isEqualTo(still);
        write(robot, "#amount", "-70 cm");
        assertThat(robot.lookup("#doubt-yes").query().isVisible()).isTrue();
        assertThat(places(robot)).as("asked about").isEqualTo(still);
        robot.clickOn("#doubt-yes");
        assertThat(desk().refusedTrial()).isPresent();
        assertThat(places(robot)).as("refused").isEqualTo(still);
        write(robot, "#amount", "much");
        assertThat(places(robot)).as("not understood").isEqualTo(still);
    }

    private static List<Bounds> places(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        return Stream.of("#amount", "#less", "#more", "#keep", "#leave")
                .map(id -> (Node) robot.lookup(id).query())
                .map(n -> n.localToScene(n.getLayoutBounds()))
                .toList();
    }

    private static boolean complains(FxRobot robot, String around) {
        WaitForAsyncUtils.waitForFxEvents();
        return !robot.lookup(around + " .complaint")
                .match(n -> n.isVisible() && !((Labeled) n).getText().isEmpty())
                .queryAll()
                .isEmpty();
    }

    /** While a text is put right nothing is held against it; what is typed stays, and is judged when it is left. */
    @ParameterizedTest
    @ValueSource(strings = {"#amount", "#body-hip"})
    void aComplaintGoesWhenTheTextIsChanged(String field, FxRobot robot) throws Exception {
        openTheSkirt(robot);
        String around = field.equals("#amount") ? "#here" : "#ease-hip";
        write(robot, field, "9x");
        TextField text = robot.lookup(field).queryAs(TextField.class);
        assertThat(complains(robot, around)).isTrue();
        robot.push(KeyCode.END).push(KeyCode.BACK_SPACE);
        assertThat(complains(robot, around)).as("being corrected").isFalse();
        assertThat(text.getText()).isEqualTo("9");
        robot.write("y");
        robot.clickOn("#wish-hip");
        assertThat(complains(robot, around)).as("left as it is").isTrue();
        assertThat(text.getText()).isEqualTo("9y");
    }

    @Test
    void aRefusalAndAQuestionGoWhenTheAmountIsChanged(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "40");
        Node doubt = robot.lookup("#doubt").query();
        assertThat(doubt.isVisible()).isTrue();
        robot.push(KeyCode.END).write("0");
        assertThat(doubt.isVisible()).isFalse();
        robot.push(KeyCode.BACK_SPACE).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(doubt.isVisible()).as("the same again").isTrue();
        write(robot, "#amount", "-70 cm");
        robot.clickOn("#doubt-yes");
        assertThat(desk().refusedTrial()).isPresent();
        assertThat(complains(robot, "#here")).isTrue();
        robot.clickOn("#amount").push(KeyCode.END).push(KeyCode.BACK_SPACE);
        assertThat(complains(robot, "#here")).isFalse();
        robot.push(KeyCode.ESCAPE);
        assertThat(complains(robot, "#here"))
                .as("what was refused stands there again")
                .isTrue();
    }

    @Test
    void anAmountInTheListThatIsRefusedCanBePutRight(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep").clickOn("#page-changes");
        write(robot, "#change-amount-0", "-3 m");
        assertThat(complains(robot, "#change-0")).isTrue();
        robot.push(KeyCode.END).push(KeyCode.BACK_SPACE);
        assertThat(complains(robot, "#change-0")).isFalse();
        robot.push(KeyCode.ESCAPE);
        assertThat(robot.lookup("#change-amount-0").queryAs(TextField.class).getText())
                .isEqualTo("+2\u00a0cm");
    }

    private static String unitTaken(FxRobot robot, String field) {
        WaitForAsyncUtils.waitForFxEvents();
        Node right = robot.lookup(field).queryAs(CustomTextField.class).getRight();
        return right == null ? "" : ((Labeled) right).getText();
    }

    /** Wherever a length is typed without its unit, the unit it is taken in stands behind it. */
    @Test
    void aBareNumberShowsItsUnitWhileItIsTyped(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        for (String field : List.of("#amount", "#body-hip", "#wish-hip")) {
            robot.clickOn(field).push(KeyCode.SHORTCUT, KeyCode.A).write("9");
            assertThat(unitTaken(robot, field)).as(field).isEqualTo("cm");
            robot.write(" m");
            assertThat(unitTaken(robot, field)).as(field).isEmpty();
            robot.push(KeyCode.ESCAPE);
            assertThat(unitTaken(robot, field)).as(field).isEmpty();
        }
        robot.clickOn("#unit-inch");
        robot.clickOn("#amount").write("5/8");
        assertThat(unitTaken(robot, "#amount")).isEqualTo("in");
        robot.push(KeyCode.ENTER);
        assertThat(unitTaken(robot, "#amount")).isEmpty();
        assertThat(desk().wanted().orElseThrow().amount()).isCloseTo(15.875, within(1e-9));
        robot.push(KeyCode.ESCAPE);
        robot.clickOn("#unit-cm").clickOn("#page-marks");
        robot.interact(() -> robot.lookup("#scale-lines")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(0));
        robot.clickOn("#scale-length").write("50");
        assertThat(unitTaken(robot, "#scale-length")).isEqualTo("cm");
        assertThat(robot.lookup("#scale-reading").queryLabeled().getText())
                .isEqualTo("= 50\u00a0cm (19 11/16\u00a0in)");
    }

    /** More is said of the level at work; but rows do not slip away under a hand that goes from field to field. */
    @Test
    void fieldsKeepTheirPlaceWhileTheyAreFilledIn(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#wish-hip");
        Node hip = robot.lookup("#body-hip").query();
        Bounds before = hip.localToScene(hip.getLayoutBounds());
        robot.clickOn("#body-waist");
        assertThat(hip.localToScene(hip.getLayoutBounds())).isEqualTo(before);
        assertThat(desk().wanted().orElseThrow().level()).isEqualTo("hip");
        robot.clickOn("#ease-waist .level-name");
        until(d -> d.wanted().orElseThrow().level().equals("waist"));
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
    void whileAnAmountIsNotUnderstoodThereIsNothingToKeep(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        var before = desk().pattern();
        write(robot, "#amount", "1 cm");
        until(d -> d.shownTrial().isPresent());
        write(robot, "#amount", "1/0");
        assertThat(desk().trial()).isEmpty();
        assertThat(robot.lookup("#keep").query().isDisabled()).isTrue();
        assertThat(robot.lookup("#outcome").queryAs(Labeled.class).getText()).contains("nothing to keep");
        assertThat(robot.lookup("#effect").query().isVisible()).isFalse();
        robot.push(KeyCode.ENTER);
        robot.clickOn("#table").push(KeyCode.ENTER);
        assertThat(desk().pattern()).isSameAs(before);
        robot.clickOn("#taper-straight");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#keep").query().isDisabled())
                .as("another setting does not bring it back")
                .isTrue();
        robot.clickOn("#amount").push(KeyCode.ESCAPE);
        until(d -> d.shownTrial().isPresent());
        assertThat(desk().wanted().orElseThrow().amount())
                .as("what stood there")
                .isEqualTo(10);
        assertThat(robot.lookup("#keep").query().isDisabled()).isFalse();
        write(robot, "#amount", "1/0");
        robot.clickOn("#more");
        until(d -> d.shownTrial().isPresent());
        assertThat(robot.lookup("#amount").queryAs(TextField.class).getText())
                .as("a step takes the place of what was not understood")
                .isEqualTo(desk().words().signed(desk().wanted().orElseThrow().amount()));
    }

    @Test
    void whatIsKeptIsSaidWhereItWasTried(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        WaitForAsyncUtils.waitForFxEvents();
        String said = "Kept: hip +2\u00a0cm. It stands in Changes.";
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).isEqualTo(said);
        assertThat(robot.lookup("#amount").query().getAccessibleHelp()).isEqualTo(said);
        assertThat(robot.lookup("#table").query().getAccessibleText()).startsWith(said);
        write(robot, "#amount", "1 cm");
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).startsWith("hip: ");
    }

    @Test
    void aStepGoesToTheNextRoundAmount(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "4.1 cm");
        robot.clickOn("#less");
        assertThat(desk().wanted().orElseThrow().amount()).isEqualTo(40);
        robot.clickOn("#less");
        assertThat(desk().wanted().orElseThrow().amount()).isEqualTo(35);
        write(robot, "#amount", "4.1 cm");
        robot.clickOn("#more");
        assertThat(desk().wanted().orElseThrow().amount()).isEqualTo(45);
    }
}
