package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import easewright.topology.CutAround;
import java.util.Arrays;
import java.util.Optional;

/** The cutting line around a piece that is drawn by its stitching line. */
final class Around {
    /** A mark this close to an end of segments means that end, mm. */
    private static final double ROUNDING = 0.05;

    private Around() {}

    /**
     * @param turnedUp whether hems are mirrored about the hem line at their corners, else both lines go straight on
     * @return empty where no such line can be drawn
     */
    static Optional<Outline> of(Piece piece, boolean turnedUp) {
        return of(piece).map(lines -> turnedUp ? lines.turnedUp() : lines.straight());
    }

    /** Both such lines in one; empty where none can be drawn. */
    static Optional<CutAround> of(Piece piece) {
        Outline outline = piece.outline();
        for (Edge edge : piece.edges()) {
            outline = split(split(outline, edge.from()), edge.to());
        }
        int count = outline.segments().size();
        double[] widths = new double[count];
        boolean[] hems = new boolean[count];
        Piece split = piece.withOutline(outline);
        Arrays.fill(widths, piece.allowance());
        for (Edge edge : piece.edges()) {
            EdgeRun run = new EdgeRun(split, edge);
            for (int i = 0; i < count; i++) {
                if (run.holds(new Place(i, 0.5))) {
                    widths[i] = allowance(piece, edge);
                    hems[i] = edge.role() == EdgeRole.HEM;
                }
            }
        }
        return CutAround.of(outline, widths, hems);
    }

    /** A crumb of a segment would have an allowance of its own. */
    private static Outline split(Outline outline, Point mark) {
        Place place = outline.nearest(mark).place();
        Point found = outline.point(place);
        Segment segment = outline.segments().get(place.segment());
        boolean node =
                segment.start().distance(found) <= ROUNDING || segment.end().distance(found) <= ROUNDING;
        return node ? outline : outline.splitAt(place);
    }

    /** The allowance on an edge, mm, whichever line is drawn. */
    static double allowance(Piece piece, Edge edge) {
        return edge.allowance().orElse(edge.role() == EdgeRole.FOLD ? 0 : piece.allowance());
    }
}
