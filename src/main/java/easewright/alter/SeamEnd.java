package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.List;

/**
 * One end of a seam, lengthened or shortened in its own direction. The segment beside the corner follows; nothing else
 * moves, and the seam keeps its direction at the end.
 */
final class SeamEnd {
    private final Piece piece;
    private final Edge beside;
    private final Shift shift;

    /**
     * @param atEnd whether the end in the drawn direction is meant, else the start
     */
    SeamEnd(Piece piece, Edge edge, boolean atEnd) throws Refusal {
        this.piece = piece;
        EdgeRun run = new EdgeRun(piece, edge);
        Point corner = atEnd ? run.end() : run.start();
        Outline outline =
                piece.outline().splitAt(piece.outline().nearest(corner).place());
        Place node = outline.nearest(corner).place();
        List<Segment> all = outline.segments();
        int n = all.size();
        int next = node.segment();
        int last = Math.floorMod(next - 1, n);
        int own = atEnd ? last : next;
        Point away = atEnd ? all.get(own).tangent(1) : all.get(own).tangent(0).times(-1);
        double[][] weights = new double[n][];
        weights[last] = rising(all.get(last));
        weights[next] = falling(all.get(next));
        shift = new Shift(outline, away, weights);
        beside = piece.edges().stream()
                .filter(e -> !e.name().equals(edge.name()))
                .filter(e -> corner.equals(atEnd ? new EdgeRun(piece, e).start() : new EdgeRun(piece, e).end()))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.of("no-edge-beside").with("piece", piece.name()).with("edge", edge.name()));
    }

    private static double[] rising(Segment s) {
        return s instanceof Cubic ? new double[] {0, 0, 1, 1} : new double[] {0, 1 / 3.0, 2 / 3.0, 1};
    }

    private static double[] falling(Segment s) {
        return s instanceof Cubic ? new double[] {1, 1, 0, 0} : new double[] {1, 2 / 3.0, 1 / 3.0, 0};
    }

    /** The edge that meets the seam at this end. */
    Edge beside() {
        return beside;
    }

    Piece longer(double mm) {
        return Carry.along(piece, shift, mm);
    }

    List<Moved> moved(double mm) {
        return shift.moved(piece.id(), mm);
    }
}
