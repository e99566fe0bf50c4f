package easewright.svg.disk;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;

/** Names beside a file under which new content waits, and the removal of those whose program died. */
final class Aside {
    private static final String UUID_FORM = "[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}";

    /** Nobody takes this long over one save. */
    private static final Duration STALE = Duration.ofHours(1);

    private Aside() {}

    /** A name in the same folder that nobody else uses. */
    static Path name(Path place) {
        return place.resolveSibling(prefix(place.getFileName().toString()) + UUID.randomUUID() + ".tmp");
    }

    private static String prefix(String name) {
        return "." + name + ".";
    }

    /**
     * Removes what earlier saves of the same file left when they were cut off. Only our own names are touched, and
     * only when old.
     *
     * @param fresh a name made here
     */
    static void sweep(Path fresh, Disk disk) throws IOException {
        String own = fresh.getFileName().toString();
        String prefix =
                own.substring(0, own.length() - UUID.randomUUID().toString().length() - ".tmp".length());
        Pattern ours = Pattern.compile(Pattern.quote(prefix) + UUID_FORM + "\\.tmp");
        Instant limit = Instant.now().minus(STALE);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(
                fresh.getParent(),
                entry -> ours.matcher(entry.getFileName().toString()).matches())) {
            for (Path file : all) {
                FileTime written = Files.getLastModifiedTime(file);
                if (written.toInstant().isBefore(limit)) {
                    disk.remove(file);
                }
            }
        }
    }
}
