package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.List;

/** What would be hidden by a grip that is drawn upon it: a notch, by which seams meet, or a corner that may need truing. */
public final class SeenUnder {
    /** What lies nearer to the middle of a grip is hidden, pixels. */
    private static final double HIDDEN = OverlayPainter.GRIP + 3;

    /** Where the line turns by less than this it is no corner, radians. */
    private static final double TURN = Math.toRadians(20);

    private SeenUnder() {}

    /**
     * Whether a notch or a corner of the drawn outline lies under a grip.
     *
     * @param at    the middle of the grip, mm
     * @param scale pixels to one mm
     */
    public static boolean isThere(Piece piece, Point at, double scale) {
        double near = HIDDEN / scale;
        if (piece.notches().stream().anyMatch(notch -> notch.at().distance(at) < near)) {
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

    private static double turn(Segment before, Segment after) {
        Point in = before.tangent(1);
        Point out = after.tangent(0);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
    }
}
