package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where edges end on the outline of a piece. Where a stitching line is drawn inside a cutting line, edges are told by what is
 * sewn, since darts are cut into it and it is drawn with more care; each corner of it then has its own on the cutting
 * line, as far out as the allowances on both sides of it say.
 */
final class EdgeCorners {
    /** The direction of a run is judged over this much of its end, mm. */
    private static final double REACH = 10;

    /** A corner of the cutting line lies this near to where it should, mm, or within this part of the allowance. */
    private static final double NEAR = 5;

    private static final double NEAR_BY_ALLOWANCE = 0.6;

    /** Directions nearer to each other than this have no corner between them, as the sine of the angle. */
    private static final double FLAT = 0.1;

    private EdgeCorners() {}

    /** One for each run, where it begins. */
    static List<Point> on(Piece piece, RunsOfPiece parted) {
        List<Point> corners = parted.corners().stream().map(Corners.Corner::at).toList();
        Optional<Outline> sewn = SewnInside.known(piece);
        if (sewn.isEmpty()) {
            return corners;
        }
        List<Point> sharp = Corners.of(piece.outline(), List.of()).corners().stream()
                .map(Corners.Corner::at)
                .toList();
        double out = sewn.get().signedArea() > 0 ? -1 : 1;
        List<Point> ends = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Curve before =
                    parted.runs().get((i + corners.size() - 1) % corners.size()).curve();
            Curve after = parted.runs().get(i).curve();
            double a = RunsOfPiece.allowance(piece, before).orElse(0);
            double b = RunsOfPiece.allowance(piece, after).orElse(0);
            Point n = before.end()
                    .minus(before.pointAtLength(Math.max(0, before.length() - REACH)))
                    .unit()
                    .quarterTurned()
                    .times(out);
            Point m = after.pointAtLength(Math.min(after.length(), REACH))
                    .minus(after.start())
                    .unit()
                    .quarterTurned()
                    .times(out);
            Point meant = corners.get(i).plus(meeting(n, a, m, b));
            double reach = Math.max(NEAR, NEAR_BY_ALLOWANCE * Math.max(a, b));
            ends.add(sharp.stream()
                    .filter(c -> c.distance(meant) <= reach)
                    .min(Comparator.comparingDouble(c -> c.distance(meant)))
                    .orElseGet(() -> piece.outline().nearest(meant).point()));
        }
        return ends;
    }

    /** The place that lies so far out along the one normal, and so far along the other. */
    private static Point meeting(Point n, double a, Point m, double b) {
        double turn = n.x() * m.y() - n.y() * m.x();
        return Math.abs(turn) < FLAT
                ? n.times(a)
                : new Point((a * m.y() - b * n.y()) / turn, (n.x() * b - m.x() * a) / turn);
    }
}
