package easewright.editor.file;

import easewright.editor.model.Unfinished;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What windows left behind that did not end in good order.
 *
 * @param works   the latest first
 * @param tried   those among them in which nothing is new but what was only tried or begun
 * @param damaged where work lies that cannot be brought back; told once
 */
public record LeftBehind(List<KeptWork> works, Set<KeptWork> tried, List<Path> damaged) {
    static final LeftBehind NOTHING = new LeftBehind(List.of(), Set.of(), List.of());

    public LeftBehind {
        works = List.copyOf(works);
        tried = Set.copyOf(tried);
        damaged = List.copyOf(damaged);
    }

    static LeftBehind in(Recovery recovery) {
        List<KeptWork> works = recovery.leftBehind();
        return new LeftBehind(
                works,
                works.stream().filter(LeftBehind::isAsSaved).collect(Collectors.toSet()),
                recovery.putAsideDamaged());
    }

    /** Whether its file holds just so, or for what has no file, such as a sample, whether nothing was done to it. */
    static boolean isAsSaved(KeptWork work) {
        return work.original().isAbsolute()
                ? work.isInItsFile()
                : Unfinished.of(work.unfinished()).asSaved();
    }
}
