package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The outlines of the pieces as they lie on the screen, pixels: what is paper and what is bare table. */
final class Papers {
    /** Words nearer to a piece than this seem to be about it, pixels. */
    private static final double CLOSE = 28;

    private final List<Paper> all = new ArrayList<>();

    /** By their pieces. */
    private final Map<String, DrawnLine> outlines = new HashMap<>();

    private record Paper(String piece, DrawnLine outline) {}

    void put(String piece, DrawnLine outline) {
        all.add(new Paper(piece, outline));
        outlines.put(piece, outline);
    }

    void addAll(Papers others) {
        all.addAll(others.all);
        outlines.putAll(others.outlines);
    }

    /** The outline of a piece that was put here. */
    DrawnLine outline(String piece) {
        return outlines.get(piece);
    }

    /** Whether a pixel lies on no piece. */
    boolean isOnTable(Point pixel) {
        return all.stream().noneMatch(paper -> paper.outline().surrounds(pixel));
    }

    /**
     * Whether a plate lies so close to another piece that it would seem to be about that one.
     *
     * @param place on the piece that it is about
     */
    boolean isCloseToOther(Point middle, double width, double height, Point place, String piece) {
        return all.stream()
                .filter(paper -> !paper.piece().equals(piece))
                .anyMatch(paper -> paper.outline().meets(middle, width + 2 * CLOSE, height, 0)
                        && !paper.outline().surrounds(place));
    }

    /**
     * Whether a line that leads away from a place comes over another piece or ends on one. What lies under the place, as in
     * a nest of sizes, is no other piece.
     *
     * @param turn  of the line, radians
     * @param place on the piece where the line begins
     */
    boolean comesOverOther(Line lead, double turn, Point place, String piece) {
        Point middle = lead.at(0.5);
        double length = lead.length();
        for (Paper paper : all) {
            boolean touches = paper.outline().meets(middle, length, 1, turn)
                    || paper.outline().surrounds(lead.end());
            if (touches && !paper.piece().equals(piece) && !paper.outline().surrounds(place)) {
                return true;
            }
        }
        return false;
    }
}
