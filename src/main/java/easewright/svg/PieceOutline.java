package easewright.svg;

import java.util.Optional;

/**
 * An outline in a drawing without marks that may be a piece.
 *
 * @param order   number of the shape that is drawn first
 * @param joined  the lines that draw it; empty for the sub-path of one shape
 * @param subPath number of that sub-path
 * @param id      by which a piece refers to it
 * @param name    what somebody called it, if anybody did
 */
record PieceOutline(
        Area area, int order, Optional<JoinedOutline> joined, int subPath, String id, Optional<String> name) {
    boolean holds(PieceOutline other) {
        return area.holds(new SubPath(other.area.outline()));
    }
}
