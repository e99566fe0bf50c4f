package easewright.svg;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.Map;
import java.util.UUID;

/**
 * Puts a file in place whole or not at all: it is written beside its place under another name, forced to the disk,
 * read back, and only then moved there in one step. A file that is replaced stays as {@code NAME.bak}.
 */
public final class AtomicSave {
    private AtomicSave() {}

    /**
     * Saves a file that was made from another one, which must not be touched.
     *
     * @param input the file that was read
     * @throws SvgProblem {@code save-over-input} if both are the same file; else as {@link #save(Path, byte[])}
     */
    public static void saveElsewhere(Path target, byte[] content, Path input) throws SvgProblem {
        try {
            if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
                throw problem("save-over-input", target, null);
            }
        } catch (IOException e) {
            throw problem("save-failed", target, e);
        }
        save(target, content);
    }

    /**
     * Saves a file, new or in place of one. Permissions of a file that is replaced are kept; a symbolic link stays
     * one and its target is replaced.
     *
     * @throws SvgProblem {@code save-no-directory}, {@code save-denied}, {@code save-not-a-file},
     *                    {@code save-not-atomic} or {@code save-failed}: nothing was changed;
     *                    {@code save-not-forced}: the new file is in place, but the disk did not confirm it
     */
    public static void save(Path target, byte[] content) throws SvgProblem {
        try {
            write(target, content);
        } catch (AccessDeniedException e) {
            throw problem("save-denied", target, e);
        } catch (NoSuchFileException e) {
            throw problem("save-no-directory", target, e);
        } catch (AtomicMoveNotSupportedException e) {
            throw problem("save-not-atomic", target, e);
        } catch (IOException e) {
            throw problem("save-failed", target, e);
        }
    }

    private static void write(Path target, byte[] content) throws IOException, SvgProblem {
        boolean there = Files.exists(target);
        Path place = there ? target.toRealPath() : target.toAbsolutePath();
        if (there && !Files.isRegularFile(place)) {
            throw problem("save-not-a-file", target, null);
        }
        Path directory = place.getParent();
        Path fresh = aside(place);
        Path old = aside(place);
        try {
            writeForced(fresh, content);
            if (there) {
                keepPermissions(place, fresh);
                writeForced(old, Files.readAllBytes(place));
                keepPermissions(place, old);
                Files.move(
                        old,
                        place.resolveSibling(place.getFileName() + ".bak"),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
            if (!Arrays.equals(Files.readAllBytes(fresh), content)) {
                throw problem("save-failed", target, null);
            }
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
            Files.deleteIfExists(old);
        }
        forceDirectory(directory, target);
    }

    /** A name in the same directory that nobody else uses. */
    private static Path aside(Path place) {
        return place.resolveSibling("." + place.getFileName() + "." + UUID.randomUUID() + ".tmp");
    }

    private static void writeForced(Path path, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (source != null && target != null) {
            target.setPermissions(source.readAttributes().permissions());
        }
    }

    /** Makes the new name durable. Windows cannot open a directory and needs no such step. */
    private static void forceDirectory(Path directory, Path target) throws SvgProblem {
        if (System.getProperty("os.name").startsWith("Windows")) {
            return;
        }
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            throw problem("save-not-forced", target, e);
        }
    }

    private static SvgProblem problem(String code, Path target, Exception cause) {
        String reason = cause == null || cause.getMessage() == null ? "" : cause.getMessage();
        return new SvgProblem(code, Map.of("file", target.toString(), "reason", reason), cause);
    }
}
