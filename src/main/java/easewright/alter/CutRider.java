package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A line drawn along the outline of a slashed piece: cut and joined again where the outline is. */
final class CutRider {
    private static final int HALVINGS = 50;
    private static final double STRAIGHT = 1e-9;

    /** Shorter than this, a part of a cut segment is left out, mm. */
    private static final double CRUMB = 1e-4;

    private final Predicate<Point> moves;
    private final Affine map;

    /**
     * @param moves whether a place of the line goes with the moving part
     * @param map   by which that part moves
     */
    CutRider(Predicate<Point> moves, Affine map) {
        this.moves = moves;
        this.map = map;
    }

    /** The segments afterwards; joined wherever they were. The very list given where nothing moves. */
    List<Segment> parted(List<Segment> segments) {
        List<Segment> parted = new ArrayList<>();
        boolean any = false;
        for (Segment s : segments) {
            boolean start = moves.test(s.start());
            boolean end = moves.test(s.end());
            any |= start || end;
            if (start == end) {
                parted.add(start ? s.transformed(map) : s);
            } else {
                parted.addAll(cut(s, start));
            }
        }
        return any ? parted : segments;
    }

    private List<Segment> cut(Segment s, boolean startMoves) {
        double at = change(s, startMoves);
        Segment first = placed(s.between(0, at), startMoves);
        Segment second = placed(s.between(at, 1), !startMoves);
        Point gap = second.start().minus(first.end());
        Point along = s.derivative(at);
        if (s instanceof Line) {
            Point whole = second.end().minus(first.start());
            boolean straight = Math.abs(whole.cross(along)) <= STRAIGHT * whole.norm() * along.norm();
            if (straight && whole.dot(along) > 0) {
                return List.of(new Line(first.start(), second.end()));
            }
        } else if (gap.dot(along) < 0) {
            // A tuck takes some of the curve: what remains runs smoothly from end to end.
            return List.of(tucked((Cubic) s, startMoves));
        }
        // A cut at a corner leaves a crumb on one side of it, too small to be drawn.
        if (first.length() < CRUMB) {
            return List.of(new Line(first.start(), second.start()), second);
        }
        if (second.length() < CRUMB) {
            return List.of(first, new Line(first.end(), second.end()));
        }
        return List.of(first, new Line(first.end(), second.start()), second);
    }

    private Segment tucked(Cubic c, boolean startMoves) {
        Cubic moved = (Cubic) c.transformed(map);
        return startMoves
                ? new Cubic(moved.start(), moved.control1(), c.control2(), c.end())
                : new Cubic(c.start(), c.control1(), moved.control2(), moved.end());
    }

    private Segment placed(Segment part, boolean goes) {
        return goes ? part.transformed(map) : part;
    }

    /** Where along the segment the moving part begins or ends. */
    private double change(Segment s, boolean startMoves) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (moves.test(s.at(middle)) == startMoves) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
