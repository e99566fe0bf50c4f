package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** By how much changes have opened or closed a corner of a piece: what was true in the drawing is not meant to be untrue. */
final class CornerGrown {
    /** A corner of the drawing is known again this near, mm. */
    private static final double NEAR = 60;

    /** Where the outline turns by less two edges do not meet, radians. */
    private static final double CORNER = Math.toRadians(20);

    private record Corner(Point at, double angle) {}

    private CornerGrown() {}

    /**
     * By how much the angle through the cloth is wider than it was drawn, radians; 0 where that is not known.
     *
     * @param piece by whatever line it is drawn
     * @param sewn  the corner of its stitching line
     */
    static double by(Piece piece, Point sewn) {
        Optional<Corner> now = piece.original().isEmpty() ? Optional.empty() : near(piece.outline(), sewn);
        Optional<Corner> was = now.flatMap(corner -> near(piece.original().orElseThrow(), corner.at()));
        return was.isPresent() ? now.get().angle() - was.get().angle() : 0;
    }

    private static Optional<Corner> near(Outline outline, Point wanted) {
        List<Segment> segments =
                outline.segments().stream().filter(Segment::hasLength).toList();
        double side = outline.signedArea() > 0 ? 1 : -1;
        Corner best = null;
        for (int i = 0; i < segments.size(); i++) {
            Point in = segments.get((i + segments.size() - 1) % segments.size()).tangent(1);
            Point out = segments.get(i).tangent(0);
            double turn = Math.atan2(in.cross(out), in.dot(out));
            Point at = segments.get(i).start();
            double most = best == null ? NEAR : best.at().distance(wanted);
            if (Math.abs(turn) > CORNER && at.distance(wanted) <= most) {
                best = new Corner(at, Math.PI - side * turn);
            }
        }
        return Optional.ofNullable(best);
    }
}
