package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.pattern.Level;
import easewright.svg.disk.KeptWork;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What was half typed when the program ended is back in its field, and waits. */
class TypedAgainJourneyTest extends BegunAgainJourney {
    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static TextField field(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(TextField.class);
    }

    private static boolean waits(FxRobot robot, String id) {
        return field(robot, id).getPseudoClassStates().contains(WAITING);
    }

    @Test
    void aHalfTypedMeasurementStandsInItsFieldAndWaits(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        String before = line("hip").body().toString();
        bringBack(robot, endedWith("text=10"));

        assertThat(desk().isSaved()).as("a sample to which nothing was done").isTrue();
        assertThat(said()).contains("is open again as it comes", "is back in its field");
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(waits(robot, "#body-hip")).isTrue();
        assertThat(field(robot, "#body-hip").isFocused()).isTrue();
        assertThat(robot.lookup("#ease-hip .complaint").queryAllAs(Label.class))
                .anyMatch(l -> l.isVisible() && l.getText().contains("not taken yet"));

        // Neither looking elsewhere nor another size of its row takes it or takes it away.
        robot.clickOn("#page-notes");
        robot.clickOn("#page-ease");
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.INCH));
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.CM));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(line("hip").body().toString()).isEqualTo(before);

        robot.clickOn("#body-hip").push(KeyCode.END).write("4").push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).isCloseTo(1040, within(1e-9));
        assertThat(waits(robot, "#body-hip")).isFalse();
    }

    /** What is typed in the window for prints waits until that is opened, also for a second crash. */
    @Test
    void whatIsTypedForAPrintStandsInItsFieldOnceThatIsOpen(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#print");
        robot.clickOn("#print-kind-report");
        robot.clickOn("#print-cloth").push(KeyCode.SHORTCUT, KeyCode.A).write("7");
        KeptWork work = endedWith("text=7");
        robot.push(KeyCode.ESCAPE).push(KeyCode.ESCAPE);
        bringBack(robot, work);
        assertThat(said()).contains("half typed for the print");
        assertThat(desk().isSaved()).isTrue();
        endedWith("text=7");

        robot.clickOn("#print");
        assertThat(field(robot, "#print-cloth").getText()).isEqualTo("7");
        assertThat(waits(robot, "#print-cloth")).isTrue();
        assertThat(field(robot, "#print-cloth").isFocused()).isTrue();
        assertThat(robot.lookup("#print-cloth").queryAs(Node.class).getParent().isVisible())
                .as("its part is shown")
                .isTrue();
        robot.clickOn("#print-cloth").push(KeyCode.END).write("0").push(KeyCode.ENTER);
        assertThat(waits(robot, "#print-cloth")).isFalse();
        assertThat(field(robot, "#print-cloth").getText()).startsWith("70");
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> kept().isEmpty());
    }

    /** What was typed for one thing is not taken for another that comes into its place. */
    @Test
    void whatWaitsIsNotTakenForAnotherLevelOrUnit(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        robot.interact(() -> field(robot, "#amount").setText("4,"));
        bringBack(robot, endedWith("text=4,"));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(field(robot, "#amount").getText()).isEqualTo("4,");

        robot.clickOn("#ease-waist .level-name");
        until(d -> d.wanted().orElseThrow().level().equals("waist"));
        assertThat(field(robot, "#amount").getText())
                .as("amount of another level")
                .isEmpty();
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.INCH));
        robot.clickOn("#body-hip").push(KeyCode.END).write("4").push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).as("typed in cm").isCloseTo(1040, within(1e-9));
    }

    @Test
    void whatWaitsIsNotTakenForAnotherSize(FxRobot robot) throws Exception {
        Path file = Files.copy(Path.of("sample-pieces/skirt-sizes.svg"), folder.resolve("waits.svg"));
        robot.interact(() -> app.files().open(file));
        until(d -> d.size().isPresent());
        String size = desk().size().orElseThrow();
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        bringBack(robot, endedWith("text=10"));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(desk().size()).contains(size);

        robot.interact(() -> app.session().chooseSize("14"));
        assertThat(waits(robot, "#body-hip")).isFalse();
        assertThat(desk().words().length(line("hip").body().orElseThrow()))
                .isEqualTo(field(robot, "#body-hip").getText());
    }

    /** What is folded away is put into the window when it is first unfolded, or when a text goes back into it. */
    @Test
    void aTextThatIsFoldedAwayIsBackInItsField(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#cloth-test");
        robot.interact(() -> {
            field(robot, "#cloth-washed").setText("4");
            app.files().begun();
        });
        bringBack(robot, endedWith("text=4"));
        assertThat(field(robot, "#cloth-washed").getText()).isEqualTo("4");
    }

    @Test
    void aFieldFarDownThePageIsBroughtIntoSight(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        until(Desk::isOpen);
        List<Level> levels = desk().pattern().levels();
        String id = "#wish-" + levels.get(levels.size() - 1).name();
        robot.interact(() -> {
            field(robot, id).requestFocus();
            field(robot, id).setText("7");
            app.files().begun();
        });
        bringBack(robot, endedWith("text=7"));
        assertThat(field(robot, id).getText()).isEqualTo("7");
        Node page = robot.lookup("#ease-sheet").query();
        Bounds seen = page.localToScene(page.getLayoutBounds());
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            Bounds at = field(robot, id).localToScene(field(robot, id).getLayoutBounds());
            return seen.contains(at);
        });
    }

    @Test
    void whatWasRefusedOnOnePageAndHalfTypedOnAnotherComesBackOnBoth(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#wish-hip", "much");
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        robot.clickOn("#piece-name").push(KeyCode.SHORTCUT, KeyCode.A).write("Rear");
        String piece = field(robot, "#piece-name").getText();
        bringBack(robot, endedWith("text=Rear"));

        assertThat(piece).isEqualTo("Rear");
        assertThat(field(robot, "#piece-name").getText()).isEqualTo("Rear");
        assertThat(field(robot, "#wish-hip").getText()).isEqualTo("much");
        assertThat(robot.lookup("#page-marks")
                        .queryAs(javafx.scene.control.ToggleButton.class)
                        .isSelected())
                .isTrue();
        robot.clickOn("#piece-name").push(KeyCode.ESCAPE);
        assertThat(field(robot, "#piece-name").getText()).isNotEqualTo("Rear");
        assertThat(waits(robot, "#piece-name")).isFalse();
    }

    @Test
    void whatIsTriedCannotBeKeptWhileAnotherAmountWaits(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        until(d -> d.shownTrial().isPresent());
        robot.clickOn("#amount").push(KeyCode.SHORTCUT, KeyCode.A).write("3,");
        KeptWork work = endedWith("text=3,");
        bringBack(robot, work);
        assertThat(desk().isSaved()).isTrue();
        assertThat(desk().shownTrial().orElseThrow().wanted().amount()).isEqualTo(20);
        assertThat(field(robot, "#amount").getText()).isEqualTo("3,");
        assertThat(robot.lookup("#keep").query().isDisabled()).isTrue();
        assertThat(robot.lookup("#outcome").queryAs(Label.class).getText()).contains("once the marked field");
        robot.clickOn("#amount").push(KeyCode.ESCAPE);
        assertThat(field(robot, "#amount").getText()).contains("2\u00a0cm");
        assertThat(robot.lookup("#keep").query().isDisabled()).isFalse();
    }
}
