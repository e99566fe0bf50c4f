package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.file.RecentPlaces;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.svg.SvgFile;
import easewright.svg.disk.FileClaim;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitMenuButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Files: opened, saved, left, opened again; what is asked on the way is answered by {@link Answers}. */
class FilesJourneyTest extends FilesJourney {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
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
        WaitForAsyncUtils.waitForFxEvents();
        MenuItem item = robot.lookup("#open").queryAs(SplitMenuButton.class).getItems().stream()
                .filter(i -> i.getText().startsWith("mine.svg"))
                .findFirst()
                .orElseThrow();
        assertThat(item.getText())
                .isEqualTo("mine.svg  \u2013  "
                        + RecentPlaces.of(List.of(file), Path.of(System.getProperty("user.home")))
                                .get(0));
        assertThat(item.getStyleableNode().getProperties().values())
                .as("the whole of it beside the pointer")
                .anyMatch(v -> v instanceof Tooltip t && t.getText().equals(file.toString()));
        robot.clickOn(item.getText());
        until(d -> d.pattern().changes().size() == 1 && !d.history().canUndo());
        Files.delete(file);
        robot.interact(() -> app.files().lookAgain());
        until(d -> app.files().recent().isEmpty());
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
