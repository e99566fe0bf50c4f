package easewright.measure;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Notches drawn as part of a cutting line: a V or a slit cut into the allowance, or a triangle that stands out of it.
 * They say nothing about where the seam runs, so the line is led straight past them before the allowance is taken off.
 *
 * <p>A run of up to four segments is such a notch if it leaves the line at a sharp corner, comes back to it at another
 * one close by, the line goes on in the direction in which it came, and the run strays from it no farther than the
 * allowance is wide (notches are cut at most half the allowance deep, common practice; triangles stand out by as much).
 */
final class NotchCuts {
    /** A mouth wider than this is a shape of its own, mm; notches are 3 to 6 mm deep (docs/sources.md 6). */
    private static final double WIDEST = 14;

    private static final double SHALLOWEST = 0.5;
    private static final int MOST_SEGMENTS = 4;

    /** How far the line may turn over the mouth, and the mouth stray from the line's direction. */
    private static final double GOES_ON = Math.cos(Math.toRadians(15));

    /** The notch turns away from the line by more than this. */
    private static final double SHARP = Math.cos(Math.toRadians(25));

    private static final double SAME = 1e-6;

    private final Outline drawn;
    private final double[] widths;
    private final int count;

    private NotchCuts(Outline drawn, double[] widths) {
        this.drawn = drawn;
        this.widths = widths;
        this.count = widths.length;
    }

    /**
     * A notch that was closed over.
     *
     * @param tip    the drawn place farthest from the line
     * @param bridge number of the segment that closes it; empty for a slit, which closes without one
     */
    record Cut(Point tip, OptionalInt bridge) {}

    static CuttingLine closedOver(Outline drawn, double[] widths) {
        return new NotchCuts(drawn, widths).line();
    }

    private CuttingLine line() {
        int first = 0;
        while (first < count && insideNotch(first)) {
            first++;
        }
        if (first == count) {
            return new CuttingLine(drawn, widths, List.of());
        }
        List<Segment> segments = new ArrayList<>();
        List<Double> own = new ArrayList<>();
        List<Cut> cuts = new ArrayList<>();
        for (int k = 0; k < count; ) {
            int i = (first + k) % count;
            int length = notchAt(i);
            if (length == 0) {
                segments.add(drawn.segments().get(i));
                own.add(widths[i]);
                k++;
                continue;
            }
            Point from = segment(i).start();
            Point to = segment(i + length - 1).end();
            OptionalInt bridge = OptionalInt.empty();
            if (from.distance(to) > SAME) {
                bridge = OptionalInt.of(segments.size());
                segments.add(bridge(
                        from, segment(i - 1).tangent(1), to, segment(i + length).tangent(0)));
                own.add(widths[i]);
            }
            cuts.add(new Cut(tip(i, length), bridge));
            k += length;
        }
        if (cuts.isEmpty()) {
            return new CuttingLine(drawn, widths, List.of());
        }
        double[] left = new double[own.size()];
        for (int i = 0; i < left.length; i++) {
            left[i] = own.get(i);
        }
        return new CuttingLine(new Outline(joined(segments)), left, List.copyOf(cuts));
    }

    private Segment segment(int i) {
        return drawn.segments().get(Math.floorMod(i, count));
    }

    /** Whether a notch that began on one of the segments before goes on over this one. */
    private boolean insideNotch(int i) {
        for (int back = 1; back < MOST_SEGMENTS; back++) {
            if (notchAt(Math.floorMod(i - back, count)) > back) {
                return true;
            }
        }
        return false;
    }

    /** How many segments the notch that starts with a segment has; 0 if none starts there. */
    private int notchAt(int i) {
        // Quick: nearly all segments of a pattern are too long to belong to a notch, or follow the line.
        if (widths[i] == 0 || !leaves(i)) {
            return 0;
        }
        for (int length = 2; length <= Math.min(MOST_SEGMENTS, count - 2); length++) {
            if (isNotch(i, length)) {
                return length;
            }
        }
        return 0;
    }

    private boolean leaves(int i) {
        Segment s = segment(i);
        double reach = widths[i] + WIDEST;
        return s.start().distance(s.end()) <= reach && segment(i - 1).tangent(1).dot(s.tangent(0)) < SHARP;
    }

    private boolean isNotch(int i, int length) {
        Point from = segment(i).start();
        Point to = segment(i + length - 1).end();
        Point mouth = to.minus(from);
        Point on = segment(i - 1).tangent(1);
        Point off = segment(i + length).tangent(0);
        if (mouth.norm() > WIDEST
                || on.dot(off) < GOES_ON
                || off.dot(segment(i + length - 1).tangent(1)) >= SHARP
                || (mouth.norm() > SAME && on.dot(mouth) < GOES_ON * mouth.norm())) {
            return false;
        }
        for (int k = 1; k < length; k++) {
            if (widths[(i + k) % count] != widths[i]) {
                return false;
            }
        }
        double deep = depth(tip(i, length), from, mouth, on);
        double along = 0;
        for (int k = 0; k < length; k++) {
            along += segment(i + k).length();
        }
        // No longer than out and back square to the line and across: a run that wanders is a shape.
        return deep >= SHALLOWEST && deep <= widths[i] + SHALLOWEST && along <= 2 * deep + mouth.norm() + 2;
    }

    /** The corner of the run that lies farthest from the line. */
    private Point tip(int i, int length) {
        Point from = segment(i).start();
        Point mouth = segment(i + length - 1).end().minus(from);
        Point on = segment(i - 1).tangent(1);
        Point tip = from;
        for (int k = 0; k < length - 1; k++) {
            Point p = segment(i + k).end();
            if (depth(p, from, mouth, on) > depth(tip, from, mouth, on)) {
                tip = p;
            }
        }
        return tip;
    }

    private static double depth(Point p, Point from, Point mouth, Point on) {
        Point line = mouth.norm() > SAME ? mouth.unit() : on;
        return Math.abs(line.cross(p.minus(from)));
    }

    /** Straight where the line is straight, else bent as the line is on either side. */
    private static Segment bridge(Point from, Point on, Point to, Point off) {
        Point way = to.minus(from);
        double bend = Math.max(Math.abs(on.cross(way)), Math.abs(off.cross(way))) / 4;
        return bend <= SAME * way.norm()
                ? new Line(from, to)
                : Cubic.hermite(from, on.times(way.norm()), to, off.times(way.norm()));
    }

    /** After a slit the line goes on from where it was left. */
    private static List<Segment> joined(List<Segment> segments) {
        List<Segment> all = new ArrayList<>(segments);
        for (int i = 0; i < all.size(); i++) {
            Point end = all.get((i + all.size() - 1) % all.size()).end();
            if (!all.get(i).start().equals(end)) {
                all.set(i, startingAt(all.get(i), end));
            }
        }
        return all;
    }

    private static Segment startingAt(Segment segment, Point start) {
        return segment instanceof Cubic c
                ? new Cubic(start, c.control1(), c.control2(), c.end())
                : new Line(start, segment.end());
    }
}
