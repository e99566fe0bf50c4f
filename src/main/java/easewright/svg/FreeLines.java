package easewright.svg;

import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Set;

/** The drawn lines of an opened file that belong to no piece of a pattern of it. */
final class FreeLines {
    private final Opening opening;

    /** The closed lines of the drawing, once somebody asked for them. */
    private volatile List<Rider> closed;

    FreeLines(Opening opening) {
        this.opening = opening;
    }

    /** All of them, each with the id by which a piece could take it along. */
    List<Rider> lines(Pattern of) {
        Set<String> spare = spare(of);
        return LooseLines.of(opening.drawing(), opening.drawn(), of).stream()
                .filter(line -> !spare.contains(line.id()))
                .toList();
    }

    /** Those that are closed and hold the area of a piece. */
    List<Rider> outlines(Pattern of) {
        if (closed == null) {
            closed = LooseLines.closed(opening.drawing());
        }
        List<Rider> free = LooseLines.without(opening.drawn(), of, closed);
        if (free.isEmpty()) {
            return free;
        }
        Set<String> spare = spare(of);
        return free.stream().filter(line -> !spare.contains(line.id())).toList();
    }

    /** Ids of the drawn copies for one side of the body that writing the pattern takes out. */
    Set<String> spare(Pattern of) {
        return SpareCopies.in(opening.source(), opening.drawing(), opening.drawn(), opening.pattern(), of)
                .ids(opening.drawing());
    }
}
