package easewright.editor.model;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a change did to one edge of a piece that changed.
 *
 * @param run the edge as it is now, on the outline as drawn
 */
public record EdgeFate(Piece piece, Edge edge, Fate fate, List<Segment> run) {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private static final int LOOKS = 24;

    /** How an edge came through a change. */
    public enum Fate {
        /** It lies where it lay. */
        STAYED,
        /** It lies elsewhere with the same length and shape. */
        CARRIED,
        /** It has another shape or length. */
        RESHAPED
    }

    public EdgeFate {
        run = List.copyOf(run);
    }

    /** The fates of all edges of the pieces that a change touched. */
    static List<EdgeFate> of(Pattern before, Pattern after) {
        Map<String, Piece> known = new HashMap<>();
        before.pieces().forEach(p -> known.put(p.id(), p));
        List<EdgeFate> fates = new ArrayList<>();
        for (Piece now : after.pieces()) {
            Piece was = known.get(now.id());
            if (was != null && was != now && !was.equals(now)) {
                for (Edge edge : now.edges()) {
                    Curve run = edge.on(now.outline());
                    was.edge(edge.name())
                            .map(e -> e.on(was.outline()))
                            .ifPresent(old -> fates.add(new EdgeFate(now, edge, fate(old, run), run.segments())));
                }
            }
        }
        return List.copyOf(fates);
    }

    private static Fate fate(Curve old, Curve now) {
        if (old.segments().equals(now.segments())) {
            return Fate.STAYED;
        }
        double oldLength = old.length();
        double nowLength = now.length();
        Point way = now.start().minus(old.start());
        boolean carried = Math.abs(oldLength - nowLength) <= SEEN;
        for (int i = 0; carried && i <= LOOKS; i++) {
            Point was = old.pointAtLength(oldLength * i / LOOKS);
            Point is = now.pointAtLength(nowLength * i / LOOKS);
            carried = is.minus(was).distance(way) <= SEEN;
        }
        if (!carried) {
            return Fate.RESHAPED;
        }
        return way.norm() <= SEEN ? Fate.STAYED : Fate.CARRIED;
    }
}
