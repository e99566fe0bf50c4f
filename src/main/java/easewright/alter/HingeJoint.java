package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.StitchOutline;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * How the two parts of a slashed piece meet at the hinge. Where the hinge lies on the drawn line they meet as they are;
 * where it lies on the stitching line inside it, the drawn lines would overlap or gape there, and both are led to where
 * they meet if drawn on straight. The opposite turn leads them back.
 *
 * @param parting the parts, ready to be joined
 * @param was     the place of the drawn line at the hinge
 * @param is      where it lies now
 */
record HingeJoint(Parting parting, Point was, Point is) {
    private static final double SAME = 1e-9;

    /** Length of a curve that is led, mm. */
    private static final double LED = 10;

    /** Lines that meet under less than this do not meet, radians. */
    private static final double PARALLEL = 1e-3;

    /**
     * @param movesEnds whether the moving part ends at the hinge, else it starts there
     */
    static HingeJoint of(Parting parts, boolean movesEnds, Point corner, Affine map) {
        if (map.apply(corner).distance(corner) <= SAME) {
            return new HingeJoint(parts, corner, corner);
        }
        List<Segment> stays = parted(parts.stays(), !movesEnds);
        List<Segment> moves = parted(parts.moves(), movesEnds);
        int stayAt = movesEnds ? 0 : stays.size() - 1;
        int moveAt = movesEnds ? moves.size() - 1 : 0;
        Point stayEnd = end(stays.get(stayAt), !movesEnds);
        Point moveEnd = map.apply(end(moves.get(moveAt), movesEnds));
        Point stayWay = tangent(stays.get(stayAt), !movesEnds);
        Point moveWay = map.applyToDirection(tangent(moves.get(moveAt), movesEnds));
        double turn = stayWay.cross(moveWay);
        Point meet = Math.abs(turn) < PARALLEL
                ? stayEnd.towards(moveEnd, 0.5)
                : stayEnd.plus(stayWay.times(moveEnd.minus(stayEnd).cross(moveWay) / turn));
        stays.set(stayAt, led(stays.get(stayAt), !movesEnds, meet));
        moves.set(moveAt, led(moves.get(moveAt), movesEnds, map.inverse().apply(meet)));
        return new HingeJoint(new Parting(stays, moves), corner, meet);
    }

    /** A run whose curve at the hinge is cut off so short that leading it leaves the rest alone. */
    private static List<Segment> parted(List<Segment> run, boolean atEnd) {
        List<Segment> parts = new ArrayList<>(run);
        int i = atEnd ? run.size() - 1 : 0;
        Segment s = run.get(i);
        double length = s.length();
        if (s instanceof Cubic && length > LED * 1.2) {
            double t = s.parameterAtLength(atEnd ? length - LED : LED);
            parts.set(i, s.between(0, t));
            parts.add(i + 1, s.between(t, 1));
        }
        return parts;
    }

    /** The place of the stitching line that is sewn where a place of the cutting line is cut. */
    static Point pivot(Piece piece, Place place) {
        Outline outline = piece.outline();
        Point corner = outline.point(place);
        for (Edge edge : piece.edges()) {
            boolean within = new EdgeRun(piece, edge).holds(place)
                    && corner.distance(edge.from()) > Shift.ON_OUTLINE
                    && corner.distance(edge.to()) > Shift.ON_OUTLINE;
            if (within) {
                int n = outline.segments().size();
                Segment leaving = outline.segments().get(place.segment());
                Segment coming = place.t() == 0 ? outline.segments().get((place.segment() + n - 1) % n) : leaving;
                double inwards = outline.signedArea() > 0 ? 1 : -1;
                Point one = coming.tangent(place.t() == 0 ? 1 : place.t()).quarterTurned();
                Point two = leaving.tangent(place.t()).quarterTurned();
                // Where both lines, moved inwards by the allowance, meet.
                double size = inwards * piece.allowanceInside(edge) / (1 + one.dot(two));
                return corner.plus(one.plus(two).times(size));
            }
        }
        return StitchOutline.of(piece).point(corner);
    }

    private static Point end(Segment s, boolean atEnd) {
        return atEnd ? s.end() : s.start();
    }

    private static Point tangent(Segment s, boolean atEnd) {
        return s.tangent(atEnd ? 1 : 0);
    }

    /** One end of a segment led elsewhere; a curve keeps its direction there. */
    private static Segment led(Segment s, boolean atEnd, Point to) {
        Point by = to.minus(end(s, atEnd));
        if (s instanceof Cubic c) {
            return atEnd
                    ? new Cubic(c.start(), c.control1(), c.control2().plus(by), to)
                    : new Cubic(to, c.control1().plus(by), c.control2(), c.end());
        }
        return atEnd ? new Line(s.start(), to) : new Line(to, s.end());
    }

    /** The piece with what is marked at the hinge led along. */
    Piece marked(Piece piece) {
        if (was.equals(is)) {
            return piece;
        }
        List<Edge> edges = piece.edges().stream()
                .map(e -> e.withEnds(led(e.from()), led(e.to())))
                .toList();
        List<Notch> notches = piece.notches().stream()
                .map(n -> new Notch(n.name(), led(n.at())))
                .toList();
        return piece.toBuilder().edges(edges).notches(notches).build();
    }

    private Point led(Point mark) {
        return mark.distance(was) <= Shift.ON_OUTLINE ? is : mark;
    }
}
