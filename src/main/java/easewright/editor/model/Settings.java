package easewright.editor.model;

import easewright.text.LengthUnit;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * What the editor remembers from one day to the next: unit, light or dark, files opened lately, ease tables of one's own. Kept in one small text
 * file; if it cannot be read or written the editor works all the same, with what it has.
 *
 * @param unitChosen whether the person has chosen the unit; until then a file brings its own
 */
public record Settings(LengthUnit unit, boolean unitChosen, boolean dark, List<Path> recent, List<Path> tables) {
    private static final int REMEMBERED = 6;
    public static final Settings FIRST = new Settings(LengthUnit.CM, false, false, List.of(), List.of());

    public Settings {
        recent = List.copyOf(recent);
        tables = List.copyOf(tables);
    }

    /** The folder for such files: {@code XDG_STATE_HOME} or its usual place below the home folder. */
    public static Path folder() {
        String state = System.getenv("XDG_STATE_HOME");
        Path base = state == null || state.isBlank()
                ? Path.of(System.getProperty("user.home", "."), ".local", "state")
                : Path.of(state);
        return base.resolve("easewright");
    }

    private static Path file(Path folder) {
        return folder.resolve("settings.properties");
    }

    /** What is kept there, or what holds from the start. */
    public static Settings read(Path folder) {
        return kept(folder).orElse(FIRST);
    }

    /** What is kept there; empty where nothing is that can be read. */
    public static Optional<Settings> kept(Path folder) {
        Properties kept = new Properties();
        try (InputStream in = Files.newInputStream(file(folder))) {
            kept.load(in);
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
        Optional<LengthUnit> unit = LengthUnit.named(kept.getProperty("unit", ""));
        return Optional.of(new Settings(
                unit.orElse(LengthUnit.CM),
                unit.isPresent(),
                Boolean.parseBoolean(kept.getProperty("dark")),
                paths(kept, "recent."),
                paths(kept, "table.")));
    }

    /** Those numbered from 0 without a gap. */
    private static List<Path> paths(Properties kept, String name) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; kept.containsKey(name + i); i++) {
            path(kept.getProperty(name + i)).ifPresent(paths::add);
        }
        return paths;
    }

    private static Optional<Path> path(String text) {
        try {
            return text == null ? Optional.empty() : Optional.of(Path.of(text));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Writes the settings, whole or not at all; says whether that worked. */
    public boolean write(Path folder) {
        Properties kept = new Properties();
        if (unitChosen) {
            kept.setProperty("unit", unit.symbol());
        }
        kept.setProperty("dark", Boolean.toString(dark));
        for (int i = 0; i < recent.size(); i++) {
            kept.setProperty("recent." + i, recent.get(i).toString());
        }
        for (int i = 0; i < tables.size(); i++) {
            kept.setProperty("table." + i, tables.get(i).toString());
        }
        try {
            Files.createDirectories(folder);
            Path fresh = Files.createTempFile(folder, "settings", ".tmp");
            try {
                try (OutputStream out = Files.newOutputStream(fresh)) {
                    kept.store(out, null);
                }
                Files.move(fresh, file(folder), StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(fresh);
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    public Settings withUnit(LengthUnit changed) {
        return new Settings(changed, true, dark, recent, tables);
    }

    public Settings withDark(boolean lamp) {
        return new Settings(unit, unitChosen, lamp, recent, tables);
    }

    /** With the file put first among the recent ones. */
    public Settings withRecent(Path file) {
        List<Path> files = new ArrayList<>(recent);
        Path absolute = file.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        return new Settings(unit, unitChosen, dark, files.subList(0, Math.min(REMEMBERED, files.size())), tables);
    }

    /**
     * With those tables gone that a window had before and has no more, and those put last that it has and had not; what
     * another window has put there stays.
     */
    public Settings withTables(List<Path> before, List<Path> now) {
        List<Path> merged = new ArrayList<>(tables);
        merged.removeIf(table -> before.contains(table) && !now.contains(table));
        now.stream()
                .filter(table -> !before.contains(table) && !merged.contains(table))
                .forEach(merged::add);
        return new Settings(unit, unitChosen, dark, recent, merged);
    }
}
