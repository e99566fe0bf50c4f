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

    @Test
    void aDroppedFileIsOpenedAndWhatIsNoDrawingIsRefusedWithAReason(FxRobot robot) throws Exception {
        Path file = skirt("dropped.svg");
        Path note = Files.writeString(folder.resolve("note.txt"), "not a drawing");
        robot.interact(() -> {
            app.files().openOneOf(List.of());
            app.files().openOneOf(List.of(note, file));
        });
        until(d -> d.file().filter(f -> f.name().equals("dropped.svg")).isPresent());
        until(d -> said().contains("note.txt"));
        assertThat(said()).contains("no list of measurements");
        Path other = skirt("dropped-too.svg");
        robot.interact(() -> app.files().openOneOf(List.of(file, note, other)));
        until(d -> said().contains("dropped.svg is on the table"));
        assertThat(said()).contains("after it: 1.", "note.txt");
        robot.interact(() -> app.files().openOneOf(List.of(note)));
        until(d -> said().startsWith("note.txt"));
        assertThat(said()).doesNotContain("problem.");
        assertThat(desk().file().orElseThrow().name()).isEqualTo("dropped.svg");
    }

    @Test
    void whereTheFirstDroppedIsNoDrawingTheNextIsTried(FxRobot robot) throws Exception {
        Path torn = Files.writeString(folder.resolve("torn.svg"), "<svg");
        Path letter = Files.writeString(folder.resolve("letter.svg"), "Dear all");
        Path good = skirt("good.svg");
        robot.interact(() -> app.files().openOneOf(List.of(torn, letter, good, torn)));
        until(d -> said().contains("Passed over"));
        assertThat(desk().file().orElseThrow().name()).isEqualTo("good.svg");
        assertThat(said()).contains("torn.svg", "letter.svg", "after it: 1.");

        robot.interact(() -> app.files().openOneOf(List.of(letter, torn)));
        until(d -> said().contains("letter.svg") && !said().contains("Passed over"));
        assertThat(desk().file().orElseThrow().name()).isEqualTo("good.svg");
    }

    @Test
    void aDroppedTableAndDroppedMeasurementsAreTakenForWhatTheyAre(FxRobot robot) throws Exception {
        Path table = Files.writeString(
                folder.resolve("mine.txt"),
                "id: mine\ngarment: skirt\nlevel: hip\nunit: cm\nsource: my notebook\nstanding: common practice\n"
                        + "band: as I like it | 4 | 6\n");
        Path body = Files.writeString(folder.resolve("anna.txt"), "name: Anna\nHIP: 99.5\nwaist: 71\n");
        robot.interact(() -> app.files().openOneOf(List.of(body)));
        until(d -> said().contains("Open your pieces first"));
        Path with = skirt("with.svg");
        robot.interact(() -> app.files().openOneOf(List.of(table, with, body)));
        until(d -> said().contains("The measurements of anna.txt"));
        assertThat(said()).contains("mine.txt is among your own tables");
        assertThat(line("hip").body().orElseThrow()).isEqualTo(995);
        assertThat(line("hip").classes()).anyMatch(c -> c.word().equals("as I like it"));
        robot.interact(() -> app.session().undo());
        assertThat(line("hip").body().orElseThrow()).isNotEqualTo(995);

        Path wrong = Files.writeString(
                folder.resolve("wrong.txt"), Files.readString(table).replace("hip", "hips"));
        robot.interact(() -> app.files().openOneOf(List.of(wrong)));
        until(d -> said().contains("wrong.txt"));
        assertThat(said()).contains("Line 3", "high hip");
        assertThat(app.session().ownTables().files()).containsExactly(table);
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
