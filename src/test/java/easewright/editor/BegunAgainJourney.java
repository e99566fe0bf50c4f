package easewright.editor;

import easewright.editor.file.Asking;
import easewright.editor.model.Sample;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A journey that ends while something is half done, and in which that is begun again. */
abstract class BegunAgainJourney extends KeptJourney {
    /** What another window would find if the program ended as soon as this has been kept. */
    KeptWork endedWith(String text) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            List<Path> all = kept();
            return all.size() == 1
                    && Files.readString(all.get(0), StandardCharsets.ISO_8859_1).contains(text);
        });
        Path other = Files.createTempDirectory(folder, "other");
        Path recovery = Files.createDirectories(other.resolve("recovery"));
        Path left = kept().get(0);
        Files.copy(left, recovery.resolve(left.getFileName()));
        try (Recovery next = new Recovery(other)) {
            return next.leftBehind().get(0);
        }
    }

    /** Puts something else on the table, and then what was left behind. */
    void bringBack(FxRobot robot, KeptWork work) throws Exception {
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        int other = name(work).startsWith("bodice") ? 0 : 1;
        robot.interact(() -> app.files().openSample(Sample.all().get(other)));
        until(d -> d.isOpen() && !d.file().orElseThrow().name().equals(name(work)));
        robot.interact(() -> app.files().restore(work, () -> {}));
        until(d -> d.file().orElseThrow().name().equals(name(work)));
    }

    private static String name(KeptWork work) {
        return work.original().getFileName().toString();
    }
}
