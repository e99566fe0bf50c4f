package easewright.measure;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The drawn line of a piece with the allowance on each of its segments.
 *
 * @param outline split at the ends of the edges, so that one allowance holds for each segment
 * @param widths  allowance on each segment, mm
 */
record CuttingLine(Outline outline, double[] widths) {
    static CuttingLine of(Piece piece, Outline closed) {
        if (!hasAllowance(piece)) {
            return new CuttingLine(closed, new double[0]);
        }
        List<Segment> drawn = new ArrayList<>();
        for (Segment segment : closed.segments()) {
            if (segment.length() > 0) {
                drawn.add(segment);
            }
        }
        Outline outline = new Outline(drawn);
        for (Edge edge : piece.edges()) {
            outline = outline.splitAt(outline.nearest(edge.from()).place());
            outline = outline.splitAt(outline.nearest(edge.to()).place());
        }
        double[] widths = new double[outline.segments().size()];
        Arrays.fill(widths, piece.allowance());
        for (int k = piece.edges().size() - 1; k >= 0; k--) {
            Edge edge = piece.edges().get(k);
            Place from = outline.nearest(edge.from()).place();
            Place to = outline.nearest(edge.to()).place();
            for (int i = 0; i < widths.length; i++) {
                if (from.equals(to) || Places.between(from, new Place(i, 0.5), to)) {
                    widths[i] = piece.allowanceInside(edge);
                }
            }
        }
        return new CuttingLine(outline, widths);
    }

    private static boolean hasAllowance(Piece piece) {
        boolean any = piece.allowance() != 0;
        for (Edge edge : piece.edges()) {
            any |= piece.allowanceInside(edge) != 0;
        }
        return any && piece.drawn() == LineKind.CUTTING;
    }

    boolean hasAllowance() {
        return widths.length > 0;
    }

    double widest() {
        double widest = 0;
        for (double width : widths) {
            widest = Math.max(widest, width);
        }
        return widest;
    }
}
