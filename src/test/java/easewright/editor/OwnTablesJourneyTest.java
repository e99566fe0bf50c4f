package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** A table of one's own is added, mended, remembered and removed. */
class OwnTablesJourneyTest extends Journey {
    private Path kept;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Override
    Path state() throws Exception {
        kept = super.state();
        return kept;
    }

    private static String said(FxRobot robot) {
        return robot.lookup("#own-tables .table-said").queryAs(Labeled.class).getText();
    }

    private static void press(FxRobot robot, String what) {
        robot.interact(() ->
                robot.lookup(what).queryAs(javafx.scene.control.Button.class).fire());
    }

    @Test
    void addedMendedRememberedAndRemoved(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        Path file = Files.writeString(
                folder.resolve("mine.txt"),
                "id: mine\ngarment: skirt\nlevel: hips\nunit: cm\nsource: my notebook\nstanding: common practice\n"
                        + "band: as I like it | 4 | 6\n");
        press(robot, "#add-table");
        assertThat(answers.asked).containsExactly("table");
        assertThat(robot.lookup("#own-tables .table-said").queryAll())
                .as("thought better of it")
                .isEmpty();

        answers.tables.add(file);
        press(robot, "#add-table");
        assertThat(said(robot)).contains("Line 3").contains("\"hips\"").contains("high hip");
        assertThat(Settings.read(kept).tables()).containsExactly(file);

        Files.writeString(file, Files.readString(file).replace("hips", "hip"));
        press(robot, "#own-tables .table-again");
        assertThat(said(robot)).contains("classes at hip (skirt)");
        assertThat(line("hip").classes()).anyMatch(c -> c.word().equals("as I like it"));

        press(robot, "#own-tables .table-remove");
        assertThat(line("hip").classes()).noneMatch(c -> c.word().equals("as I like it"));
        assertThat(Settings.read(kept).tables()).isEmpty();
        assertThat(file).exists();
    }
}
