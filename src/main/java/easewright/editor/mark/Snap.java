package easewright.editor.mark;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.Optional;

/**
 * A place on the table that the hand means.
 *
 * @param at    where it is, mm
 * @param piece id of the piece it belongs to, if any
 * @param line  the straight stretch it lies on, if it lies within one
 */
public record Snap(Kind kind, Point at, Optional<String> piece, Optional<Line> line) {
    /** What is there. */
    public enum Kind {
        /** An end of a drawn segment. */
        CORNER,
        /** A notch, a dart's mouth or point, an end of the grainline. */
        MARK,
        /** Where a level meets the stitching line. */
        LEVEL,
        /** Somewhere on a drawn outline. */
        OUTLINE,
        /** Somewhere on another drawn line. */
        LINE,
        /** Nothing: the place itself. */
        FREE
    }

    /** Whether it is one certain place, not just somewhere along a line. */
    public boolean isPoint() {
        return kind == Kind.CORNER || kind == Kind.MARK || kind == Kind.LEVEL;
    }
}
