package easewright.svg.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;

/**
 * Names that one window at a time may hold. Each name is one byte, by its digest, of a lock file that stays empty;
 * the system lets go of it when the program ends, however it ends. All windows of one program share one open file,
 * since some systems let go of every lock of a program that closes the file once.
 */
final class Claims {
    private static final Map<Path, Claims> OPEN = new HashMap<>();

    private final FileChannel channel;
    private final Map<String, FileLock> held = new HashMap<>();

    private Claims(FileChannel channel) {
        this.channel = channel;
    }

    /** The claims kept in a folder, which is made if need be. */
    static synchronized Claims in(Path folder) throws IOException {
        Files.createDirectories(folder);
        Path place = folder.toRealPath().resolve("claims.lock");
        Claims claims = OPEN.get(place);
        if (claims == null || !claims.channel.isOpen()) {
            claims = new Claims(FileChannel.open(
                    place, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE));
            OPEN.put(place, claims);
        }
        return claims;
    }

    /**
     * Takes a name; false if another window has it. Where the disk knows no locks, as on some shared ones, every name
     * is free.
     */
    synchronized boolean take(String name) {
        if (held.containsKey(name)) {
            return false;
        }
        try {
            FileLock lock = channel.tryLock(place(name), 1, false);
            if (lock == null) {
                return false;
            }
            held.put(name, lock);
        } catch (OverlappingFileLockException twoNamesOnOneByte) {
            return false;
        } catch (IOException noLocksHere) {
            return true;
        }
        return true;
    }

    synchronized void release(String name) {
        FileLock lock = held.remove(name);
        if (lock != null) {
            try {
                lock.release();
            } catch (IOException e) {
                // The disk is gone, and the lock with it.
                return;
            }
        }
    }

    /** Whether somebody, this program included, holds the name. */
    synchronized boolean taken(String name) {
        if (!take(name)) {
            return true;
        }
        release(name);
        return false;
    }

    private static long place(String name) {
        return Long.parseUnsignedLong(Fingerprint.hex(name).substring(0, 15), 16);
    }
}
