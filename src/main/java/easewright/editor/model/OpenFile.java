package easewright.editor.model;

import easewright.svg.SvgFile;
import easewright.svg.disk.Fingerprint;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The file on the table.
 *
 * @param path empty for a sample that was never saved
 * @param name what to call it in the window's title
 * @param seen by what the file on disk was known when it was last read or written here
 * @param saved whether it has been saved since it was opened
 * @param bare  whether on the disk it was a drawing as another program made it
 * @param asRead whether its drawing is what the file held when it was opened, and not what was kept from a crash
 * @param work the same for all states of one opening
 */
public record OpenFile(
        SvgFile svg,
        Optional<Path> path,
        String name,
        Optional<Fingerprint> seen,
        boolean saved,
        boolean bare,
        boolean asRead,
        Object work) {
    /** A file just read. */
    public OpenFile(SvgFile svg, Optional<Path> path, String name) {
        this(svg, path, name, path.map(p -> Fingerprint.of(svg.bytes())));
    }

    /** A file just read, which is known on the disk by something else than its content. */
    public OpenFile(SvgFile svg, Optional<Path> path, String name, Optional<Fingerprint> seen) {
        this(svg, path, name, seen, !svg.marked(), true);
    }

    /** Work that was kept from a crash. */
    public OpenFile(
            SvgFile svg, Optional<Path> path, String name, Optional<Fingerprint> seen, boolean bare, boolean asRead) {
        this(svg, path, name, seen, false, bare, asRead, new Object());
    }

    /** The same work, now saved at a path. */
    public OpenFile savedAt(Path place, Fingerprint fingerprint) {
        return new OpenFile(
                svg,
                Optional.of(place),
                place.getFileName().toString(),
                Optional.of(fingerprint),
                true,
                false,
                asRead,
                work);
    }

    /** Whether it is a drawing as another program made it, which was not saved here: it is not to be replaced unasked. */
    public boolean isBareDrawing() {
        return path.isPresent() && bare;
    }

    /** The same file, of which other layers were read. */
    OpenFile reread(SvgFile otherwise) {
        return new OpenFile(otherwise, path, name, seen, saved, bare, asRead, work);
    }

    /** The user's file, or for work that was never saved the name it would have. */
    public Path known() {
        return path.map(p -> p.toAbsolutePath().normalize()).orElse(Path.of(name));
    }
}
