package easewright.measure;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
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
        boolean none = piece.drawn() == LineKind.STITCHING
                || (piece.allowance() == 0 && piece.edges().stream().allMatch(e -> piece.allowanceInside(e) == 0));
        if (none) {
            return new CuttingLine(closed, new double[0]);
        }
        List<Segment> drawn =
                closed.segments().stream().filter(s -> s.length() > 0).toList();
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

    boolean hasAllowance() {
        return widths.length > 0;
    }

    double widest() {
        return Arrays.stream(widths).max().orElse(0);
    }
}
