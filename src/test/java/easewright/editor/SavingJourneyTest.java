package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Sample;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Saves that follow each other closely, files that go away, and what is kept of them. */
class SavingJourneyTest extends Journey {
    private Path file;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @BeforeEach
    void open(FxRobot robot) throws Exception {
        file = Files.createTempDirectory(folder, "files").resolve("mine.svg");
        Files.write(file, Sample.all().get(0).read().bytes());
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        widen(robot, 20);
    }

    private void widen(FxRobot robot, double mm) {
        robot.interact(() -> {
            app.session().chooseLevel("hip");
            app.session().want(desk().wanted().orElseThrow().withAmount(mm));
            app.session().keep();
        });
    }

    @Test
    void savedTwiceAtOnceIsNotTakenForAnotherProgramsChange(FxRobot robot) throws Exception {
        robot.interact(() -> {
            app.files().save();
            widen(robot, 10);
            app.files().save();
        });
        until(Desk::isSaved);
        assertThat(answers.asked).isEmpty();
        assertThat(SvgFile.read(file).pattern().changes()).hasSize(2);
    }

    /** Who saves may take the work for done. */
    @Test
    void aSeamThatDoesNotFitIsToldWhenItIsSaved(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().save());
        until(d -> d.notice().isPresent());
        assertThat(said()).doesNotContain("fit yet");
        robot.interact(() -> {
            app.session().chooseLevel("waist");
            app.session().want(desk().wanted().orElseThrow().withAmount(20));
            app.session().keep();
            app.session().hush();
            app.files().save();
        });
        until(d -> d.notice().isPresent());
        assertThat(said())
                .as("in a line of its own")
                .contains("\nSeam \u201cwaistband\u201d does not fit yet, by 2\u00a0cm: see the pages True and Notes.");
    }

    @Test
    void whatIsOnlyTriedIsNotSavedAndThatIsSaid(FxRobot robot) throws Exception {
        robot.interact(() -> {
            app.session().want(desk().wanted().orElseThrow().withAmount(15));
            app.files().save();
        });
        until(Desk::isSaved);
        assertThat(said()).contains("without what is only being tried");
        assertThat(desk().shownTrial()).isPresent();
        assertThat(SvgFile.read(file).pattern().changes()).hasSize(1);
        robot.clickOn("#print");
        WaitForAsyncUtils.waitFor(
                30,
                TimeUnit.SECONDS,
                () -> robot.lookup("#print-said").queryAs(Label.class).getText().contains("only being tried"));
        robot.push(KeyCode.ESCAPE);
    }

    @Test
    void savedAgainWithoutAChangeTheBackupStaysWhatItWas(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
        assertThat(said()).contains("mine.svg.bak");
        robot.interact(() -> {
            app.session().hush();
            app.files().save();
        });
        until(d -> d.notice().isPresent());
        assertThat(said()).isEqualTo("mine.svg is saved already. Nothing has changed since.");
        Path backup = file.resolveSibling("mine.svg.bak");
        assertThat(SvgFile.read(backup).pattern().changes()).isEmpty();
    }

    /** The line lies over the foot of the table, where hems are; what is still to be done about something stays. */
    @Test
    void thatItIsSavedMakesRoomForTheHandOnTheTable(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
        until(d -> d.notice().isPresent());
        robot.clickOn("#notice .label");
        assertThat(said()).contains("mine.svg.bak");
        robot.clickOn("#table");
        assertThat(desk().notice()).isEmpty();
        robot.interact(() -> app.session().say(false, "editor.said.measures-later", Map.of("file", "anna.txt")));
        robot.interact(() -> robot.lookup("#table").query().fireEvent(scrolled()));
        assertThat(said()).contains("anna.txt");
    }

    private static ScrollEvent scrolled() {
        return new ScrollEvent(
                ScrollEvent.SCROLL,
                300,
                300,
                300,
                300,
                false,
                false,
                false,
                false,
                false,
                false,
                0,
                10,
                0,
                10,
                ScrollEvent.HorizontalTextScrollUnits.NONE,
                0,
                ScrollEvent.VerticalTextScrollUnits.NONE,
                0,
                0,
                null);
    }

    /** What is laid on the table while a save is going on is not taken for what was saved. */
    @Test
    void aSaveThatEndsAfterAnotherFileWasOpenedLeavesThatAlone(FxRobot robot) throws Exception {
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        until(d -> d.file().orElseThrow().name().equals("bodice.svg"));
        Desk skirt = desk();
        robot.interact(() -> {
            app.files().save(file.resolveSibling("bodice.svg"));
            // The window hears of the end of the save only after this.
            app.session().open(Opened.of(another()));
        });
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("Saved as bodice.svg");
        assertThat(desk().file().orElseThrow().path()).isEmpty();
        assertThat(desk().file().orElseThrow().work())
                .isNotSameAs(skirt.file().orElseThrow().work());
        assertThat(file.resolveSibling("bodice.svg")).exists();
    }

    private static OpenFile another() {
        try {
            Sample knit = Sample.all().get(3);
            return new OpenFile(knit.read(), Optional.empty(), knit.fileName());
        } catch (SvgProblem e) {
            throw new IllegalStateException(e);
        }
    }

    /** Without another question: in the hint of the button, and once it is done. Beside the name it is short. */
    @Test
    void whatSavingDoesToTheDrawingIsSaidBeforeAndAfter(FxRobot robot) throws Exception {
        Label state = robot.lookup(".top-bar .quiet").queryAs(Label.class);
        untilTold(robot, "Saving draws lines of Back and Front anew");
        assertThat(robot.lookup("#save").query().getAccessibleHelp()).contains("Every other line");
        assertThat(state.getText()).isEqualTo("not saved yet");

        robot.interact(() -> app.session().undo());
        robot.interact(() -> app.session().setGarment("kilt"));
        untilTold(robot, "Every line of the drawing stays as it is");
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
        assertThat(said()).contains("What was there before is kept");
        assertThat(state.getText()).isEqualTo("saved");
        assertThat(robot.lookup("#save").query().getAccessibleHelp()).doesNotContain("Saving");
    }

    private static void untilTold(FxRobot robot, String words) throws Exception {
        Node save = robot.lookup("#save").query();
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> save.getAccessibleHelp().contains(words));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** While something is tried, the line beside the name says so whether or not all else is saved. */
    @Test
    void whatIsTriedIsNeverCalledSaved(FxRobot robot) throws Exception {
        Label state = robot.lookup(".top-bar .quiet").queryAs(Label.class);
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
        assertThat(state.getText()).isEqualTo("saved");
        write(robot, "#amount", "+10 mm");
        until(d -> d.shownTrial().isPresent());
        assertThat(state.getText()).isEqualTo("trial, not kept");
        robot.interact(() -> app.session().setGarment("kilt"));
        write(robot, "#amount", "+10 mm");
        until(d -> d.shownTrial().isPresent());
        assertThat(state.getText()).isEqualTo("not saved yet \u00b7 trial, not kept");
    }

    @Test
    void whatCouldNotBeSavedIsTriedAgainInTheSamePlace(FxRobot robot) throws Exception {
        Path there = file.resolveSibling("later").resolve("mine.svg");
        robot.interact(() -> app.files().save(there));
        until(d -> d.notice().filter(Desk.Notice::unsaved).isPresent());
        assertThat(robot.lookup("#notice .label").queryAllAs(Label.class))
                .anySatisfy(l -> assertThat(l.getText())
                        .startsWith("Not saved; your work is still here. The folder \u201clater\u201d is gone."));
        assertThat(desk().isSaved()).isFalse();
        Files.createDirectory(there.getParent());
        robot.clickOn("#notice-again");
        until(Desk::isSaved);
        assertThat(there).exists();
        assertThat(robot.lookup("#notice-again").query().getParent().isVisible())
                .isFalse();
    }

    @Test
    void aFileThatIsGoneIsToldOnceAndWrittenAnew(FxRobot robot) throws Exception {
        Files.delete(file);
        robot.interact(() -> app.files().lookAgain());
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("mine.svg is no longer in its place");
        robot.interact(() -> {
            app.session().hush();
            app.files().lookAgain();
        });
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
        assertThat(said()).startsWith("Saved as mine.svg.").contains("Redrawn: Back and Front. All else is as it was.");
        assertThat(answers.asked).isEmpty();
        assertThat(SvgFile.read(file).pattern().changes()).hasSize(1);
    }

    @Test
    void aFolderRenamedMeanwhileCostsNothing(FxRobot robot) throws Exception {
        Path elsewhere =
                file.getParent().resolveSibling("renamed-" + file.getParent().getFileName());
        Files.move(file.getParent(), elsewhere);
        robot.interact(() -> app.files().lookAgain());
        until(d -> said().contains("no longer in its place"));
        robot.interact(() -> app.files().save());
        until(d -> said().contains("is gone. Make it again"));
        assertThat(desk().isSaved()).isFalse();
        answers.toSave.add(elsewhere.resolve("mine.svg"));
        robot.interact(() -> app.files().saveAs());
        until(Desk::isSaved);
        assertThat(SvgFile.read(elsewhere.resolve("mine.svg")).pattern().changes())
                .hasSize(1);
    }

    /** Who may write anything, such as an administrator, is refused as well. */
    @Test
    void aFileMadeReadOnlyMeanwhileIsNotReplaced(FxRobot robot) throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        byte[] before = Files.readAllBytes(file);
        robot.interact(() -> app.files().save());
        until(d -> said().contains("write-protected"));
        assertThat(desk().isSaved()).isFalse();
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        answers.toSave.add(file.resolveSibling("mine too.svg"));
        robot.interact(() -> app.files().saveAs());
        until(Desk::isSaved);
        assertThat(desk().file().orElseThrow().name()).isEqualTo("mine too.svg");
    }

    /** A pipe into which nobody writes is the slowest disk there is: reading it can be given up, and the work goes on. */
    @Test
    void aFileThatNeverComesIsWaitedForInTheBackground(FxRobot robot) throws Exception {
        Path pipe = file.resolveSibling("pipe.svg");
        Process made = new ProcessBuilder("mkfifo", pipe.toString()).start();
        assertThat(made.waitFor()).isZero();
        robot.interact(() -> app.files().open(pipe));
        widen(robot, 5);
        assertThat(desk().pattern().changes()).hasSize(2);
        var work = app.files().background().workProperty().get().orElseThrow();
        assertThat(work.file()).isEqualTo("pipe.svg");
        robot.interact(() -> {
            work.cancel().orElseThrow().run();
            app.files().save();
        });
        until(Desk::isSaved);
        // Lets the one that waits go.
        Files.write(pipe, new byte[0]);
        assertThat(desk().file().orElseThrow().name()).isEqualTo("mine.svg");
    }

    /** A file stands where the folder for unsaved work is to be. */
    @Test
    void whereUnsavedWorkCannotBeKeptThatIsSaidOnceThereIsSome(FxRobot robot) throws Exception {
        Path state = Files.writeString(folder.resolve("in-the-way"), "");
        robot.interact(() -> {
            stage.hide();
            app.start(stage, state, answers);
        });
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        assertThat(desk().notice()).isEmpty();
        widen(robot, 20);
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("in-the-way", "Save often");
        robot.interact(() -> app.session().hush());
        robot.interact(() -> app.files().save());
        until(Desk::isSaved);
    }
}
