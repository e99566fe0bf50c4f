package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is kept from a crash while the window is at work, and what is said where that cannot be done. */
class KeptSafeJourneyTest extends KeptJourney {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : kept()) {
            texts.add(Files.readString(file, StandardCharsets.ISO_8859_1));
        }
        return texts;
    }

    private void untilKept(Predicate<List<String>> wanted) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> wanted.test(texts()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Also beside a file that is saved; and nothing stays of what was left or saved. */
    @Test
    void whatIsOnlyTriedOrHalfTypedIsKept(FxRobot robot) throws Exception {
        Path file = Files.write(
                folder.resolve("tried.svg"), Sample.all().get(0).read().bytes());
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#ease-hip .level-name");
        write(robot, "#amount", "2 cm");
        until(d -> d.shownTrial().isPresent());
        untilKept(all -> all.size() == 1 && all.get(0).contains("amount=20.0"));
        assertThat(desk().isSaved()).isTrue();

        robot.clickOn("#keep");
        untilKept(all -> all.size() == 1 && !all.get(0).contains("amount="));
        robot.clickOn("#amount").write("3,");
        untilKept(all -> all.size() == 1 && all.get(0).contains("text=3,"));
        robot.push(KeyCode.ESCAPE);
        untilKept(all -> all.size() == 1 && !all.get(0).contains("text="));

        write(robot, "#amount", "1 cm");
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        untilKept(all -> all.size() == 1 && all.get(0).contains("amount=10.0"));
        robot.clickOn("#leave");
        untilKept(List::isEmpty);
    }

    @Test
    void whereNothingCanBeKeptThatIsSaidUntilItCan(FxRobot robot) throws Exception {
        Path recovery = state.resolve("recovery");
        Files.delete(recovery.resolve("claims.lock"));
        Files.delete(recovery);
        Files.writeString(recovery, "in the way");
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> said().contains("could not be kept safe"));
        Label shown = robot.lookup(".top-bar .quiet").queryAs(Label.class);
        assertThat(shown.getText()).contains("not safe from a crash");

        Files.delete(recovery);
        untilKept(all -> all.size() == 1);
        until(d -> said().contains("kept safe again"));
        assertThat(shown.getText()).startsWith("not saved yet").doesNotContain("not safe");
    }
}
