package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.List;

/**
 * What would be hidden by a grip that is drawn upon it: a notch, by which seams meet, a corner that may need truing, or a
 * dart.
 */
public final class SeenUnder {
    /** What lies nearer to the middle of a grip is hidden, pixels. */
    private static final double HIDDEN = OverlayPainter.GRIP + 3;

    /** Where the line turns by less than this it is no corner, radians. */
    private static final double TURN = Math.toRadians(20);

    private SeenUnder() {}

    /**
     * Whether a notch, a dart or a corner of the drawn outline lies under a grip.
     *
     * @param at    the middle of the grip, mm
     * @param scale pixels to one mm
     */
    public static boolean isThere(Piece piece, Point at, double scale) {
        double near = HIDDEN / scale;
        if (piece.notches().stream().anyMatch(notch -> notch.at().distance(at) < near)
                || piece.darts().stream().anyMatch(dart -> distance(dart, at) < near)) {
            return true;
        }
        List<Segment> segments = piece.outline().segments();
        Segment before = segments.get(segments.size() - 1);
        for (Segment segment : segments) {
            if (segment.start().distance(at) < near && turn(before, segment) > TURN) {
                return true;
            }
            before = segment;
        }
        return false;
    }

    /** Whether a grip would lie beside the piece and hide nothing of its line. */
    public static boolean isOff(Piece piece, Point at, double scale) {
        return !piece.outline().contains(at)
                && piece.outline().nearest(at).distance() > (OverlayPainter.GRIP + 1) / scale;
    }

    /** To the nearest place on the lines of a dart, mm. */
    private static double distance(Dart dart, Point at) {
        List<Point> corners = dart.corners();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Line side = new Line(corners.get(i), corners.get((i + 1) % corners.size()));
            least = Math.min(least, side.at(side.nearest(at)).distance(at));
        }
        return least;
    }

    private static double turn(Segment before, Segment after) {
        Point in = before.tangent(1);
        Point out = after.tangent(0);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
    }
}
