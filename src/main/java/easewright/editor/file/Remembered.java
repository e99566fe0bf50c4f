package easewright.editor.file;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Settings;
import easewright.svg.disk.OneAtATime;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What is remembered from one time to the next: how lengths are written, light or dark, files opened lately, ease tables. */
final class Remembered {
    /** So long other windows are waited for that write settings. */
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private final Path folder;
    private final Executor disk;
    private final Duration patience;

    /** As last read and written. */
    private Settings written;

    /** What was changed since, and is still to be written. */
    private final Deque<UnaryOperator<Settings>> changes = new ArrayDeque<>();

    /** Of the files opened lately those that were not there when last looked for. */
    private Set<Path> gone = Set.of();

    /**
     * @param folder where it is kept
     * @param disk   writes there, one after the other, away from the window's thread
     */
    Remembered(Settings settings, Path folder, Executor disk) {
        this(settings, folder, disk, PATIENCE);
    }

    /**
     * @param patience so long other windows are waited for that write settings
     */
    Remembered(Settings settings, Path folder, Executor disk, Duration patience) {
        this.written = settings;
        this.folder = folder;
        this.disk = disk;
        this.patience = patience;
    }

    /** Only what is changed in this window: another may have changed the rest. */
    void see(Desk before, Desk now) {
        // What a file brought with it was not chosen.
        boolean sameFile = now.file().map(OpenFile::work).equals(before.file().map(OpenFile::work));
        if (sameFile && now.unit() != before.unit()) {
            put(s -> s.withUnit(now.unit()));
        }
        if (now.dark() != before.dark()) {
            put(s -> s.withDark(now.dark()));
        }
    }

    void tables(List<Path> before, List<Path> now) {
        put(s -> s.withTables(before, now));
    }

    void used(Path file) {
        put(s -> s.withRecent(file));
    }

    private void put(UnaryOperator<Settings> change) {
        synchronized (this) {
            changes.add(change);
        }
        disk.execute(this::write);
    }

    /** Changes what is kept now: another window may have put something there since this one was opened. */
    private void write() {
        List<UnaryOperator<Settings>> mine = changes();
        OneAtATime.run("settings", folder, patience, () -> {
            Settings kept = Settings.kept(folder).orElseGet(this::written);
            Settings now = kept;
            for (UnaryOperator<Settings> change : mine) {
                now = change.apply(now);
            }
            if (now.equals(kept) || now.write(folder)) {
                done(now, mine.size());
            }
            return now;
        });
    }

    private synchronized List<UnaryOperator<Settings>> changes() {
        return List.copyOf(changes);
    }

    private synchronized Settings written() {
        return written;
    }

    /** What could not be written is tried again with the next change. */
    private synchronized void done(Settings now, int count) {
        written = now;
        for (int i = 0; i < count; i++) {
            changes.remove();
        }
    }

    /** As they are for this window, written or not. */
    private synchronized Settings settings() {
        Settings now = written;
        for (UnaryOperator<Settings> change : changes) {
            now = change.apply(now);
        }
        return now;
    }

    /** Where the user's files are most likely to be: that of the file opened last, if it is there, or else home. */
    Path folder() {
        return settings().recent().stream()
                .map(Path::toAbsolutePath)
                .map(Path::getParent)
                .filter(Files::isDirectory)
                .findFirst()
                .orElse(Path.of(System.getProperty("user.home", ".")).toAbsolutePath());
    }

    /** Files opened lately that are still there, as far as is known: a disk far away may take long to answer. */
    List<Path> recent() {
        return settings().recent().stream().filter(file -> !gone.contains(file)).toList();
    }

    /** Looks which of the files opened lately are still there, away from the window's thread. */
    void look(Background background) {
        List<Path> files = settings().recent();
        background.quietly(
                () -> files.stream().filter(file -> !Files.isReadable(file)).collect(Collectors.toSet()),
                missing -> gone = missing,
                unreadable -> {});
    }
}
