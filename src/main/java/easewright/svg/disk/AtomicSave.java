package easewright.svg.disk;

import easewright.pattern.FileTrouble;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Puts a file in place whole or not at all: it is written beside its place under another name, forced to the disk,
 * read back, and only then moved there in one step. A file that is replaced stays as {@code NAME.bak}.
 */
public final class AtomicSave {
    private final Disk disk;

    AtomicSave(Disk disk) {
        this.disk = disk;
    }

    /**
     * A file in place.
     *
     * @param fingerprint of the content, to be given on the next save
     * @param findings    what could not be kept as it was: {@code save-owner-changed}
     * @param backup      where the content that was replaced is kept, if a file was there before
     */
    public record Saved(Fingerprint fingerprint, List<Finding> findings, Optional<Path> backup) {
        public Saved {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Saves a file, new or in place of whatever is there. Permissions, owner, group and extended attributes of a file
     * that is replaced are kept as far as this user may; a symbolic link stays one and its target is replaced.
     *
     * @throws SvgProblem {@code save-no-directory}, {@code save-denied}, {@code save-write-protected},
     *                    {@code save-hard-link}, {@code save-not-a-file}, {@code save-not-atomic} or what
     *                    {@link FileTrouble#unsaved} says: nothing was changed; {@code save-not-forced}: the new file
     *                    is in place, but the disk did not confirm it
     */
    public static Saved save(Path target, byte[] content) throws SvgProblem {
        return new AtomicSave(Disk.REAL).put(target, content, Optional.empty());
    }

    /**
     * Saves in place of a file that was read or written before.
     *
     * @param lastSeen what the file held then
     * @throws SvgProblem {@code save-changed-meanwhile} if another program has changed the file since: nothing was
     *                    changed; else as {@link #save(Path, byte[])}
     */
    public static Saved save(Path target, byte[] content, Fingerprint lastSeen) throws SvgProblem {
        return new AtomicSave(Disk.REAL).put(target, content, Optional.of(lastSeen));
    }

    /** The same on any disk. */
    Saved put(Path target, byte[] content, Optional<Fingerprint> lastSeen) throws SvgProblem {
        try {
            return write(target, content, lastSeen);
        } catch (AtomicMoveNotSupportedException e) {
            throw problem("save-not-atomic", target, e);
        } catch (IOException e) {
            throw problem(trouble(target, content.length, e).unsaved(), target, e);
        }
    }

    private Saved write(Path target, byte[] content, Optional<Fingerprint> lastSeen) throws IOException, SvgProblem {
        boolean there = Files.exists(target);
        Path place = there ? target.toRealPath() : target.toAbsolutePath();
        if (there) {
            replaceable(place, target);
        }
        List<Finding> findings = new ArrayList<>();
        Path fresh = Aside.name(place);
        Path old = Aside.name(place);
        Path backup = place.resolveSibling(place.getFileName() + ".bak");
        try {
            disk.writeNew(fresh, content);
            byte[] before = there ? disk.read(place) : new byte[0];
            if (there) {
                if (!disk.copyTraits(place, fresh)) {
                    findings.add(
                            Finding.of("save-owner-changed", Severity.NOTE, "").with("file", target.toString()));
                }
                disk.writeNew(old, before);
                disk.copyTraits(place, old);
            }
            if (!Arrays.equals(disk.read(fresh), content)) {
                throw problem("save-failed", target, null);
            }
            if (there) {
                unchanged(place, target, before, lastSeen);
                disk.replace(old, backup);
            }
            disk.replace(fresh, place);
        } finally {
            removeAll(fresh, old);
        }
        forceFolder(place.getParent(), target);
        return new Saved(Fingerprint.of(content), findings, there ? Optional.of(backup) : Optional.empty());
    }

    /** Refuses what a rename would replace against its owner's will or could not replace. */
    private static void replaceable(Path place, Path target) throws IOException, SvgProblem {
        if (!Files.isRegularFile(place)) {
            throw problem("save-not-a-file", target, null);
        }
        PosixFileAttributeView view = Files.getFileAttributeView(place, PosixFileAttributeView.class);
        // Asked of the file rather than of the system, which lets an administrator write anything.
        boolean locked = view != null
                && !view.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE)
                && !view.readAttributes().permissions().contains(PosixFilePermission.GROUP_WRITE);
        if (locked || !Files.isWritable(place)) {
            boolean disk = Files.getFileStore(place).isReadOnly();
            throw problem(disk ? "save-disk-read-only" : "save-write-protected", target, null);
        }
        if (view != null && Files.getAttribute(place, "unix:nlink") instanceof Integer links && links > 1) {
            throw problem("save-hard-link", target, null);
        }
    }

    /** Looks as late as possible whether the file is still the one that was read. */
    private void unchanged(Path place, Path target, byte[] before, Optional<Fingerprint> lastSeen)
            throws IOException, SvgProblem {
        byte[] now = disk.read(place);
        Fingerprint expected = lastSeen.orElseGet(() -> Fingerprint.of(before));
        if (!Fingerprint.of(now).equals(expected)) {
            throw problem("save-changed-meanwhile", target, null);
        }
    }

    private void removeAll(Path fresh, Path old) {
        try {
            disk.remove(fresh);
            disk.remove(old);
            Aside.sweep(fresh, disk);
        } catch (IOException e) {
            // Left for the next save's sweep; whether this one succeeded does not hang on it.
            return;
        }
    }

    /** Makes the new name durable. */
    private void forceFolder(Path directory, Path target) throws SvgProblem {
        try {
            disk.forceFolder(directory);
        } catch (IOException e) {
            throw problem("save-not-forced", target, e);
        }
    }

    /**
     * What is wrong: by what the system says, and where it says nothing plain, by the disk itself.
     *
     * @param bytes so many were to be written
     */
    static FileTrouble trouble(Path target, int bytes, IOException why) {
        FileTrouble said = FileTrouble.of(target, why);
        if (said != FileTrouble.UNKNOWN) {
            return said;
        }
        try {
            FileStore store = Files.getFileStore(target.toAbsolutePath().getParent());
            if (store.isReadOnly()) {
                return FileTrouble.READ_ONLY;
            }
            // New content and backup stand side by side for a moment.
            return store.getUsableSpace() < 2L * bytes ? FileTrouble.FULL : FileTrouble.UNKNOWN;
        } catch (IOException e) {
            return FileTrouble.UNKNOWN;
        }
    }

    /** With what the system says, where it says anything. */
    private static SvgProblem problem(String code, Path target, IOException cause) {
        Map<String, Object> values = new TreeMap<>(Map.of("file", target.toString()));
        Path folder = target.toAbsolutePath().getParent();
        values.put("folder", String.valueOf(folder == null ? target : folder));
        if (cause != null && !FileTrouble.details(cause).isEmpty()) {
            values.put("reason", FileTrouble.details(cause));
        }
        return new SvgProblem(code, values, cause);
    }
}
