package easewright.editor.file;

import easewright.editor.model.Desk;
import easewright.editor.model.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What is remembered from one time to the next: how lengths are written, light or dark, files opened lately, ease tables. */
final class Remembered {
    private final Path folder;
    private Settings settings;

    /**
     * @param folder where it is kept
     */
    Remembered(Settings settings, Path folder) {
        this.settings = settings;
        this.folder = folder;
    }

    void see(Desk desk) {
        put(settings.withUnit(desk.unit()).withDark(desk.dark()));
    }

    void tables(List<Path> own) {
        put(settings.withTables(own));
    }

    void used(Path file) {
        put(settings.withRecent(file));
    }

    private void put(Settings now) {
        if (!now.equals(settings)) {
            settings = now;
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

    /** Files opened lately that are still there. */
    List<Path> recent() {
        return settings.recent().stream().filter(Files::isReadable).toList();
    }
}
