package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.svg.disk.EarlierStates;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.Recovery;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Work left behind by windows that did not end in good order, whatever has happened to it and to its file since. */
class LeftBehindJourneyTest extends KeptJourney {
    private Path gone;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** One piece of work whose file is gone, and one that is torn. */
    @Override
    Path state() throws Exception {
        super.state();
        gone = Files.createTempDirectory(folder, "files").resolve("gone.svg");
        byte[] skirt = Sample.all().get(0).read().bytes();
        Files.write(gone, skirt);
        try (Recovery window = new Recovery(state)) {
            window.keep(Path.of("torn.svg"), Optional.empty(), skirt, "", EarlierStates.NONE);
            Path torn = kept().get(0);
            window.keep(gone, Optional.of(Fingerprint.of(skirt)), skirt, "", EarlierStates.NONE);
            Files.write(torn, Arrays.copyOf(Files.readAllBytes(torn), 3000));
        }
        Files.delete(gone);
        return state;
    }

    @Test
    void whatIsBroughtBackIsKeptByThisWindowBeforeItIsForgotten(FxRobot robot) throws Exception {
        List<Path> left = kept();
        assertThat(left).hasSize(1);
        robot.clickOn("#left-restore");
        until(Desk::isOpen);
        assertThat(said()).contains("gone.svg", "no longer in its place");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> kept().size() == 1 && !kept().equals(left));
        assertThat(desk().isSaved()).isFalse();

        answers.toSave.add(gone);
        robot.clickOn("#save");
        until(Desk::isSaved);
        assertThat(answers.asked).contains("save gone.svg");
        assertThat(gone).exists();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> kept().isEmpty());
    }

    @Test
    void whatIsDamagedIsSaidLastAndOnce(FxRobot robot) throws Exception {
        answers.throwAway.add(true);
        robot.clickOn("#left-discard");
        Label what = robot.lookup("#left-behind .label").nth(1).queryAs(Label.class);
        assertThat(what.getText()).contains("damaged", "as it was last saved");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> kept().isEmpty());
        robot.clickOn("#left-later");
        assertThat(robot.lookup("#left-behind").query().isVisible()).isFalse();
        try (Recovery next = new Recovery(state)) {
            assertThat(next.leftBehind()).isEmpty();
            assertThat(next.putAsideDamaged()).isEmpty();
        }
    }

    /** Offered until it lies on the table: who stays with the work of now has it still. */
    @Test
    void whoStaysIsOfferedItStill(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> {
            app.session().want(desk().wanted().orElseThrow().withAmount(10));
            app.session().keep();
        });
        robot.clickOn("#left-restore");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> answers.asked.contains("leave skirt.svg"));
        assertThat(robot.lookup("#left-behind").query().isVisible()).isTrue();
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        robot.clickOn("#left-restore");
        until(d -> d.file().orElseThrow().name().equals("gone.svg"));
        assertThat(robot.lookup("#left-behind .label")
                        .nth(1)
                        .queryAs(Label.class)
                        .getText())
                .contains("damaged");
    }
}
