package easewright.editor.file;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What is remembered from one time to the next: how lengths are written, light or dark, files opened lately, ease tables. */
final class Remembered {
    private final Path folder;
    private Settings settings;
    /** Of the files opened lately those that were not there when last looked for. */
    private Set<Path> gone = Set.of();

    /**
     * @param folder where it is kept
     */
    Remembered(Settings settings, Path folder) {
        this.settings = settings;
        this.folder = folder;
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

    /** Changes what is kept now: another window may have put something there since this one was opened. */
    private void put(UnaryOperator<Settings> change) {
        Settings kept = Settings.isKept(folder) ? Settings.read(folder) : settings;
        settings = change.apply(kept);
        if (!settings.equals(kept)) {
            settings.write(folder);
        }
    }

    /** Where the user's files are most likely to be: that of the file opened last, if it is there, or else home. */
    Path folder() {
        return settings.recent().stream()
                .map(Path::toAbsolutePath)
                .map(Path::getParent)
                .filter(Files::isDirectory)
                .findFirst()
                .orElse(Path.of(System.getProperty("user.home", ".")).toAbsolutePath());
    }

    /** Files opened lately that are still there, as far as is known: a disk far away may take long to answer. */
    List<Path> recent() {
        return settings.recent().stream().filter(file -> !gone.contains(file)).toList();
    }

    /** Looks which of the files opened lately are still there, away from the window's thread. */
    void look(Background background) {
        List<Path> files = settings.recent();
        background.quietly(
                () -> files.stream().filter(file -> !Files.isReadable(file)).collect(Collectors.toSet()),
                missing -> gone = missing,
                unreadable -> {});
    }
}
