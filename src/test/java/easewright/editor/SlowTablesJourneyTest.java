package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import easewright.editor.model.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A table of one's own on a disk that does not answer: the window is there without it, and the table comes later. */
class SlowTablesJourneyTest extends Journey {
    private static final String TABLE = """
            id: %1$s
            garment: skirt
            level: hip
            unit: cm
            source: my notebook
            standing: common practice
            band: %2$s | 4 | 6
            """;

    private Path slow;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** A pipe that nobody has written to is as slow as a disk can be. */
    @Override
    Path state() throws Exception {
        Path state = super.state();
        slow = state.resolve("slow.txt");
        Path quick = Files.writeString(state.resolve("quick.txt"), TABLE.formatted("quick", "as I like it"));
        assumeTrue(new ProcessBuilder("mkfifo", slow.toString()).start().waitFor() == 0, "pipes with a name");
        assertThat(Settings.FIRST.withTables(List.of(), List.of(slow, quick)).write(state))
                .isTrue();
        return state;
    }

    private static List<String> said(FxRobot robot) {
        return robot.lookup("#own-tables .table-said").queryAllAs(Labeled.class).stream()
                .map(Labeled::getText)
                .toList();
    }

    private boolean judgedBy(String word) {
        return line("hip").classes().stream().anyMatch(c -> c.word().equals(word));
    }

    @Test
    void theWindowDoesNotWaitForIt(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        until(d -> judgedBy("as I like it"));
        assertThat(said(robot).get(0)).contains("Still being read");
        assertThat(said(robot).get(1)).contains("classes at hip");
        // Gone to again and again, the window does not ask again what has not been answered.
        robot.interact(() -> app.files().lookAgain());
        robot.interact(() -> app.files().lookAgain());

        Files.writeString(slow, TABLE.formatted("slow", "slowly"));
        until(d -> judgedBy("slowly"));
        assertThat(judgedBy("as I like it")).isTrue();
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> said(robot).stream().allMatch(line -> line.contains("classes at hip")));
        assertThat(desk().notice())
                .as("nothing to say of what comes as it should")
                .isEmpty();
    }
}
