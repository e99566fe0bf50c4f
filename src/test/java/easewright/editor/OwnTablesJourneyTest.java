package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.Settings;
import easewright.pattern.Cloth;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

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

    /** A table is read away from the window. */
    private static void untilSaid(FxRobot robot, String what) throws Exception {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup("#own-tables .table-said").queryAllAs(Labeled.class).stream()
                        .anyMatch(l -> l.getText().contains(what)));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void press(FxRobot robot, String what) {
        robot.interact(() ->
                robot.lookup(what).queryAs(javafx.scene.control.Button.class).fire());
    }

    /** Settings are written away from the window. */
    private void untilRemembered(List<Path> tables) throws Exception {
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> Settings.read(kept).tables().equals(tables));
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
        untilSaid(robot, "Line 3");
        assertThat(said(robot)).contains("\u201chips\u201d").contains("high hip");
        untilRemembered(List.of(file));

        Files.writeString(file, Files.readString(file).replace("hips", "hip"));
        press(robot, "#own-tables .table-again");
        untilSaid(robot, "classes at hip (skirt)");
        assertThat(line("hip").classes()).anyMatch(c -> c.word().equals("as I like it"));

        // What becomes of it meanwhile is seen when the window is gone to again.
        Files.writeString(file, Files.readString(file).replace("as I like it", "as she likes it"));
        robot.interact(() -> app.files().lookAgain());
        until(d -> d.notice().isPresent());
        assertThat(line("hip").classes()).anyMatch(c -> c.word().equals("as she likes it"));
        String good = Files.readString(file);
        Files.writeString(file, good.replace("| 6", "| six"));
        robot.interact(() -> app.files().lookAgain());
        until(d -> d.notice().filter(Desk.Notice::bad).isPresent());
        assertThat(desk().words()
                        .of(
                                desk().notice().orElseThrow().key(),
                                desk().notice().orElseThrow().values()))
                .contains("mine.txt has changed and cannot be used", "Line 7");
        assertThat(line("hip").classes()).noneMatch(c -> c.word().equals("as she likes it"));
        Files.writeString(file, good);
        robot.interact(() -> app.files().lookAgain());
        until(d -> d.notice().filter(n -> !n.bad()).isPresent());
        assertThat(line("hip").classes()).anyMatch(c -> c.word().equals("as she likes it"));

        press(robot, "#own-tables .table-remove");
        assertThat(line("hip").classes()).noneMatch(c -> c.word().equals("as I like it"));
        untilRemembered(List.of());
        assertThat(file).exists();
    }

    @Test
    void aTableForAnotherClothSaysSo(FxRobot robot) throws Exception {
        Path bare = Files.writeString(
                folder.resolve("bare.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'>"
                        + "<path d='M50 50H250V250H50Z' fill='none' stroke='black'/></svg>");
        robot.interact(() -> app.files().open(bare));
        until(Desk::isOpen);
        answers.tables.add(Files.writeString(
                folder.resolve("mine.txt"),
                "id: mine\ngarment: skirt\nlevel: hip\nunit: cm\nsource: my notebook\nstanding: common practice\n"
                        + "band: as I like it | 4 | 6\n"));
        press(robot, "#add-table");
        untilSaid(robot, "classes at hip (skirt)");
        assertThat(said(robot)).doesNotContain("Nothing in it");

        robot.interact(() -> app.session()
                .setCloth(new Cloth(
                        true,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
        assertThat(said(robot)).contains("Nothing in it is for this garment and cloth");
    }
}
