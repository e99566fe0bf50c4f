package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Hold;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/**
 * A corner of the stitching line between two edges.
 *
 * @param guide the edge that stays as it is: a seam, a fold, a centre line
 * @param guideAtEnd whether the corner is its end, else its start
 * @param edge  the edge that runs off from it
 */
record SewnCorner(SewnPiece sewn, Edge guide, boolean guideAtEnd, Edge edge) {
    /** A tangent is taken this far off a corner if the line there is a mere crumb of a parallel that was cut off, mm. */
    private static final double TINY = 0.005;

    /** The corner at one end of an edge; empty where no edge meets it. */
    static Optional<SewnCorner> of(SewnPiece sewn, Edge guide, boolean atEnd) {
        Point corner = atEnd ? sewn.run(guide).end() : sewn.run(guide).start();
        for (Edge other : sewn.piece().edges()) {
            Point meets = atEnd ? sewn.run(other).start() : sewn.run(other).end();
            if (meets.equals(corner) && !other.name().equals(guide.name())) {
                return Optional.of(new SewnCorner(sewn, guide, atEnd, other));
            }
        }
        return Optional.empty();
    }

    Piece piece() {
        return sewn.piece();
    }

    Hold hold() {
        return sewn.corner(guide, guideAtEnd);
    }

    /** Unit direction from the corner into the guide. */
    Point alongGuide() {
        return leaving(sewn.stitch().edge(guide), guideAtEnd);
    }

    /** Unit direction from the corner into the edge. */
    Point alongEdge() {
        return leaving(sewn.stitch().edge(edge), !guideAtEnd);
    }

    private static Point leaving(Curve run, boolean atEnd) {
        List<Segment> all = run.segments();
        for (int i = 0; i < all.size(); i++) {
            Segment segment = all.get(atEnd ? all.size() - 1 - i : i);
            if (segment.length() > TINY) {
                return atEnd ? segment.tangent(1).times(-1) : segment.tangent(0);
            }
        }
        throw new IllegalStateException("An edge without length");
    }

    /** The angle between the two through the cloth, radians, from 0 to 2π. */
    double angle() {
        return through(alongGuide(), alongEdge());
    }

    /** The angle through the cloth between two directions that leave the corner, the first along the guide. */
    double through(Point alongGuide, Point alongEdge) {
        // On an outline drawn clockwise the cloth lies clockwise of the way on, and so anticlockwise of the way back.
        Point on = guideAtEnd ? alongEdge : alongGuide;
        Point back = guideAtEnd ? alongGuide : alongEdge;
        double angle = Math.atan2(on.cross(back), on.dot(back));
        double turned = piece().outline().signedArea() > 0 ? angle : -angle;
        return turned < 0 ? turned + 2 * Math.PI : turned;
    }
}
