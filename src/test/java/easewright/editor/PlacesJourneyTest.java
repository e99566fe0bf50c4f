package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Where work is saved: over its file, over what others made of it, under another name, nowhere. */
class PlacesJourneyTest extends FilesJourney {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotReplacedUnasked(FxRobot robot) throws Exception {
        Path file = skirt("shared.svg");
        widen(robot, file);
        Files.writeString(file, "<!-- by another program -->", StandardOpenOption.APPEND);
        byte[] theirs = Files.readAllBytes(file);
        robot.interact(() -> app.files().lookAgain());
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("shared.svg", "another program");

        robot.clickOn("#save");
        until(d -> said().contains("Nothing was saved"));
        assertThat(answers.asked).containsExactly("meanwhile shared.svg");
        assertThat(Files.readAllBytes(file)).isEqualTo(theirs);
        assertThat(desk().isSaved()).isFalse();

        answers.meanwhile.add(Asking.Meanwhile.OTHER_NAME);
        Path beside = folder.resolve("beside.svg");
        answers.toSave.add(beside);
        robot.clickOn("#save");
        until(Desk::isSaved);
        assertThat(Files.readAllBytes(file)).isEqualTo(theirs);
        assertThat(desk().file().orElseThrow().path()).contains(beside);
    }

    /** A drawing of the user's own: saving asks for a new file, and from then on goes there. */
    @Test
    void aDrawingWithoutMarksIsNotReplaced(FxRobot robot) throws Exception {
        Path drawing = folder.resolve("tee.svg");
        Files.copy(Path.of("src/test/resources/marking/four-pieces.svg"), drawing);
        byte[] drawn = Files.readAllBytes(drawing);
        answers.toOpen.add(drawing);
        robot.clickOn("#start-open");
        until(Desk::isOpen);
        robot.interact(() -> app.session().edit(desk().pattern().withGarment("shirt")));
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        assertThat(answers.asked).containsExactly("open", "save tee-fitted.svg");
        assertThat(desk().isSaved()).as("no name was given").isFalse();

        Path fitted = folder.resolve("tee-fitted.svg");
        answers.toSave.add(fitted);
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        assertThat(Files.readAllBytes(drawing)).isEqualTo(drawn);
        assertThat(folder.resolve("tee.svg.bak")).doesNotExist();
        robot.interact(() -> app.session().edit(desk().pattern().withGarment("top")));
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        assertThat(answers.asked).as("asked once").hasSize(3);
        assertThat(SvgFile.read(fitted).pattern().garment()).isEqualTo("top");

        robot.clickOn("#export");
        assertThat(answers.asked).last().isEqualTo("save tee-fitted-2.svg");
        assertThat(Files.readAllBytes(drawing)).isEqualTo(drawn);
    }

    @Test
    void replacedWhereTheUserSaysSo(FxRobot robot) throws Exception {
        Path file = skirt("replaced.svg");
        widen(robot, file);
        Files.writeString(file, "something else");
        answers.meanwhile.add(Asking.Meanwhile.REPLACE);
        robot.clickOn("#save");
        until(Desk::isSaved);
        assertThat(SvgFile.read(file).pattern().changes()).hasSize(1);
        assertThat(folder.resolve("replaced.svg.bak")).hasContent("something else");
    }

    /** The ending says whether a drawing is packed. */
    @Test
    void aPackedNameHoldsAPackedDrawing(FxRobot robot) throws Exception {
        Path plain = skirt("plain.svg");
        widen(robot, plain);
        Path packed = folder.resolve("small.svgz");
        answers.toSave.add(packed);
        robot.clickOn("#export");
        until(Desk::isSaved);
        assertThat(Files.readAllBytes(packed)).startsWith(0x1F, 0x8B);
        assertThat(SvgFile.read(packed).pattern().changes()).hasSize(1);
        robot.interact(() -> app.files().open(packed));
        until(d -> d.file().orElseThrow().svg().name().endsWith("small.svgz"));
        answers.toSave.add(plain);
        robot.clickOn("#export");
        until(d -> d.file().orElseThrow().name().equals("plain.svg"));
        assertThat(Files.readString(plain)).contains("<svg");
        assertThat(SvgFile.read(plain).pattern()).isEqualTo(desk().pattern());
    }

    @Test
    void whatCannotBeSavedSaysWhyAndStays(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        widen(robot);
        answers.toSave.add(folder.resolve("no-such-folder").resolve("skirt.svg"));
        robot.clickOn("#export");
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("folder").doesNotContain("problem.");
        assertThat(desk().isSaved()).isFalse();
        assertThat(desk().file().orElseThrow().path()).isEqualTo(Optional.empty());
    }

    /** Whoever works by keys has not left the field: what is typed there is saved as well. */
    @Test
    void whatIsBeingTypedIsTakenBeforeItIsSavedOrLeft(FxRobot robot) throws Exception {
        Path file = folder.resolve("typed.svg");
        openTheSkirt(robot);
        answers.toSave.add(file);
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("104");
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(d -> d.file().orElseThrow().saved() && d.isSaved());
        assertThat(line("hip").body().orElseThrow()).isCloseTo(1040, within(1e-9));

        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("96");
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> answers.asked.contains("leave typed.svg"));
        assertThat(line("hip").body().orElseThrow()).isCloseTo(960, within(1e-9));

        // What was refused is not taken for the next garment.
        write(robot, "#body-hip", "ninety");
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        robot.interact(() -> app.files().openSample(Sample.all().get(0)));
        until(d -> !d.file().orElseThrow().name().equals("typed.svg"));
        robot.clickOn("#ease-hip .level-name");
        assertThat(robot.lookup("#body-hip").queryAs(TextField.class).getText()).isNotEqualTo("ninety");
    }
}
