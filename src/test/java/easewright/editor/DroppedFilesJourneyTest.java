package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** Files dropped on the window: drawings, tables, measurements, and what is none of these. */
class DroppedFilesJourneyTest extends FilesJourney {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
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
        assertThat(said()).contains("cannot be read as a drawing, an ease table or a list of measurements");
        Path other = skirt("dropped-too.svg");
        robot.interact(() -> app.files().openOneOf(List.of(file, note, other)));
        until(d -> said().contains("dropped.svg is on the table"));
        assertThat(said()).contains("Still to open: 1.", "note.txt");
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
        until(d -> said().contains("Left out"));
        assertThat(desk().file().orElseThrow().name()).isEqualTo("good.svg");
        assertThat(said()).contains("torn.svg", "letter.svg", "Still to open: 1.");

        robot.interact(() -> app.files().openOneOf(List.of(letter, torn)));
        until(d -> said().contains("letter.svg") && !said().contains("Left out"));
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
        assertThat(said()).contains("mine.txt is now among your own ease tables");
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
}
