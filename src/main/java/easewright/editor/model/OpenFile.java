package easewright.editor.model;

import easewright.history.History;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.disk.Fingerprint;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
 * @param readAs how it was read at each state of the history, oldest first: with which of its layers, or from what was
 *               kept of that state from a crash; states beyond these came since, and are as it is read now
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
        List<SvgFile> readAs,
        Object work) {
    public OpenFile {
        readAs = List.copyOf(readAs);
    }

    /** A file just read. */
    public OpenFile(SvgFile svg, Optional<Path> path, String name) {
        this(svg, path, name, path.map(p -> Fingerprint.of(svg.bytes())));
    }

    /** A file just read, which is known on the disk by something else than its content. */
    public OpenFile(SvgFile svg, Optional<Path> path, String name, Optional<Fingerprint> seen) {
        this(svg, path, name, seen, !svg.marked(), true);
    }

    /** A file that was never saved. */
    private OpenFile(
            SvgFile svg, Optional<Path> path, String name, Optional<Fingerprint> seen, boolean bare, boolean asRead) {
        this(svg, path, name, seen, false, bare, asRead, List.of(), new Object());
    }

    /**
     * Work that was kept from a crash.
     *
     * @param states what the file would have been after each step, oldest first, the last one as it was kept
     */
    public static OpenFile kept(
            List<SvgFile> states,
            Optional<Path> path,
            String name,
            Optional<Fingerprint> seen,
            boolean bare,
            boolean asRead) {
        SvgFile present = states.get(states.size() - 1);
        return new OpenFile(present, path, name, seen, false, bare, asRead, states, new Object());
    }

    /** The file that the state of this number in the history is a pattern of. */
    public SvgFile readAt(int state) {
        return state < readAs.size() ? readAs.get(state) : svg;
    }

    /** The history as the work on it begins. */
    History<Pattern> history() {
        List<Pattern> states = readAs.stream().map(SvgFile::pattern).toList();
        return states.isEmpty()
                ? History.of(svg.pattern())
                : new History<>(states, states.size() - 1, states.size() - 1);
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
                readAs,
                work);
    }

    /** Whether it is a drawing as another program made it, which was not saved here: it is not to be replaced unasked. */
    public boolean isBareDrawing() {
        return path.isPresent() && bare;
    }

    /** The same file, of which other layers are read from the present state of the history on. */
    OpenFile reread(SvgFile otherwise, History<Pattern> history) {
        return readAs(otherwise, at(history, history).readAs);
    }

    /** The same file as it was read at the present state of a history that went on, or back, from another one. */
    OpenFile at(History<Pattern> now, History<Pattern> before) {
        List<SvgFile> all = new ArrayList<>();
        for (int i = 0; i < now.states().size(); i++) {
            boolean known = i < before.states().size()
                    && now.states().get(i) == before.states().get(i)
                    && i < readAs.size();
            all.add(known ? readAs.get(i) : svg);
        }
        if (now == before) {
            all.set(now.index(), svg);
        }
        return readAs(all.get(now.index()), all);
    }

    private OpenFile readAs(SvgFile present, List<SvgFile> all) {
        return new OpenFile(present, path, name, seen, saved, bare, asRead, all, work);
    }

    /** The user's file, or for work that was never saved the name it would have. */
    public Path known() {
        return path.map(p -> p.toAbsolutePath().normalize()).orElse(Path.of(name));
    }
}
