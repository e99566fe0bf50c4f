package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is typed into a field and is not understood, or refused: told, put right, and forgotten with the text. */
class FieldsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
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

    /** Beside a body that is not understood no ease is told that would seem to be of it. */
    @Test
    void aBodyThatIsNotUnderstoodHasNoEase(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().chooseLevel("hip"));
        Labeled ease = robot.lookup("#ease-hip .ease-number").queryLabeled();
        Node told = robot.lookup("#level-told").query();
        String was = ease.getText();
        assertThat(was).as("by the decimal point of the waist, 2.5").isEqualTo("5.0");
        assertThat(told.isVisible()).isTrue();
        write(robot, "#body-hip", "ninety");
        assertThat(complains(robot, "#ease-hip")).isTrue();
        assertThat(ease.getText()).isEqualTo("\u2013");
        assertThat(told.isVisible()).isFalse();
        assertThat(robot.lookup("#level-name-hip").query().getAccessibleText())
                .contains("100\u00a0cm")
                .doesNotContain("ease 5");
        assertThat(robot.lookup("#ease-hip .complaint").queryAllAs(Labeled.class))
                .anyMatch(l -> l.getText().endsWith("Until then 100\u00a0cm is kept, and no ease is shown here."));
        robot.clickOn("#body-hip").push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(ease.getText()).isEqualTo(was);
        assertThat(told.isVisible()).isTrue();
    }

    /** What is typed anew is what there was, in another unit: it is shown in the unit of the sheet all the same. */
    @Test
    void theSameBodyInAnotherUnitIsShownInThatOfTheSheet(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().setUnit(LengthUnit.INCH));
        TextField body = robot.lookup("#body-hip").queryAs(TextField.class);
        String was = body.getText();
        write(robot, "#body-hip", "100 cm");
        assertThat(body.getText()).isEqualTo(was).endsWith("in");
        write(robot, "#body-hip", "ninety");
        write(robot, "#body-hip", "100 cm");
        assertThat(body.getText()).isEqualTo(was);
        TextField wish = robot.lookup("#wish-hip").queryAs(TextField.class);
        String wished = wish.getText();
        write(robot, "#wish-hip", "5 cm");
        assertThat(wish.getText()).isEqualTo(wished).endsWith("in");
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
        untilMade();
        assertThat(complains(robot, "#change-0")).isTrue();
        robot.push(KeyCode.END).push(KeyCode.BACK_SPACE);
        assertThat(complains(robot, "#change-0")).isFalse();
        robot.push(KeyCode.ESCAPE);
        assertThat(robot.lookup("#change-amount-0").queryAs(TextField.class).getText())
                .isEqualTo("+2\u00a0cm");
    }

    /** What leans on a change may be switched off with it only while the amount that asks for it stands there. */
    @Test
    void theWayOutOfARefusedAmountGoesWithIt(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        // Both together leave less than nothing of the hip.
        for (double mm : List.of(20.0, -300.0)) {
            robot.interact(
                    () -> app.session().want(desk().wanted().orElseThrow().withAmount(mm)));
            robot.interact(app.session()::keep);
        }
        until(d -> d.pattern().changes().size() == 2);
        var before = desk().pattern();
        robot.clickOn("#page-changes");
        write(robot, "#change-amount-0", "-50");
        untilMade();
        assertThat(isSeen(robot, "#change-lean-0")).isTrue();
        robot.push(KeyCode.ESCAPE);
        assertThat(isSeen(robot, "#change-lean-0")).as("let go of").isFalse();
        write(robot, "#change-amount-0", "-50");
        untilMade();
        assertThat(isSeen(robot, "#change-lean-0")).isTrue();
        robot.push(KeyCode.END).write("1");
        assertThat(isSeen(robot, "#change-lean-0")).as("being put right").isFalse();
        assertThat(desk().pattern()).isSameAs(before);
        robot.push(KeyCode.BACK_SPACE).push(KeyCode.ENTER);
        untilMade();
        robot.clickOn("#change-lean-0");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(desk().pattern().changes().get(0).toString()).contains("-500");
    }

    @Test
    void theWayOutOfAnotherWishStaysBelowItsReason(FxRobot robot) throws Exception {
        Path file = Files.copy(Path.of("src/test/resources/marking/one-side-trued.svg"), folder.resolve("leans.svg"));
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#page-changes").clickOn("#change-on-0");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> isSeen(robot, "#change-lean-0"));
        robot.clickOn("#change-amount-0").push(KeyCode.TAB);
        assertThat(isSeen(robot, "#change-lean-0")).isTrue();
    }

    /** By 0 a change would do nothing: its amount stays, and the way out is to switch it off, with what builds on it. */
    @Test
    void aChangeByNothingIsOfferedToBeSwitchedOff(FxRobot robot) throws Exception {
        Path file = Files.copy(Path.of("src/test/resources/marking/one-side-trued.svg"), folder.resolve("zero.svg"));
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        var before = desk().pattern();
        robot.clickOn("#page-changes");
        write(robot, "#change-amount-0", "0");
        untilMade();
        assertThat(isSeen(robot, "#change-lean-0")).isTrue();
        assertThat(desk().pattern()).isSameAs(before);
        robot.clickOn("#change-lean-0");
        untilMade();
        assertThat(robot.lookup("#change-lean-0").queryButton().getText()).contains("those");
        robot.clickOn("#change-lean-0");
        until(d -> d.pattern().changes().size() == 2);
        assertThat(desk().pattern().aside().get(0).note())
                .as("with its amount")
                .isEqualTo(before.changes().get(0));
    }

    private static boolean isSeen(FxRobot robot, String id) {
        WaitForAsyncUtils.waitForFxEvents();
        return robot.lookup(id).query().isVisible();
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
        openHow(robot);
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

    /** No girth of a body is cut in its field, nor a garment's beside it, however many figures it has. */
    @ParameterizedTest
    @ValueSource(strings = {"22 13/16 in", "58 15/16 in", "157.25 cm"})
    void aGirthIsSeenWhole(String girth, FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().setUnit(girth.endsWith("in") ? LengthUnit.INCH : LengthUnit.CM));
        write(robot, "#body-waist", girth);
        WaitForAsyncUtils.waitForFxEvents();
        TextField field = robot.lookup("#body-waist").queryAs(TextField.class);
        assertThat(field.getText().replace('\u00a0', ' ')).isEqualTo(girth);
        Text text = new Text(field.getText());
        text.setFont(field.getFont());
        double room = field.getWidth() - field.snappedLeftInset() - field.snappedRightInset();
        assertThat(text.getLayoutBounds().getWidth()).isLessThan(room);
        for (Node number : robot.lookup("#ease-waist .number").queryAll()) {
            assertThat(number.prefWidth(-1)).isLessThanOrEqualTo(((Labeled) number).getWidth());
        }
    }
}
