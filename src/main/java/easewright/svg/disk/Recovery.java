package easewright.svg.disk;

import easewright.pattern.FileTrouble;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * Unsaved work of one window, kept in the program's own folder and never in the user's file. What a window has not
 * said to be {@link #done} when it ends, by a crash, a power cut or kill, is found by the next one as left behind.
 * Each piece of work is one file that is replaced in one step, so that either the last or the one before it is whole.
 */
public final class Recovery implements AutoCloseable {
    private static final String ENDING = ".kept";
    private static final String UNFINISHED = ".tmp";
    private static final String SPOILT = ".damaged";

    private final Path folder;
    private final Disk disk;
    private final InstantSource clock;
    private final Claims claims;
    private final String window = UUID.randomUUID().toString();
    private boolean closed;

    /**
     * @param stateFolder where the program keeps what it remembers; {@code recovery} is made in it, readable by this
     *                    user only, since patterns hold measurements of people
     * @throws SvgProblem {@code state-folder} if the folder cannot be written
     */
    public Recovery(Path stateFolder) throws SvgProblem {
        this(stateFolder, Disk.REAL, InstantSource.system());
    }

    /** On any disk, by any clock. */
    Recovery(Path stateFolder, Disk disk, InstantSource clock) throws SvgProblem {
        this.clock = clock;
        this.folder = stateFolder.resolve("recovery");
        this.disk = disk;
        try {
            claims = Claims.in(folder);
            forThisUserOnly();
        } catch (IOException e) {
            throw folderProblem(stateFolder, e);
        }
        claims.take(window);
    }

    private void forThisUserOnly() throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString("rwx------"));
        }
    }

    static SvgProblem folderProblem(Path folder, IOException cause) {
        return new SvgProblem("state-folder", Map.of("file", folder.toString()), cause);
    }

    /**
     * Keeps the present state of a file that is being worked on, in place of the state kept before; nothing once this
     * is closed.
     *
     * @param original   the user's file, which is not touched; for work that was never saved, the name it would have
     * @param seen       what the file held when it was last read or written by who works on it; empty where it was not
     * @param bytes      the whole file as it would be saved now
     * @param unfinished what is at hand and not done yet, in the words of who will read it again; empty for nothing
     * @param earlier    what the file was before
     * @throws SvgProblem {@code recovery-disk-full} or {@code recovery-not-kept}: the state kept before is still there
     */
    public synchronized void keep(
            Path original, Optional<Fingerprint> seen, byte[] bytes, String unfinished, EarlierStates earlier)
            throws SvgProblem {
        if (closed) {
            return;
        }
        Path place = place(original);
        Path fresh = place.resolveSibling(place.getFileName() + UNFINISHED);
        byte[] stored = new KeptWork(place, original, seen, clock.instant(), bytes, unfinished, earlier).stored();
        try {
            if (!Files.isDirectory(folder)) {
                // Somebody has cleared it away.
                Files.createDirectories(folder);
                forThisUserOnly();
            }
            disk.remove(fresh);
            disk.writeNew(fresh, stored);
            disk.replace(fresh, place);
            disk.forceFolder(folder);
        } catch (IOException e) {
            remove(fresh);
            boolean full = AtomicSave.trouble(fresh, stored.length, e) == FileTrouble.FULL;
            throw new SvgProblem(
                    full ? "recovery-disk-full" : "recovery-not-kept", Map.of("file", original.toString()), e);
        }
    }

    private Path place(Path original) {
        return folder.resolve(
                window + "-" + Fingerprint.hex(original.toString()).substring(0, 16) + ENDING);
    }

    /**
     * Work kept by windows that ended without saying it was done, the latest first; damaged ones are passed over. What
     * turns out to have been saved in the last moment goes: there is nothing to bring back.
     */
    public List<KeptWork> leftBehind() {
        List<KeptWork> found = new ArrayList<>();
        for (Path file : orphans(ENDING)) {
            try {
                KeptWork work = KeptWork.of(file, disk.read(file)).orElse(null);
                if (work != null && work.unfinished().isEmpty() && work.isInItsFile()) {
                    remove(file);
                } else if (work != null) {
                    found.add(work);
                }
            } catch (IOException gone) {
                // Another window dealt with it in this moment.
                continue;
            }
        }
        found.sort(Comparator.comparing(KeptWork::at).reversed());
        return found;
    }

    /**
     * Puts what is not whole among the work left behind under another name, where it is not found again: a failing
     * disk leaves such, since keeping itself never does.
     *
     * @return where each lies now
     */
    public List<Path> putAsideDamaged() {
        List<Path> aside = new ArrayList<>();
        for (Path file : orphans(ENDING)) {
            try {
                if (KeptWork.of(file, disk.read(file)).isEmpty()) {
                    Path place = file.resolveSibling(file.getFileName() + SPOILT);
                    disk.replace(file, place);
                    aside.add(place);
                }
            } catch (IOException unreadable) {
                // It is looked at again by the next window.
                continue;
            }
        }
        return aside;
    }

    private List<Path> orphans(String ending) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + ending)) {
            for (Path file : all) {
                String name = file.getFileName().toString();
                if (name.length() > window.length() && !claims.taken(name.substring(0, window.length()))) {
                    files.add(file);
                }
            }
        } catch (IOException e) {
            // A folder that cannot be listed holds nothing that could be restored.
            return List.of();
        }
        return files;
    }

    /** The file has been saved, or its changes given up: what this window kept of it goes. */
    public synchronized void done(Path original) {
        remove(place(original));
    }

    /** Work left behind has been restored, or is not wanted. */
    public void discard(KeptWork work) {
        remove(work.file());
    }

    private void remove(Path file) {
        try {
            disk.remove(file);
        } catch (IOException e) {
            // It will be offered once more, which harms nothing.
            return;
        }
    }

    /** The window ends in good order. What it did not call done stays to be found, and half-written files go. */
    @Override
    public synchronized void close() {
        closed = true;
        claims.release(window);
        orphans(UNFINISHED).forEach(this::remove);
    }
}
