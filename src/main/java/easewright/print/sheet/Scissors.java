package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import java.util.List;

/**
 * Open scissors beside a line that is cut before the sheets are joined: dashes and the width of a line have their meaning on
 * the pieces already.
 */
final class Scissors {
    /** From the line to the middle of the scissors, mm. */
    private static final double AWAY = 2.6;

    private static final double BLADE = 4;
    private static final double HANDLE = 2.6;
    private static final double RING = 0.9;
    private static final double SPREAD = 1.2;

    /** From the corner of the sheet, and between the places that are tried, mm. */
    private static final double FIRST = 12;

    private static final double STEP = 4;

    private Scissors() {}

    /**
     * Draws them where the least of what is drawn comes into their way, near the start of the line.
     *
     * @param inward from the line into the sheet, of length 1
     * @param taken  where other signs stand
     */
    static void draw(Pencil pencil, Point from, Point to, Point inward, Lines lines, List<Box> taken) {
        Point along = to.minus(from).unit();
        double length = from.distance(to);
        Point best = null;
        int least = Integer.MAX_VALUE;
        for (double at = FIRST; at < length - FIRST && least > 0; at += STEP) {
            Point middle = from.plus(along.times(at)).plus(inward.times(AWAY));
            Box box = Box.around(List.of(
                    middle.minus(along.times(HANDLE + RING)).minus(inward.times(SPREAD + RING)),
                    middle.plus(along.times(BLADE)).plus(inward.times(SPREAD + RING))));
            int crossed = taken.stream().anyMatch(box::overlaps) ? Integer.MAX_VALUE - 1 : lines.crossing(box);
            if (crossed < least) {
                least = crossed;
                best = middle;
            }
        }
        if (best != null) {
            half(pencil, best, along, inward);
            half(pencil, best, along, inward.times(-1));
        }
    }

    /** One blade with its ring on the other side of the rivet. */
    private static void half(Pencil pencil, Point middle, Point along, Point side) {
        Point tip = middle.plus(along.times(BLADE)).plus(side.times(SPREAD));
        Point back = middle.minus(along.times(HANDLE)).minus(side.times(SPREAD));
        Point rim = middle.minus(back).unit().times(RING);
        pencil.line(back.plus(rim), tip, Pen.EDGE).around(Pencil.circle(back, RING), Pen.EDGE);
    }
}
