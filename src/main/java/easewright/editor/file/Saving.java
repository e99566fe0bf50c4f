package easewright.editor.file;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.SavingDoes;
import easewright.editor.model.Session;
import easewright.editor.model.StillApart;
import easewright.print.StillMissing;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.AtomicSave;
import easewright.svg.disk.Fingerprint;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Saves what lies on the table. Files are written away from the window's thread, one after the other: a save that is
 * asked for while one is going on begins when that has come to its end, since it would else find the file changed.
 */
final class Saving {
    private final Session session;
    private final Asking asking;
    private final Background background;
    private final OwnClaim claim;
    private final Remembered remembered;
    private final Failures failures;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean going;
    /** What failed last, once more. */
    private Runnable again = () -> {};

    Saving(
            Session session,
            Asking asking,
            Background background,
            OwnClaim claim,
            Remembered remembered,
            Failures failures) {
        this.session = session;
        this.asking = asking;
        this.background = background;
        this.claim = claim;
        this.remembered = remembered;
        this.failures = failures;
    }

    /**
     * What came of writing a file.
     *
     * @param does   what it did to the drawing
     * @param anew   whether anything had to be written
     * @param unsure that the new file is in place, but may not outlast a power cut
     */
    private record Written(AtomicSave.Saved saved, SavingDoes does, boolean anew, Optional<SvgProblem> unsure) {}

    /**
     * Saves to the same file, or asks for one where there is none yet. A drawing without marks is the user's own and stays
     * as it is: a new file is asked for.
     *
     * @param next what is done once it is saved
     */
    void save(Runnable next) {
        Optional<Path> path =
                session.desk().file().filter(f -> !f.isBareDrawing()).flatMap(OpenFile::path);
        if (path.isPresent()) {
            save(path.get(), next);
        } else {
            saveAs(next);
        }
    }

    /** Asks where to save. A name that is free is proposed: the file that was opened stays unless it is chosen. */
    void saveAs(Runnable next) {
        session.desk()
                .file()
                .flatMap(f -> asking.whereToSave(remembered.folder().resolve(proposed(f))))
                .ifPresent(path -> save(path.toAbsolutePath(), next));
    }

    private Path proposed(OpenFile file) {
        return file.path().isEmpty()
                ? file.known()
                : NewName.beside(file.known(), session.desk().words().of("editor.save.new-name"));
    }

    /** Saves the present pattern, trial left out, to the path. */
    void save(Path path, Runnable next) {
        save(path, false, next);
    }

    /**
     * @param whatever the file at the path is replaced whatever it has become
     */
    private void save(Path path, boolean whatever, Runnable next) {
        Optional<OpenFile> asked = session.desk().file();
        if (going) {
            waiting.add(() -> {
                if (isStillThere(asked)) {
                    save(path, whatever, next);
                }
            });
            return;
        }
        Desk desk = session.desk();
        OpenFile file = asked.orElseThrow();
        Optional<Fingerprint> seen =
                file.path().filter(p -> !whatever && p.equals(path)).flatMap(p -> file.seen());
        going = true;
        background.throughout(
                "saving",
                Failures.name(path),
                () -> write(file.svg(), desk, path, seen),
                written -> ended(() -> {
                    again = () -> {};
                    saved(path, written, desk);
                    if (written.unsure().isEmpty()) {
                        next.run();
                    }
                }),
                problem -> ended(() -> notSaved(problem, path, next)));
    }

    /** Whether a file is being written. */
    boolean isGoing() {
        return going;
    }

    private void ended(Runnable end) {
        going = false;
        end.run();
        if (!going) {
            Optional.ofNullable(waiting.poll()).ifPresent(Runnable::run);
        }
    }

    private boolean isStillThere(Optional<OpenFile> file) {
        return file.isPresent() && work(file).equals(work(session.desk().file()));
    }

    private static Optional<Object> work(Optional<OpenFile> file) {
        return file.map(OpenFile::work);
    }

    /**
     * @param seen what the file must still be; empty where it may be replaced whatever it is
     */
    private static Written write(SvgFile svg, Desk desk, Path path, Optional<Fingerprint> seen) throws SvgProblem {
        SvgFile.Written fresh = svg.writing(desk.pattern());
        SavingDoes does = SavingDoes.by(fresh, desk.pattern());
        byte[] bytes = svg.named(fresh.bytes(), Failures.name(path));
        Fingerprint fingerprint = Fingerprint.of(bytes);
        if (seen.filter(fingerprint::equals).isPresent() && seen.equals(Fingerprint.onDisk(path))) {
            // Saved again without a change: the backup beside the file goes on holding what was there before.
            return new Written(
                    new AtomicSave.Saved(fingerprint, List.of(), Optional.empty()), does, false, Optional.empty());
        }
        try {
            return new Written(
                    seen.isPresent() ? AtomicSave.save(path, bytes, seen.get()) : AtomicSave.save(path, bytes),
                    does,
                    true,
                    Optional.empty());
        } catch (SvgProblem problem) {
            if (problem.code().equals("save-not-forced")) {
                return new Written(
                        new AtomicSave.Saved(fingerprint, List.of(), Optional.empty()),
                        does,
                        true,
                        Optional.of(problem));
            }
            throw problem;
        }
    }

    private void saved(Path path, Written written, Desk desk) {
        boolean there = isStillThere(desk.file());
        boolean alone = true;
        if (there) {
            session.placed(path, written.saved().fingerprint());
            alone = claim.take(Optional.of(path));
        }
        remembered.used(path);
        if (written.unsure().isPresent()) {
            failures.tell(written.unsure().get(), path);
            return;
        }
        if (there) {
            session.saved(desk.pattern());
        }
        String still = Stream.of(
                        StillMissing.of(desk.pattern(), desk.reading().sheet(), desk.words()),
                        StillApart.of(desk.reading().measures().mates(), desk.words()))
                .flatMap(Optional::stream)
                // Each in a line of its own: what was saved is one thing, and what is still to be done another.
                .map(s -> "\n" + s)
                .collect(Collectors.joining());
        say(desk.file().orElseThrow(), path, written, alone, desk.shownTrial().isPresent(), still);
    }

    private void say(OpenFile file, Path path, Written written, boolean alone, boolean trying, String still) {
        AtomicSave.Saved saved = written.saved();
        Map<String, Object> values = new TreeMap<>(Map.of("file", Failures.name(path), "path", path.toString()));
        values.put(
                "does", file.asRead() ? " " + written.does().done(session.desk().words()) : "");
        values.put("still", still);
        saved.backup().map(Failures::name).ifPresent(backup -> values.put("backup", backup));
        if (!alone) {
            session.say(true, "editor.said.open-elsewhere", values);
        } else if (trying) {
            session.say(false, "editor.said.saved-untried", values);
        } else if (!saved.findings().isEmpty()) {
            session.say(
                    false,
                    "finding." + saved.findings().get(0).code(),
                    saved.findings().get(0).values());
        } else if (saved.backup().isPresent()) {
            session.say(false, "editor.said.saved-over", values);
        } else {
            session.say(false, written.anew() ? "editor.said.saved" : "editor.said.saved-already", values);
        }
    }

    private void notSaved(Throwable problem, Path path, Runnable next) {
        if (!(problem instanceof SvgProblem svg) || !svg.code().equals("save-changed-meanwhile")) {
            tell(problem, path, next);
            return;
        }
        switch (asking.changedMeanwhile(Failures.name(path))) {
            case OTHER_NAME -> saveAs(next);
            case REPLACE -> save(path, true, next);
            case STAY -> tell(problem, path, next);
        }
    }

    private void tell(Throwable problem, Path path, Runnable next) {
        // Not the file itself, which may long be closed: all that it held would stay with it.
        Optional<Object> failed = work(session.desk().file());
        again = () -> {
            if (work(session.desk().file()).equals(failed)) {
                save(path, next);
            }
        };
        failures.notSaved(problem, path);
    }

    /** Saves once more to where that failed last, and then goes on with what was to be done. */
    void again() {
        again.run();
    }
}
