package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.svg.SvgFile;
import easewright.svg.disk.FileClaim;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.SplitMenuButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** Files: chosen, saved, left, changed by others; what is asked on the way is answered by {@link Answers}. */
class FilesJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private Path skirt(String name) throws Exception {
        Sample sample = Sample.all().get(0);
        return Files.write(folder.resolve(name), sample.read().bytes());
    }

    private void widen(FxRobot robot, Path file) throws Exception {
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        widen(robot);
    }

    private void widen(FxRobot robot) throws Exception {
        robot.clickOn("#ease-hip .level-name");
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> !d.pattern().changes().isEmpty());
    }

    private String said() {
        return desk().notice().map(n -> desk().words().of(n.key(), n.values())).orElse("");
    }

    @Test
    void chosenChangedSavedAndFoundAmongTheLastOnes(FxRobot robot) throws Exception {
        Path file = skirt("mine.svg");
        answers.toOpen.add(file);
        robot.clickOn("#start-open");
        until(Desk::isOpen);
        widen(robot);
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        assertThat(SvgFile.read(file).pattern().changes()).hasSize(1);
        assertThat(answers.asked).containsExactly("open");
        assertThat(app.files().recent()).containsExactly(file);
        robot.interact(
                () -> robot.lookup("#open").queryAs(SplitMenuButton.class).show());
        robot.clickOn("mine.svg  \u2013  " + folder);
        until(d -> d.pattern().changes().size() == 1 && !d.history().canUndo());
    }

    @Test
    void unsavedChangesAreAskedAboutBeforeTheyAreLeft(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        widen(robot);
        Path other = skirt("other.svg");
        answers.toOpen.add(other);
        robot.push(KeyCode.SHORTCUT, KeyCode.O);
        until(d -> answers.asked.size() > 1);
        assertThat(answers.asked).containsExactly("open", "leave skirt.svg");
        assertThat(desk().file().orElseThrow().name()).isEqualTo("skirt.svg");

        answers.leave.add(Asking.Leave.SAVE_FIRST);
        Path saved = folder.resolve("saved-on-the-way.svg");
        answers.toSave.add(saved);
        robot.interact(() -> app.files().open(other));
        until(d -> d.file().orElseThrow().name().equals("other.svg"));
        assertThat(SvgFile.read(saved).pattern().changes()).hasSize(1);

        widen(robot);
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        robot.interact(() -> app.files().open(saved));
        until(d -> d.file().orElseThrow().name().equals("saved-on-the-way.svg"));
        assertThat(SvgFile.read(other).pattern().changes()).isEmpty();
    }

    /** Saved first and then opened anew, a file is what was saved, not what was read before the question. */
    @Test
    void theSameFileOpenedAgainIsTheOneSavedFirst(FxRobot robot) throws Exception {
        Path file = skirt("again.svg");
        widen(robot, file);
        answers.leave.add(Asking.Leave.SAVE_FIRST);
        robot.interact(() -> app.files().open(file));
        until(d -> d.isSaved() && !d.history().canUndo());
        assertThat(desk().pattern().changes()).hasSize(1);
        assertThat(desk().file().orElseThrow().svg().bytes()).isEqualTo(Files.readAllBytes(file));
    }

    @Test
    void whatCannotBeReadLeavesTheWorkUnasked(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        widen(robot);
        Path missing = folder.resolve("never-there.svg");
        Path note = Files.writeString(folder.resolve("letter.svg"), "Dear all, no drawing here");
        for (Path file : List.of(missing, note, folder)) {
            robot.interact(() -> {
                app.session().hush();
                app.files().open(file);
            });
            until(d -> d.notice().isPresent());
            assertThat(said()).contains(file.getFileName().toString()).doesNotContain("problem.");
        }
        assertThat(answers.asked).isEmpty();
        assertThat(desk().pattern().changes()).hasSize(1);
        assertThat(desk().isSaved()).isFalse();
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

    @Test
    void aDroppedFileIsOpenedAndWhatIsNoDrawingIsRefusedWithAReason(FxRobot robot) throws Exception {
        Path file = skirt("dropped.svg");
        Path note = Files.writeString(folder.resolve("note.txt"), "not a drawing");
        robot.interact(() -> {
            app.files().openOneOf(List.of());
            app.files().openOneOf(List.of(note, file));
        });
        until(d -> d.file().filter(f -> f.name().equals("dropped.svg")).isPresent());
        assertThat(said()).isEmpty();
        Path other = skirt("dropped-too.svg");
        robot.interact(() -> app.files().openOneOf(List.of(file, note, other)));
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("dropped.svg is on the table").endsWith("after it: 1.");
        robot.interact(() -> app.files().openOneOf(List.of(note)));
        until(d -> d.notice().isPresent());
        assertThat(said()).contains("note.txt").doesNotContain("problem.");
        assertThat(desk().file().orElseThrow().name()).isEqualTo("dropped.svg");
    }

    @Test
    void aSecondWindowOnTheSameFileIsWarned(FxRobot robot) throws Exception {
        Path file = skirt("twice.svg");
        Path state = Files.createDirectories(folder.resolve("state-of-twice"));
        try (FileClaim other = FileClaim.take(file, state).orElseThrow()) {
            assertThat(other).isNotNull();
            robot.interact(() -> {
                stage.hide();
                app.start(stage, state, answers);
                app.files().open(file);
            });
            until(d -> d.notice().isPresent());
            assertThat(said()).contains("another window");
        }
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

    /** Reading that is given up leaves what lies on the table, whenever it comes to its end. */
    @Test
    void readingCanBeGivenUp(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        StringBuilder big = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='9m' height='9m'>");
        for (int i = 0; i < 60_000; i++) {
            big.append("<path d='M0 0h").append(100 + i).append("v100h-90z'/>");
        }
        Path file = Files.write(
                folder.resolve("big.svg"), big.append("</svg>").toString().getBytes(StandardCharsets.UTF_8));
        robot.interact(() -> {
            app.files().open(file);
            app.files()
                    .background()
                    .workProperty()
                    .get()
                    .orElseThrow()
                    .cancel()
                    .orElseThrow()
                    .run();
        });
        assertThat(app.files().background().workProperty().get()).isEmpty();
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        until(d -> d.file().orElseThrow().name().equals("bodice.svg"));
        assertThat(desk().notice()).isEmpty();
    }
}
