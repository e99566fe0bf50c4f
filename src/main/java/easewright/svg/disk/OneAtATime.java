package easewright.svg.disk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Supplier;

/**
 * Work on a file that several windows and programs change: what is read, changed and written by one of them is not
 * written in between by another.
 */
public final class OneAtATime {
    private static final Duration AGAIN = Duration.ofMillis(4);

    private OneAtATime() {}

    /**
     * Does a piece of work while nobody else does one of the same name. Where it is not one's turn in time, or the disk
     * knows no locks, it is done all the same: what would be lost without it is more than what two at once may lose.
     *
     * @param name        what the work is on
     * @param stateFolder where the program keeps what it remembers
     * @param atMost      so long the others are waited for
     */
    public static <T> T run(String name, Path stateFolder, Duration atMost, Supplier<T> job) {
        try {
            Claims claims = Claims.in(stateFolder);
            if (!taken(claims, name, System.nanoTime() + atMost.toNanos())) {
                return job.get();
            }
            try {
                return job.get();
            } finally {
                claims.release(name);
            }
        } catch (IOException noFolder) {
            return job.get();
        }
    }

    private static boolean taken(Claims claims, String name, long until) {
        while (!claims.take(name)) {
            if (System.nanoTime() - until > 0) {
                return false;
            }
            try {
                Thread.sleep(AGAIN.toMillis());
            } catch (InterruptedException ending) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
        return true;
    }
}
