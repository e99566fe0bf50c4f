package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Whole tasks with mouse and keyboard in the window. */
class JourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Test
    void fromTheEmptyTableToASavedFile(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        double finished = line("hip").finished();

        write(robot, "#body-hip", "98,5 cm");
        assertThat(line("hip").ease().orElseThrow()).isCloseTo(finished - 985, within(1e-6));

        write(robot, "#amount", "+24mm");
        assertThat(line("hip").finished()).isCloseTo(finished + 24, within(0.01));
        assertThat(desk().pattern().changes()).isEmpty();
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(stage.getTitle()).startsWith("\u2022");

        robot.clickOn("#undo");
        until(d -> d.pattern().changes().isEmpty());
        assertThat(line("hip").finished()).isCloseTo(finished, within(1e-9));
        robot.clickOn("#redo");
        until(d -> d.pattern().changes().size() == 1);

        Path saved = folder.resolve("skirt-with-room.svg");
        robot.interact(() -> app.files().save(saved));
        until(Desk::isSaved);
        SvgFile again = SvgFile.read(saved);
        assertThat(again.pattern().changes()).hasSize(1);
        assertThat(again.pattern().body().girth("hip").orElseThrow()).isCloseTo(985, within(1e-6));
        double reread = easewright.measure.Measures.of(again.pattern())
                .girth("hip")
                .orElseThrow()
                .finished();
        assertThat(reread).isCloseTo(finished + 24, within(0.05));
    }

    @Test
    void pullingTheSeamOnTheTable(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        double finished = line("hip").finished();
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point hold = table.holdsOnScreen().get(0);
        double outward = desk().holds().get(0).outward().x();
        double pixels = Math.signum(outward) * 5 * table.view().scale();
        var grip = table.localToScreen(hold.x(), hold.y());

        robot.moveTo(grip)
                .press(MouseButton.PRIMARY)
                .moveTo(grip.add(pixels / 2, 0))
                .moveTo(grip.add(pixels, 0));
        until(d -> d.shownTrial().isPresent());
        double pulled = desk().wanted().orElseThrow().amount();
        // Four sewn side-seam edges, each about 5 mm; the pointer goes by whole pixels.
        assertThat(pulled).isCloseTo(20, within(4 / table.view().scale() + 1));
        assertThat(line("hip").finished()).isCloseTo(finished + pulled, within(0.01));
        TextField amount = robot.lookup("#amount").queryAs(TextField.class);
        assertThat(amount.getText()).startsWith("+");
        robot.release(MouseButton.PRIMARY).push(KeyCode.ESCAPE);
        until(d -> d.trial().isEmpty());
        assertThat(line("hip").finished()).isEqualTo(finished);
    }

    @Test
    void theSameByKeyboardAlone(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        double finished = line("hip").finished();
        robot.interact(() -> robot.lookup("#table").query().requestFocus());
        robot.push(KeyCode.N).push(KeyCode.SHIFT, KeyCode.RIGHT).push(KeyCode.RIGHT);
        until(d -> d.shownTrial().isPresent());
        assertThat(desk().wanted().orElseThrow().amount()).isCloseTo(11, within(1e-9));
        robot.push(KeyCode.ENTER);
        until(d -> d.pattern().changes().size() == 1);
        assertThat(line("hip").finished()).isCloseTo(finished + 11, within(0.01));
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        until(d -> d.pattern().changes().isEmpty());
    }

    @Test
    void theListOfChangesIsWorkedOn(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        double finished = line("hip").finished();
        write(robot, "#amount", "+24mm");
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);
        robot.clickOn("#ease-waist .level-name");
        write(robot, "#amount", "1 cm");
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 2);

        robot.clickOn("#page-changes").clickOn("#change-on-0");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(line("hip").finished()).isCloseTo(finished, within(1e-6));
        robot.clickOn("#change-on-0");
        until(d -> d.pattern().changes().size() == 2);

        write(robot, "#change-amount-0", "-3 m");
        untilMade();
        assertThat(robot.lookup("#change-0 .complaint").queryAllAs(Label.class))
                .anySatisfy(l -> assertThat(l.getText()).contains("nothing has changed"));
        TextField amount = robot.lookup("#change-amount-0").queryAs(TextField.class);
        assertThat(amount.getText()).isEqualTo("-3 m");
        assertThat(line("hip").finished()).isCloseTo(finished + 24, within(0.01));
        write(robot, "#change-amount-0", "30 mm");
        untilMade();
        assertThat(line("hip").finished()).isCloseTo(finished + 30, within(0.01));
        robot.clickOn("#change-remove-0");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(line("hip").finished()).isCloseTo(finished, within(1e-6));
    }

    /** A tick shows what was asked for before it is made, and what is pressed next comes after it. */
    @Test
    void whatIsSwitchedIsShownAtOnceAndInOrder(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        for (String amount : List.of("+24mm", "+8mm")) {
            write(robot, "#amount", amount);
            robot.clickOn("#keep");
            WaitForAsyncUtils.waitForFxEvents();
        }
        until(d -> d.pattern().changes().size() == 2);
        robot.clickOn("#page-changes");
        CheckBox first = robot.lookup("#change-on-0").queryAs(CheckBox.class);
        CheckBox second = robot.lookup("#change-on-1").queryAs(CheckBox.class);
        Label sign = robot.lookup("#change-sign-0").queryAs(Label.class);
        robot.interact(() -> {
            first.fire();
            assertThat(first.isSelected()).isFalse();
            assertThat(sign.isVisible()).isTrue();
            assertThat(sign.getText()).startsWith("working");
            second.fire();
            assertThat(first.isSelected()).isFalse();
            assertThat(second.isSelected()).isFalse();
            assertThat(desk().pattern().changes())
                    .as("made away from the window's thread")
                    .hasSize(2);
        });
        until(d -> d.pattern().changes().isEmpty());
        untilMade();
        assertThat(desk().history().canUndo()).isTrue();
        assertThat(robot.lookup("#change-sign-1").queryAs(Label.class).getText())
                .isEqualTo("switched off");
    }

    /** After a change: what is sewn to it made to fit, what is untrue shown and made true, each a change of its own. */
    @Test
    void whatNoLongerFitsIsMadeToFitAndTrue(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#ease-waist .level-name");
        write(robot, "#amount", "24");
        assertThat(desk().trial()).as("24 cm at the waist is asked about first").isEmpty();
        robot.clickOn("#doubt-rather");
        assertThat(desk().wanted().orElseThrow().amount()).isCloseTo(24, within(1e-9));
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);

        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup("#follow-look")
                        .match(n -> n.isVisible() && n.getParent().isVisible())
                        .tryQuery()
                        .isPresent());
        robot.clickOn("#follow-look");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(stage.getScene().getFocusOwner().getId())
                .as("the keys are at what is offered")
                .isEqualTo("follow-take-0");
        robot.clickOn("#follow-take-0");
        until(d -> d.shownTrial().isPresent());
        assertThat(desk().pattern().changes()).as("shown first").hasSize(1);
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 2);
        double drift =
                desk().reading().measures().mate("waistband").orElseThrow().drift();
        assertThat(drift).isCloseTo(0, within(0.05));

        String possible = "#true .true-row .button";
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> !robot.lookup(possible)
                        .match(n -> n.getId().startsWith("true-make-") && !n.isDisabled())
                        .queryAll()
                        .isEmpty());
        Node first = robot.lookup(possible)
                .match(n -> n.getId().startsWith("true-make-") && !n.isDisabled())
                .query();
        robot.moveTo(first);
        until(d -> d.pointed().isPresent());
        robot.clickOn("#" + first.getId().replace("make", "show"));
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point place = desk().pointed().orElseThrow().at().orElseThrow();
        assertThat(table.view().toScreen(place).distance(new Point(table.getWidth() / 2, table.getHeight() / 2)))
                .as("brought near the middle")
                .isLessThan(table.getWidth() / 2);
        robot.interact(first::requestFocus);
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().changes().size() == 3);
        robot.clickOn("#page-changes");
        assertThat(robot.lookup("#change-2 .change-words").queryAs(Label.class).getText())
                .startsWith("Made true");
        robot.clickOn("#change-remove-2");
        until(d -> d.pattern().changes().size() == 2);
    }

    /** Another way: chosen from the list, its places shown on the table, tried and kept. */
    @Test
    void aCutIsShownOnTheTable(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        double finished = line("hip").finished();
        write(robot, "#amount", "12mm");
        openHow(robot);
        robot.clickOn("#way").clickOn("Slash and spread");
        until(d -> d.trial().isEmpty());
        robot.clickOn("#pick-slash");
        for (Point place : new Point[] {new Point(180, 729), new Point(180, 130)}) {
            robot.clickOn(onScreen(robot, place));
        }
        until(d -> d.shownTrial().isPresent());
        assertThat(line("hip").finished()).isCloseTo(finished + 12, within(0.01));
        robot.clickOn("#pick-slash");
        assertThat(app.session().picking().isAsking()).isTrue();
        assertThat(robot.lookup("#outcome").queryLabeled().getText())
                .as("one instruction at a time")
                .startsWith("Click where the slash begins");
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);
        // What is done asks for no place more: a press on the table means what lies there, as ever.
        assertThat(app.session().picking().isAsking()).isFalse();
        robot.clickOn(onScreen(robot, new Point(180, 130)));
        until(d -> d.wanted().orElseThrow().level().equals("waist"));

        robot.clickOn("#pick-slash");
        assertThat(app.session().picking().isAsking()).isTrue();
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(app.session().picking().isAsking()).isFalse();
        // What a form asks for is asked no more when the form is gone.
        robot.clickOn("#pick-slash");
        assertThat(app.session().picking().isAsking()).isTrue();
        robot.clickOn("#way").clickOn("At the seams");
        until(d -> !d.holds().isEmpty());
        assertThat(app.session().picking().isAsking()).isFalse();
    }

    @Test
    void whatIsTypedWrongStaysAndIsExplained(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#body-hip", "ninety");
        TextField body = robot.lookup("#body-hip").queryAs(TextField.class);
        assertThat(body.getText()).isEqualTo("ninety");
        assertThat(robot.lookup("#ease-hip .complaint").queryAllAs(Label.class))
                .anySatisfy(l -> assertThat(l.getText()).contains("ninety"));
        write(robot, "#body-hip", "38 1/2 in");
        assertThat(desk().pattern().body().girth("hip").orElseThrow()).isCloseTo(977.9, within(1e-6));
        assertThat(body.getText()).isNotEqualTo("ninety");
    }

    @Test
    void aFileThatCannotBeReadLeavesTheWorkOpen(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        Path broken = Files.writeString(folder.resolve("broken.svg"), "<svg><path d='M0");
        robot.interact(() -> app.files().open(broken));
        until(d -> d.notice().isPresent());
        assertThat(desk().notice().orElseThrow().bad()).isTrue();
        assertThat(desk().file().orElseThrow().name()).isEqualTo("skirt.svg");
        assertThat(desk().words()
                        .of(
                                desk().notice().orElseThrow().key(),
                                desk().notice().orElseThrow().values()))
                .doesNotContain("problem.");
    }

    @Test
    void theTableShowsPaperWhereAPieceLies(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point inside =
                desk().holds().get(0).at().minus(desk().holds().get(0).outward().times(8));
        Point at = table.view().toScreen(inside.plus(new Point(0, 12)));
        WritableImage image = WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            WritableImage shot = table.snapshot(null, null);
            return shot;
        });
        var paper = image.getPixelReader().getColor((int) at.x(), (int) at.y());
        var wood = image.getPixelReader().getColor(3, 3);
        assertThat(paper.getBrightness()).isGreaterThan(0.98);
        assertThat(wood.getBrightness()).isLessThan(0.95);
    }
}
