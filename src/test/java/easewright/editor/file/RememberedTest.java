package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.Settings;
import easewright.svg.disk.OneAtATime;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {
    @TempDir
    Path folder;

    /** Two windows share what is remembered: neither takes away what the other has put there. */
    @Test
    void whatAnotherWindowHasPutThereStays() {
        Remembered one = new Remembered(Settings.FIRST, folder, Runnable::run);
        Remembered other = new Remembered(Settings.FIRST, folder, Runnable::run);
        Path table = folder.resolve("mine.txt");
        one.tables(List.of(), List.of(table));
        other.used(folder.resolve("skirt.svg"));
        assertThat(Settings.read(folder).tables()).containsExactly(table);
        assertThat(Settings.read(folder).recent()).containsExactly(folder.resolve("skirt.svg"));
    }

    /** Entry by entry: each window adds and takes away its own. */
    @Test
    void twoWindowsThatBothChangeTheListOfTablesKeepBoth() {
        Path first = folder.resolve("first.txt");
        Path mine = folder.resolve("mine.txt");
        Path theirs = folder.resolve("theirs.txt");
        Settings kept = Settings.FIRST.withTables(List.of(), List.of(first));
        assertThat(kept.write(folder)).isTrue();
        Remembered one = new Remembered(kept, folder, Runnable::run);
        Remembered other = new Remembered(kept, folder, Runnable::run);
        one.tables(List.of(first), List.of(first, mine));
        other.tables(List.of(first), List.of(first, theirs));
        assertThat(Settings.read(folder).tables()).containsExactly(first, mine, theirs);
        other.tables(List.of(first, theirs), List.of(theirs));
        one.tables(List.of(first, mine), List.of(first));
        assertThat(Settings.read(folder).tables()).containsExactly(theirs);
    }

    /** Light in one window, inches in the other: both are remembered. */
    @Test
    void whatOneWindowDidNotChangeItDoesNotPutBack() {
        Remembered one = new Remembered(Settings.FIRST, folder, Runnable::run);
        Remembered other = new Remembered(Settings.FIRST, folder, Runnable::run);
        Desk first = Desk.empty(LengthUnit.CM, false);
        one.see(first, Desk.empty(LengthUnit.CM, true));
        other.see(first, Desk.empty(LengthUnit.INCH, false));
        assertThat(Settings.read(folder).dark()).isTrue();
        assertThat(Settings.read(folder).unit()).isEqualTo(LengthUnit.INCH);
    }

    @Test
    void whereNothingCanBeKeptTheWindowStillRemembers() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        Path drawing = Files.writeString(folder.resolve("skirt.svg"), "");
        Remembered one = new Remembered(Settings.FIRST, file, Runnable::run);
        one.used(drawing);
        one.tables(List.of(), List.of(folder.resolve("mine.txt")));
        assertThat(one.recent()).containsExactly(drawing);
    }

    /** What could not be written is not forgotten: it is written with what comes next. */
    @Test
    void whatCouldNotBeKeptIsKeptWithTheNextChange() throws Exception {
        Path state = Files.writeString(folder.resolve("state"), "in the way");
        Remembered one = new Remembered(Settings.FIRST, state, Runnable::run);
        one.used(folder.resolve("skirt.svg"));
        Files.delete(state);
        one.tables(List.of(), List.of(folder.resolve("mine.txt")));
        assertThat(Settings.read(state).recent()).containsExactly(folder.resolve("skirt.svg"));
        assertThat(Settings.read(state).tables()).containsExactly(folder.resolve("mine.txt"));
    }

    /** Programs with several windows each, all of which write at the same time: nobody's entry is lost. */
    @Test
    void manyProgramsThatWriteAtOnceLoseNothing() throws Exception {
        List<Process> programs = new ArrayList<>();
        for (int i = 0; i < SettingsWriter.PROGRAMS; i++) {
            programs.add(SettingsWriter.start(folder, i));
        }
        for (Process program : programs) {
            assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(program.exitValue()).isZero();
        }
        assertThat(Settings.read(folder).tables()).containsExactlyInAnyOrderElementsOf(SettingsWriter.all(folder));
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.filter(p -> p.toString().endsWith(".tmp"))).isEmpty();
        }
    }

    /** A window that hangs while it writes keeps nobody else from it for long. */
    @Test
    void whoeverHangsIsNotWaitedForLong() throws Exception {
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch end = new CountDownLatch(1);
        Thread hanging = new Thread(() -> OneAtATime.run("settings", folder, Duration.ZERO, () -> {
            held.countDown();
            return await(end);
        }));
        hanging.start();
        held.await();
        try {
            boolean done = OneAtATime.run("settings", folder, Duration.ofMillis(20), () -> true);
            assertThat(done).isTrue();
        } finally {
            end.countDown();
            hanging.join();
        }
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            return false;
        }
    }

    /** The unit in which a file came is no choice of the person's. */
    @Test
    void aUnitThatAFileBringsIsNotKept() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.takeUnitsFromFiles();
        Remembered remembered = new Remembered(Settings.FIRST, folder, Runnable::run);
        session.deskProperty().addListener((o, before, now) -> remembered.see(before, now));
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='8in' viewBox='0 0 8 8'/>";
        session.open(OpenedSample.drawn(svg, "page.svg"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.INCH);
        assertThat(Settings.kept(folder)).isEmpty();
        session.setUnit(LengthUnit.CM);
        assertThat(Settings.read(folder).unitChosen()).isTrue();
        assertThat(Settings.read(folder).unit()).isEqualTo(LengthUnit.CM);
    }
}
