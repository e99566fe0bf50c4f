package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import atlantafx.base.controls.CustomTextField;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Lengths typed into fields: understood or not, put right, stepped on, and never lost under the hand. */
class FieldsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
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
                .isEqualTo("= 50\u00a0cm (19\u00a011/16\u00a0in)");
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
