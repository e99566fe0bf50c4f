package easewright.editor.file;

import easewright.editor.mark.LayerChoice;
import easewright.editor.mark.MarkRefused;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.editor.model.Settings;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.AtomicSave;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.KeptWork;
import easewright.text.Words;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;

/** Opening and saving. Reading and writing happen away from the window's thread; a failure leaves the desk as it was. */
public final class FileWork {
    private final Session session;
    private final Asking asking;
    private final Background background = new Background();
    private final SafeKeeping safe;
    private final Remembered remembered;

    /**
     * @param folder where settings and unsaved work are kept
     */
    public FileWork(Session session, Asking asking, Settings settings, Path folder) {
        this.session = session;
        this.asking = asking;
        this.remembered = new Remembered(settings, folder);
        this.safe = new SafeKeeping(session, background, folder);
        session.deskProperty().addListener((o, before, now) -> remembered.see(now));
    }

    /** Where the user is asked about files. */
    public Asking asking() {
        return asking;
    }

    /** What is going on away from the window's thread. */
    public Background background() {
        return background;
    }

    public Words words() {
        return session.desk().words();
    }

    /** Files opened lately that are still there. */
    public List<Path> recent() {
        return remembered.recent();
    }

    /** Work that a crash left behind, the latest first. */
    public List<KeptWork> leftBehind() {
        return safe.leftBehind();
    }

    /** Asks which file to open. */
    public void choose() {
        asking.whichToOpen().ifPresent(this::open);
    }

    /** Opens a file, after asking about unsaved changes. */
    public void open(Path path) {
        String name = path.getFileName().toString();
        read(() -> SvgFile.read(path), Optional.of(path), name);
    }

    /** Opens the first drawing among some files dropped on the window, or else says of the first why not; whether there was one. */
    public boolean drop(List<File> dropped) {
        dropped.stream()
                .filter(FileWork::isDrawing)
                .findFirst()
                .or(() -> dropped.stream().findFirst())
                .map(File::toPath)
                .ifPresent(this::open);
        return !dropped.isEmpty();
    }

    private static boolean isDrawing(File file) {
        String name = file.getName().toLowerCase(Locale.ROOT);
        return name.endsWith(".svg") || name.endsWith(".svgz");
    }

    /** Opens one of the samples that come with the program. */
    public void openSample(Sample sample) {
        read(sample::read, Optional.empty(), sample.fileName());
    }

    private void read(Callable<SvgFile> reading, Optional<Path> path, String name) {
        leaving(() -> background.whileWaiting(
                "reading",
                name,
                () -> Opened.of(new OpenFile(reading.call(), path, name)),
                this::laid,
                problem -> failed(problem, name)));
    }

    /** Reads other layers of the file on the table, of which the pieces then lie there. */
    public void readLayers(Set<String> keys) {
        Desk desk = session.desk();
        OpenFile file = desk.file().orElseThrow();
        background.whileWaiting(
                "reading",
                file.name(),
                () -> LayerChoice.reading(file.svg(), desk.pattern(), keys),
                read -> {
                    if (session.desk().pattern() == desk.pattern()) {
                        session.reread(read.svg(), read.pattern());
                    }
                },
                problem -> failed(problem, file.name()));
    }

    private void laid(Opened opened) {
        OpenFile file = opened.file();
        safe.settled();
        session.open(opened);
        file.path().ifPresent(remembered::used);
        if (!safe.claim(file.path())) {
            session.say(true, "editor.said.open-elsewhere", Map.of("file", file.name()));
        }
    }

    /** Puts work that a crash left behind back on the table. */
    public void restore(KeptWork work) {
        String name = work.original().getFileName().toString();
        leaving(() -> background.whileWaiting(
                "reading",
                name,
                () -> kept(work, name),
                opened -> restored(work, opened),
                problem -> failed(problem, name)));
    }

    private static Opened kept(KeptWork work, String name) throws SvgProblem {
        // Where the file was changed since, its place is not taken for granted: the user says where to save.
        boolean itsPlace = work.original().isAbsolute() && !work.originalChanged();
        Optional<Path> path = itsPlace ? Optional.of(work.original()) : Optional.empty();
        SvgFile svg = SvgFile.read(work.bytes(), name);
        return Opened.of(new OpenFile(svg, path, name, path.flatMap(FileWork::fingerprint)));
    }

    private void restored(KeptWork work, Opened opened) {
        OpenFile file = opened.file();
        session.restore(opened);
        safe.claim(file.path());
        safe.discard(work);
        boolean changed = work.original().isAbsolute() && file.path().isEmpty();
        session.say(
                changed,
                changed ? "editor.said.restored-changed" : "editor.said.restored",
                Map.of("file", file.name()));
    }

    private static Optional<Fingerprint> fingerprint(Path file) {
        try {
            return Optional.of(Fingerprint.of(Files.readAllBytes(file)));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Throws away work that a crash left behind. */
    public void discard(KeptWork work) {
        safe.discard(work);
    }

    /** Saves to the same file, or asks for one where there is none yet. */
    public void save() {
        saveThen(() -> {});
    }

    private void saveThen(Runnable next) {
        Optional<OpenFile> file = session.desk().file();
        Optional<Path> path = file.flatMap(OpenFile::path);
        if (path.isPresent()) {
            save(path.get(), file.get().seen(), next);
        } else {
            saveAsThen(next);
        }
    }

    /** Asks where to save. */
    public void saveAs() {
        saveAsThen(() -> {});
    }

    private void saveAsThen(Runnable next) {
        session.desk().file().flatMap(f -> asking.whereToSave(f.name())).ifPresent(path -> save(path, next));
    }

    /** Writes the present pattern, trial left out, to the path. */
    public void save(Path path) {
        save(path, () -> {});
    }

    private void save(Path path, Runnable next) {
        OpenFile file = session.desk().file().orElseThrow();
        boolean same = file.path().filter(path::equals).isPresent();
        save(path, same ? file.seen() : Optional.empty(), next);
    }

    /**
     * @param seen what the file must still be; empty where the user has agreed to replace whatever is there
     */
    private void save(Path path, Optional<Fingerprint> seen, Runnable next) {
        Desk desk = session.desk();
        SvgFile svg = desk.file().orElseThrow().svg();
        String name = path.getFileName().toString();
        background.throughout(
                "saving",
                name,
                () -> {
                    byte[] bytes = svg.write(desk.pattern());
                    return seen.isPresent() ? AtomicSave.save(path, bytes, seen.get()) : AtomicSave.save(path, bytes);
                },
                saved -> saved(path, saved, desk, next),
                problem -> notSaved(problem, path, next));
    }

    private void saved(Path path, AtomicSave.Saved saved, Desk written, Runnable next) {
        session.saved(path, saved.fingerprint(), written.pattern());
        remembered.used(path);
        safe.claim(Optional.of(path));
        String file = path.getFileName().toString();
        saved.backup()
                .ifPresentOrElse(
                        backup -> session.say(
                                false,
                                "editor.said.saved-over",
                                Map.of(
                                        "file",
                                        file,
                                        "backup",
                                        backup.getFileName().toString())),
                        () -> session.say(false, "editor.said.saved", Map.of("file", file)));
        next.run();
    }

    private void notSaved(Throwable problem, Path path, Runnable next) {
        String name = path.getFileName().toString();
        if (!(problem instanceof SvgProblem svg) || !svg.code().equals("save-changed-meanwhile")) {
            failed(problem, name);
            return;
        }
        switch (asking.changedMeanwhile(name)) {
            case OTHER_NAME -> saveAsThen(next);
            case REPLACE -> save(path, Optional.empty(), next);
            case STAY -> failed(problem, name);
        }
    }

    private void failed(Throwable problem, String name) {
        if (problem instanceof SvgProblem svg) {
            session.say(true, "problem." + svg.code(), svg.values());
        } else if (problem instanceof MarkRefused refused) {
            session.say(true, "problem." + refused.code(), refused.values());
        } else {
            String reason = problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
            session.say(true, "editor.said.failed", Map.of("file", name, "reason", reason));
        }
    }

    /** Looks whether another program has changed the file on the table, and says so. */
    public void lookAgain() {
        session.desk()
                .file()
                .ifPresent(file -> file.path()
                        .ifPresent(path -> background.quietly(
                                () -> fingerprint(path),
                                now -> {
                                    boolean same = session.desk().file().equals(Optional.of(file));
                                    if (same && now.isPresent() && !now.equals(file.seen())) {
                                        session.say(true, "editor.said.changed-outside", Map.of("file", file.name()));
                                    }
                                },
                                unreadable -> {})));
    }

    /** Does the next thing at once if all is saved; else asks whether to save first, to go without, or to stay. */
    public void leaving(Runnable next) {
        if (session.desk().isSaved()) {
            next.run();
            return;
        }
        switch (asking.leaving()) {
            case SAVE_FIRST -> saveThen(next);
            case WITHOUT_SAVING -> next.run();
            case STAY -> {}
        }
    }

    /** The window ends in good order. */
    public void close() {
        safe.close();
    }
}
