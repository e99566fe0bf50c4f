package easewright.svg.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.UserDefinedFileAttributeView;

/** The machine's own disk. */
final class RealDisk implements Disk {
    @Override
    public byte[] read(Path file) throws IOException {
        return Files.readAllBytes(file);
    }

    @Override
    public void writeNew(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    @Override
    public boolean copyTraits(Path from, Path to) throws IOException {
        boolean sameOwner = true;
        PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (source != null && target != null) {
            PosixFileAttributes wanted = source.readAttributes();
            sameOwner = copyOwner(wanted, target);
            // After the owner: the system takes away special bits from a file that changes hands.
            target.setPermissions(wanted.permissions());
        }
        AclFileAttributeView rules = Files.getFileAttributeView(from, AclFileAttributeView.class);
        AclFileAttributeView copied = Files.getFileAttributeView(to, AclFileAttributeView.class);
        if (rules != null && copied != null) {
            copied.setAcl(rules.getAcl());
        }
        copyExtended(from, to);
        return sameOwner;
    }

    private static boolean copyOwner(PosixFileAttributes wanted, PosixFileAttributeView target) throws IOException {
        PosixFileAttributes own = target.readAttributes();
        boolean same = true;
        if (!own.group().equals(wanted.group())) {
            try {
                target.setGroup(wanted.group());
            } catch (IOException notAllowed) {
                same = false;
            }
        }
        if (!own.owner().equals(wanted.owner())) {
            try {
                target.setOwner(wanted.owner());
            } catch (IOException notAllowed) {
                // Only the system's own administrator may give files away.
                same = false;
            }
        }
        return same;
    }

    private static void copyExtended(Path from, Path to) throws IOException {
        UserDefinedFileAttributeView source = Files.getFileAttributeView(from, UserDefinedFileAttributeView.class);
        UserDefinedFileAttributeView target = Files.getFileAttributeView(to, UserDefinedFileAttributeView.class);
        if (source == null || target == null || !Files.getFileStore(from).supportsFileAttributeView("user")) {
            return;
        }
        for (String name : source.list()) {
            ByteBuffer value = ByteBuffer.allocate(source.size(name));
            source.read(name, value);
            value.flip();
            target.write(name, value);
        }
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void remove(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (System.getProperty("os.name").startsWith("Windows")) {
            // Windows cannot open a folder and needs no such step.
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
