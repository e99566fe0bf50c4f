package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class OutsideTest {
    @TempDir
    Path folder;

    /** The new file may be on the disk before the window that writes it hears so: no other program has changed it. */
    @Test
    void whatTheWindowItselfWritesIsNoChangeByAnother(FxRobot robot) throws Exception {
        Path path = Files.writeString(
                folder.resolve("mine.svg"), Samples.svg(Samples.drafts().get(0).draft()));
        Session session = new Session(LengthUnit.CM, false);
        OpenFile file = new OpenFile(SvgFile.read(path), Optional.of(path), "mine.svg");
        session.open(Opened.of(file));
        Background background = new Background();
        AtomicBoolean saving = new AtomicBoolean(true);
        CountDownLatch compared = new CountDownLatch(1);
        Outside outside = new Outside(session, background, () -> {
            compared.countDown();
            return saving.get();
        });
        outside.seen(file.seen());
        Files.writeString(path, Files.readString(path) + "<!-- written -->");
        robot.interact(outside::lookAgain);
        assertThat(compared.await(20, TimeUnit.SECONDS)).isTrue();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(session.desk().notice()).isEmpty();

        saving.set(false);
        robot.interact(outside::lookAgain);
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> session.desk().notice().isPresent());
        assertThat(session.desk().notice().map(Desk.Notice::key)).hasValue("editor.said.changed-outside");
        robot.interact(background::end);
    }
}
