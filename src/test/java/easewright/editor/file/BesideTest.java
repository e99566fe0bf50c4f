package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class BesideTest {
    @TempDir
    Path folder;

    /** A slow disk gives them only when another file lies on the table: they were not meant for that one. */
    @Test
    void measurementsAreEnteredForThePiecesThatTheyWereDroppedOn(FxRobot robot) throws Exception {
        Path measures = Files.writeString(folder.resolve("me.txt"), "Hip girth: 101 cm\nBust girth: 99 cm\n");
        Session session = new Session(LengthUnit.CM, false);
        Background background = new Background();
        Beside beside = new Beside(session, background);
        session.open(OpenedSample.skirt());
        robot.interact(() -> beside.take(List.of(measures), List.of(), () -> {}));
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> session.desk().notice().isPresent());
        assertThat(session.desk().pattern().body().measures()).anyMatch(m -> m.mm() == 1010);

        session.open(OpenedSample.skirt());
        var other = OpenedSample.of("bodice");
        robot.interact(() -> {
            beside.take(List.of(measures), List.of(), () -> {});
            session.open(other);
        });
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> session.desk().notice().isPresent());
        assertThat(session.desk().pattern()).isSameAs(other.file().svg().pattern());
        assertThat(session.desk().notice().orElseThrow().values().toString()).contains("then drop it on them");
        robot.interact(background::end);
    }
}
