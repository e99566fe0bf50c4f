package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.editor.model.Begun;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.editor.model.Unfinished;
import easewright.history.History;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.EarlierStates;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import easewright.text.LengthUnit;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that comes back after a crash can be undone as it could before. */
class UndoAfterCrashTest {
    @TempDir
    private Path folder;

    private final Background background = new Background();

    private static Session at(OpenFile file) {
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(file));
        return session;
    }

    private static OpenFile sample(int number) throws Exception {
        Sample sample = Sample.all().get(number);
        return new OpenFile(sample.read(), Optional.empty(), sample.fileName());
    }

    private static byte[] saved(Session session) throws SvgProblem {
        return session.desk().file().orElseThrow().svg().write(session.desk().pattern());
    }

    private static void change(Session session, String level, double mm) {
        session.chooseLevel(level);
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        session.keep();
    }

    private KeepingPlace window() {
        return new KeepingPlace(background, folder);
    }

    private static ToKeep toKeep(Desk desk) {
        return new ToKeep(desk.file().orElseThrow(), desk.history(), Unfinished.on(desk, Begun.NOTHING));
    }

    private static void keep(KeepingPlace window, Session session) throws SvgProblem {
        window.keep(toKeep(session.desk()), Optional.empty());
    }

    private List<Path> kept() throws IOException {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder.resolve("recovery"), "*.kept")) {
            List<Path> kept = new ArrayList<>();
            all.forEach(kept::add);
            return kept;
        }
    }

    private void forget() throws IOException {
        for (Path file : kept()) {
            Files.delete(file);
        }
    }

    /** What the next window brings back of what was kept last. */
    private Session afterTheCrash() throws Exception {
        Path other = Files.createTempDirectory(folder, "next");
        Path recovery = Files.createDirectories(other.resolve("recovery"));
        for (Path file : kept()) {
            Files.copy(file, recovery.resolve(file.getFileName()));
        }
        try (Recovery next = new Recovery(other)) {
            KeptWork work = next.leftBehind().get(0);
            Restoring.Back back =
                    Restoring.kept(work, work.original().getFileName().toString(), EaseTables.standard());
            Session session = new Session(LengthUnit.CM, false);
            session.restore(back.opened(), back.savedAt(), Unfinished.of(work.unfinished()));
            return session;
        }
    }

    private static List<byte[]> undoneToTheStart(Session session) throws SvgProblem {
        List<byte[]> states = new ArrayList<>();
        states.add(saved(session));
        while (session.desk().canUndo()) {
            session.undo();
            states.add(saved(session));
        }
        return states;
    }

    /** Of changes, wishes and steps that were undone before others were made: each state is the same file. */
    @Test
    void itGoesBackThroughEveryStepToTheStart() throws Exception {
        Random random = new Random(21);
        for (int number = 0; number < 3; number++) {
            Session session = at(sample(number));
            KeepingPlace window = window();
            List<String> levels =
                    session.desk().pattern().levels().stream().map(Level::name).toList();
            for (int step = 0; step < 6; step++) {
                String level = levels.get(random.nextInt(levels.size()));
                if (random.nextInt(3) == 0) {
                    session.setWish(level, OptionalDouble.of(random.nextInt(90)));
                } else {
                    change(session, level, 4 + random.nextInt(9));
                }
                if (random.nextInt(4) == 0) {
                    session.undo();
                }
                if (random.nextBoolean()) {
                    keep(window, session);
                }
            }
            keep(window, session);
            Session back = afterTheCrash();
            assertThat(back.desk().isSaved()).isFalse();
            assertThat(undoneToTheStart(back))
                    .hasSizeGreaterThan(2)
                    .containsExactlyElementsOf(undoneToTheStart(session));
            assertThat(saved(back)).isEqualTo(sample(number).svg().bytes());
            assertThat(back.desk().isSaved()).as("as it comes with the program").isTrue();
            forget();
        }
    }

    @Test
    void whatItsFileHoldsIsKnownAmongTheSteps() throws Exception {
        Path path = Files.write(folder.resolve("skirt.svg"), sample(0).svg().bytes());
        Session session = at(new OpenFile(SvgFile.read(path), Optional.of(path), "skirt.svg"));
        change(session, "hip", 20);
        Files.write(path, saved(session));
        session.placed(path, Fingerprint.onDisk(path).orElseThrow());
        session.saved(session.desk().pattern());
        change(session, "hip", 10);
        change(session, "waist", 8);
        keep(window(), session);

        Session back = afterTheCrash();
        List<Boolean> saved = new ArrayList<>();
        saved.add(back.desk().isSaved());
        while (back.desk().canUndo()) {
            back.undo();
            saved.add(back.desk().isSaved());
        }
        assertThat(saved).containsExactly(false, false, true, false);

        Files.write(path, sample(1).svg().bytes());
        Session changed = afterTheCrash();
        while (changed.desk().canUndo()) {
            assertThat(changed.desk().isSaved()).isFalse();
            changed.undo();
        }
    }

    /** The step before the last is no drawing any more, so that nothing before it comes back. */
    @Test
    void whatItsFileHoldsIsKnownAlsoWhereStepsAreLost() throws Exception {
        byte[] skirt = sample(0).svg().bytes();
        Path path = Files.write(folder.resolve("skirt.svg"), skirt);
        Session session = at(new OpenFile(SvgFile.read(path), Optional.of(path), "skirt.svg"));
        byte[] broken = "no drawing".getBytes(StandardCharsets.UTF_8);
        List<byte[]> earlier = new ArrayList<>(List.of(skirt));
        for (int step = 0; step < 3; step++) {
            change(session, "hip", 10);
            earlier.add(step == 1 ? broken : saved(session));
        }
        change(session, "hip", 10);
        byte[] last = saved(session);
        Files.write(path, last);
        Fingerprint seen = Fingerprint.of(last);
        assertThat(savedAt(path, seen, last, earlier, 4)).as("of two states").isEqualTo(1);
        byte[] between = earlier.get(3);
        Files.write(path, between);
        seen = Fingerprint.of(between);
        assertThat(savedAt(path, seen, last, earlier, 3)).isEqualTo(0);
        Files.write(path, skirt);
        assertThat(savedAt(path, Fingerprint.of(skirt), last, earlier, 0))
                .as("it was lost")
                .isEqualTo(-1);
    }

    private int savedAt(Path path, Fingerprint seen, byte[] last, List<byte[]> earlier, int saved) throws Exception {
        Path other = Files.createTempDirectory(folder, "next");
        Path recovery = Files.createDirectories(other.resolve("recovery"));
        try (Recovery crashed = new Recovery(folder);
                Recovery next = new Recovery(other)) {
            crashed.keep(path, Optional.of(seen), last, "something in hand", new EarlierStates(earlier, saved));
            for (Path file : kept()) {
                Files.copy(file, recovery.resolve(file.getFileName()));
            }
            return Restoring.kept(next.leftBehind().get(0), "skirt.svg", EaseTables.standard())
                    .savedAt();
        } finally {
            forget();
        }
    }

    /** Steps go on from one that was undone to, and a second crash keeps them all. */
    @Test
    void workGoesOnFromAnyStep() throws Exception {
        Session first = at(sample(0));
        change(first, "hip", 20);
        change(first, "hip", 10);
        keep(window(), first);
        Session second = afterTheCrash();
        second.undo();
        byte[] between = saved(second);
        change(second, "waist", 6);
        byte[] last = saved(second);
        forget();
        keep(window(), second);
        assertThat(undoneToTheStart(afterTheCrash()))
                .containsExactly(last, between, sample(0).svg().bytes());
    }

    @Test
    void stepsThatNoLongerHaveRoomAreGivenUpOldestFirst() throws Exception {
        String large = "<!-- " + "x".repeat(3 << 20) + " -->";
        String skirt = new String(sample(0).svg().bytes(), StandardCharsets.UTF_8);
        byte[] bytes = skirt.replace("</svg>", large + "</svg>").getBytes(StandardCharsets.UTF_8);
        Session session = at(new OpenFile(SvgFile.read(bytes, "large.svg"), Optional.empty(), "large.svg"));
        for (int step = 0; step < 6; step++) {
            change(session, "hip", 5 + step);
        }
        keep(window(), session);
        List<byte[]> all = undoneToTheStart(session);
        assertThat(undoneToTheStart(afterTheCrash())).containsExactlyElementsOf(all.subList(0, 4));
    }

    private static WeakReference<Pattern> keptAndSaved(KeepingPlace window) throws Exception {
        Session session = at(sample(0));
        change(session, "hip", 20);
        keep(window, session);
        window.forget(Set.of(session.desk().file().orElseThrow().known()), Optional.empty());
        return new WeakReference<>(session.desk().pattern());
    }

    /** Of a large drawing that would be many megabytes for as long as the window is open. */
    @Test
    void ofWorkThatIsSavedNothingIsHeld() throws Exception {
        KeepingPlace window = window();
        WeakReference<Pattern> pattern = keptAndSaved(window);
        background.end();
        for (int i = 0; i < 100 && pattern.get() != null; i++) {
            System.gc();
        }
        assertThat(pattern.get()).isNull();
        assertThat(kept()).isEmpty();
        window.close();
    }

    /** Writing many earlier states takes long: a crash meanwhile does not lose the present one. */
    @Test
    void thePresentStateIsKeptBeforeTheEarlierOnes() throws Exception {
        Session session = at(sample(0));
        change(session, "hip", 20);
        change(session, "hip", 10);
        KeepingPlace window = window();
        window.keepPresent(toKeep(session.desk()));
        Session back = afterTheCrash();
        assertThat(saved(back)).isEqualTo(saved(session));
        assertThat(back.desk().canUndo()).as("not written yet").isFalse();
        keep(window, session);
        assertThat(undoneToTheStart(afterTheCrash())).hasSize(3);
        change(session, "waist", 6);
        window.keepPresent(toKeep(session.desk()));
        assertThat(undoneToTheStart(afterTheCrash()))
                .as("what is written already stays kept")
                .containsExactlyElementsOf(undoneToTheStart(session));
    }

    /** What is in the history in place of a pattern cannot be written, and nobody foresaw it. */
    @Test
    @SuppressWarnings("unchecked")
    void anEarlierStateThatFailsDoesNotHinderThePresentOne() throws Exception {
        Session session = at(sample(0));
        change(session, "hip", 20);
        Desk desk = session.desk();
        History<?> broken = new History<Object>(List.of("no pattern", desk.pattern()), 1, -1);
        window().keep(
                        new ToKeep(
                                desk.file().orElseThrow(),
                                (History<Pattern>) broken,
                                Unfinished.on(desk, Begun.NOTHING)),
                        Optional.empty());
        Session back = afterTheCrash();
        assertThat(saved(back)).isEqualTo(saved(session));
        assertThat(back.desk().canUndo()).isFalse();
    }
}
