package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** A window that is killed in the middle of the work, and the next one that offers it back. */
class CrashTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Override
    Path state() {
        return folder.resolve("state");
    }

    /** Before this window is begun, which is given less time than another one may take on a busy machine. */
    @BeforeAll
    static void killAWindowAtWork() throws Exception {
        Path state = Files.createDirectories(folder.resolve("state"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path")));
        for (String key :
                List.of("testfx.robot", "testfx.headless", "prism.order", "java.awt.headless", "headless.geometry")) {
            if (System.getProperty(key) != null) {
                command.add("-D" + key + "=" + System.getProperty(key));
            }
        }
        command.addAll(List.of(WindowAtWork.class.getName(), state.toString()));
        Process window = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = window.inputReader(StandardCharsets.UTF_8)) {
            assertThat(out.lines().filter("kept"::equals).findFirst()).isPresent();
        } finally {
            window.destroyForcibly();
        }
        assertThat(window.waitFor(20, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void theWorkIsOfferedBackAndNothingOfItIsMissing(FxRobot robot) throws Exception {
        robot.clickOn("#left-discard");
        assertThat(answers.asked).anyMatch(a -> a.startsWith("throw away"));
        assertThat(robot.lookup("#left-behind").query().isVisible()).isTrue();

        robot.clickOn("#left-restore");
        until(Desk::isOpen);
        assertThat(desk().pattern().changes()).hasSize(1);
        assertThat(desk().isSaved()).isFalse();
        assertThat(line("hip").body().orElseThrow()).isCloseTo(985, within(1e-9));
        assertThat(robot.lookup("#left-behind").query().isVisible()).isFalse();
        assertThat(desk().shownTrial().orElseThrow().wanted().amount()).isEqualTo(-12);
        assertThat(robot.lookup("#amount").queryAs(TextField.class).getText()).isEqualTo("1,");
        assertThat(robot.lookup("#keep").query().isDisabled()).isTrue();
        assertThat(desk().notice()
                        .map(n -> desk().words().of(n.key(), n.values()))
                        .orElseThrow())
                .contains("is back as it was", "What was being tried is on the table again", "is back in its field");
        robot.clickOn("#amount").push(KeyCode.ESCAPE);
        assertThat(robot.lookup("#keep").query().isDisabled()).isFalse();
        robot.clickOn("#leave");
        assertThat(desk().trial()).isEmpty();

        Path saved = folder.resolve("saved-after-all.svg");
        answers.toSave.add(saved);
        robot.clickOn("#save");
        until(Desk::isSaved);
        app.files().close();
        try (Stream<Path> left = Files.list(folder.resolve("state/recovery"))) {
            assertThat(left.filter(p -> p.toString().endsWith(".kept"))).isEmpty();
        }
    }
}
