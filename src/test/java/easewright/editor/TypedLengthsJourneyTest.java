package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import atlantafx.base.controls.CustomTextField;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Lengths typed into fields: with their unit or as a part of the body, typed over, stepped on, and never lost. */
class TypedLengthsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** In inches most of what is typed has spaces and strokes: a caret in the midst of it makes another number. */
    @Test
    void whoClicksIntoALengthTypesOverIt(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#body-hip", "98");
        robot.clickOn("#wish-hip");
        TextField field = robot.lookup("#body-hip").queryAs(TextField.class);
        robot.clickOn(field).write("97").push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).isCloseTo(970, within(1e-9));

        Bounds at = field.localToScreen(field.getBoundsInLocal());
        robot.clickOn("#wish-hip");
        // The figure stands at the right.
        robot.moveTo(at.getMaxX() - 20, at.getCenterY()).press(MouseButton.PRIMARY);
        robot.moveTo(at.getMaxX() - 2, at.getCenterY()).release(MouseButton.PRIMARY);
        assertThat(field.getSelectedText()).as("drawn over").isNotEmpty().isNotEqualTo(field.getText());

        robot.clickOn("#wish-hip");
        robot.clickOn(field);
        assertThat(field.getSelectedText()).isEqualTo(field.getText());
        // Two clicks at once are for a word.
        robot.interact(field::end);
        robot.moveTo(at.getMaxX() - 2, at.getCenterY()).clickOn(MouseButton.PRIMARY);
        assertThat(field.isFocused()).isTrue();
        assertThat(field.getSelectedText()).as("the next click sets the caret").isNotEqualTo(field.getText());
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
        robot.clickOn("#unit-cm").clickOn("#page-marks").clickOn("#scale-otherwise");
        robot.interact(() -> robot.lookup("#scale-lines")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(0));
        robot.clickOn("#scale-length").write("50");
        assertThat(unitTaken(robot, "#scale-length")).isEqualTo("cm");
        assertThat(robot.lookup("#scale-reading").queryLabeled().getText())
                .isEqualTo("= 50\u00a0cm (19\u00a011/16\u00a0in)");
    }

    /** When what lay above is folded away, a press lands beside the field it was meant for: nothing typed is lost. */
    @Test
    void whatIsTypedAfterAPressBesideAFieldIsNotLost(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().setBody(desk().level().orElseThrow(), OptionalDouble.empty(), "hip"));
        robot.clickOn("#cloth-garment").clickOn("#cloth-garment");
        robot.clickOn("#ease-hip .verdict").write("98");
        assertThat(text(robot, "#body-hip")).isEqualTo("98");
        robot.push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).isCloseTo(980, within(1e-9));
        robot.clickOn("#ease-hip .verdict").write("5");
        assertThat(text(robot, "#wish-hip")).as("the body is known").isEqualTo("5");
    }

    private static String text(FxRobot robot, String field) {
        WaitForAsyncUtils.waitForFxEvents();
        return robot.lookup(field).queryAs(TextField.class).getText();
    }

    /** What is wished is worked at next, unless an amount is tried elsewhere. */
    @Test
    void aWishPutsItsLevelToWork(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#ease-waist .level-name");
        write(robot, "#wish-hip", "8 cm");
        assertThat(desk().wanted().orElseThrow().level()).isEqualTo("hip");
        write(robot, "#amount", "1 cm");
        write(robot, "#wish-waist", "3 cm");
        assertThat(desk().wanted().orElseThrow().level())
                .as("while something is tried")
                .isEqualTo("hip");
    }

    /** A knit is wished in per cent of the body: it stays as typed, with its length beside, while it is that part. */
    @Test
    void aWishMayBeAPartOfTheBody(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().setBody(desk().level().orElseThrow(), OptionalDouble.empty(), "hip"));
        write(robot, "#wish-hip", "-8%");
        assertThat(complains(robot, "#ease-hip")).as("a part of nothing").isTrue();
        assertThat(text(robot, "#wish-hip")).isEqualTo("-8%");
        write(robot, "#body-hip", "94 cm");
        write(robot, "#wish-hip", "-8 %");
        assertThat(complains(robot, "#ease-hip")).isFalse();
        assertThat(desk().pattern().wishes().get("hip").mm()).isCloseTo(-75.2, within(1e-9));
        assertThat(text(robot, "#wish-hip")).isEqualTo("\u22128\u00a0%");
        assertThat(robot.lookup("#wished-hip").queryLabeled().getText())
                .isEqualTo("\u22128\u00a0% =\u00a0\u22127.5\u00a0cm");
        robot.clickOn("#unit-inch");
        assertThat(text(robot, "#wish-hip")).isEqualTo("\u22128\u00a0%");
        assertThat(robot.lookup("#wished-hip").queryLabeled().getText()).endsWith("in");
        robot.clickOn("#unit-cm");
        write(robot, "#body-hip", "95 cm");
        assertThat(text(robot, "#wish-hip")).as("what was said stays said").isEqualTo("\u22128\u00a0%");
        assertThat(robot.lookup("#wished-hip").queryLabeled().getText())
                .as("of another body it is another length")
                .isEqualTo("\u22128\u00a0% =\u00a0\u22127.6\u00a0cm");
        write(robot, "#wish-hip", "5");
        assertThat(desk().pattern().wishes().get("hip").mm()).isCloseTo(50, within(1e-9));
    }

    @Test
    void anAmountMayBeAPartOfTheBody(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#body-hip", "94 cm");
        write(robot, "#amount", "2 %");
        assertThat(desk().wanted().orElseThrow().amount()).isCloseTo(18.8, within(1e-9));
        assertThat(text(robot, "#amount")).isEqualTo("2\u00a0%");
        assertThat(unitTaken(robot, "#amount")).isEqualTo("=\u00a01.9\u00a0cm");
        robot.clickOn("#more");
        assertThat(text(robot, "#amount")).isEqualTo("+2\u00a0cm");
        assertThat(unitTaken(robot, "#amount")).isEmpty();
        robot.interact(() -> app.session().setBody(desk().level().orElseThrow(), OptionalDouble.empty(), "hip"));
        write(robot, "#amount", "3 %");
        assertThat(complains(robot, "#here")).isTrue();
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
