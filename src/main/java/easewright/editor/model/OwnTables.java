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
    /** Empty where the user has none that can be used: then those of the program are read when they are first needed. */
    private final Optional<EaseTables> joined;

    /**
     * One table file.
     *
     * @param tables  what it holds; empty where it cannot be used, or has not been read yet
     * @param problem why it cannot be used
     * @param seen    by what the file was known when it was read; empty where it was not there
     */
    public record Entry(
            Path file, Optional<EaseTables> tables, Optional<EaseTableProblem> problem, Optional<Fingerprint> seen) {
        /** Reads the file, for which a disk may take its time; one that cannot be used is there with the reason. */
        public static Entry read(Path file) {
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

        /** One that could not even be tried. */
        public static Entry unreadable(Path file) {
            Path place = file.toAbsolutePath().normalize();
            EaseTableProblem problem =
                    EaseTableProblem.unreadable(place.getFileName().toString());
            return new Entry(place, Optional.empty(), Optional.of(problem), Optional.empty());
        }

        private static Entry unread(Path file) {
            return new Entry(file.toAbsolutePath().normalize(), Optional.empty(), Optional.empty(), Optional.empty());
        }

        /** Whether it is still to be read. */
        public boolean isUnread() {
            return tables.isEmpty() && problem.isEmpty();
        }

        /** What is being read is left to who reads it. */
        private Entry again() {
            return isUnread() || Fingerprint.onDisk(file).equals(seen) ? this : read(file);
        }
    }

    private OwnTables(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        boolean any = entries.stream().anyMatch(e -> e.tables().isPresent());
        this.joined = any ? Optional.of(joined(entries)) : Optional.empty();
    }

    private static EaseTables joined(List<Entry> entries) {
        EaseTables all = EaseTables.standard();
        for (Entry entry : entries) {
            all = entry.tables().isPresent() ? all.with(entry.tables().get()) : all;
        }
        return all;
    }

    /** Files that are known and still to be read. */
    public static OwnTables unread(List<Path> files) {
        return files.isEmpty()
                ? NONE
                : new OwnTables(files.stream().map(Entry::unread).toList());
    }

    /** With what was still to be read; the same object where that was read or removed meanwhile. */
    public OwnTables filled(Entry read) {
        boolean wanted = entries.stream().anyMatch(e -> e.isUnread() && e.file().equals(read.file()));
        return wanted ? with(read) : this;
    }

    /** With what a file among these holds now; the same object where it was removed meanwhile. */
    public OwnTables renewed(Entry read) {
        return has(read.file()) ? with(read) : this;
    }

    public boolean has(Path file) {
        return files().contains(file.toAbsolutePath().normalize());
    }

    /** With a file more, or if it was there already, with what it holds now. */
    public OwnTables with(Entry added) {
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
