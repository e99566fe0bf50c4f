package easewright.editor.model;

import easewright.ease.EaseTableProblem;
import easewright.ease.EaseTables;
import easewright.ease.TableFile;
import easewright.svg.disk.Fingerprint;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The user's own ease tables, beside those that came with the program. Immutable. */
public final class OwnTables {
    public static final OwnTables NONE = new OwnTables(List.of());

    private final List<Entry> entries;
    /** Empty where the user has none: then those of the program are read when they are first needed. */
    private final Optional<EaseTables> joined;

    /**
     * One table file.
     *
     * @param tables  what it holds; empty where it cannot be used
     * @param problem why not
     * @param seen    by what the file was known when it was read; empty where it was not there
     */
    public record Entry(
            Path file, Optional<EaseTables> tables, Optional<EaseTableProblem> problem, Optional<Fingerprint> seen) {
        private static Entry read(Path file) {
            Path place = file.toAbsolutePath().normalize();
            // Before it is read: what is written to it meanwhile is then seen the next time.
            Optional<Fingerprint> seen = Fingerprint.onDisk(place);
            try {
                EaseTables read = TableFile.read(place, place.getFileName().toString());
                return new Entry(place, Optional.of(read), Optional.empty(), seen);
            } catch (EaseTableProblem problem) {
                return new Entry(place, Optional.empty(), Optional.of(problem), seen);
            }
        }

        private Entry again() {
            return Fingerprint.onDisk(file).equals(seen) ? this : read(file);
        }
    }

    private OwnTables(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        this.joined = entries.isEmpty() ? Optional.empty() : Optional.of(joined(entries));
    }

    private static EaseTables joined(List<Entry> entries) {
        EaseTables all = EaseTables.standard();
        for (Entry entry : entries) {
            all = entry.tables().isPresent() ? all.with(entry.tables().get()) : all;
        }
        return all;
    }

    /** Reads the files; one that cannot be used is there with the reason. */
    public static OwnTables read(List<Path> files) {
        return files.isEmpty()
                ? NONE
                : new OwnTables(files.stream().map(Entry::read).toList());
    }

    /** With a file more, or if it was there already, with what it holds now. */
    public OwnTables with(Path file) {
        Entry added = Entry.read(file);
        List<Entry> more = new ArrayList<>(entries);
        int at = files().indexOf(added.file());
        if (at < 0) {
            more.add(added);
        } else {
            more.set(at, added);
        }
        return new OwnTables(more);
    }

    /** Those files read again that have changed; the same object where none has. */
    public OwnTables again() {
        List<Entry> now = entries.stream().map(Entry::again).toList();
        return now.equals(entries) ? this : new OwnTables(now);
    }

    public OwnTables without(Path file) {
        return new OwnTables(
                entries.stream().filter(e -> !e.file().equals(file)).toList());
    }

    /** In the order in which they were added. */
    public List<Entry> entries() {
        return entries;
    }

    public List<Path> files() {
        return entries.stream().map(Entry::file).toList();
    }

    /** The tables of the program and, after them, those of the user that can be used. */
    public EaseTables all() {
        return joined.orElseGet(EaseTables::standard);
    }
}
