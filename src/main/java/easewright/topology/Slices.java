package easewright.topology;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a straight level passes over cloth.
 *
 * <p>The outline itself counts as cloth: a level that runs exactly along a straight hem has the hem's width, one
 * through a corner neither loses nor doubles it, and stretches that touch are one stretch. Drawings are rounded, so a
 * level that lies within {@value #GRAZE} mm of an edge over its whole run is taken to lie on that edge wherever this
 * decides whether there is cloth at all; elsewhere no rounding takes place and widths are exact to double precision.
 */
public final class Slices {
    /** How close to a level an edge must lie to be taken as lying on it, mm. */
    public static final double GRAZE = 0.05;

    /** A change of width this large from a shift of at most {@link #GRAZE} can only come from an edge on the level. */
    private static final double JUMP = 0.5;

    /** Gaps and stretches narrower than this are rounding, mm. */
    private static final double NOTHING = 1e-9;

    private Slices() {}

    /** All stretches under the endless line through {@code through}, in order along {@code direction}. */
    public static List<Slice> across(Outline outline, Point through, Point direction) {
        Point unit = direction.unit();
        List<Slice> exact = closed(outline, through, unit);
        double graze = graze(outline, through, unit);
        if (graze == 0) {
            return exact;
        }
        Point aside = unit.quarterTurned().times(graze * (1 + 1e-9));
        List<Slice> near =
                union(closed(outline, through.plus(aside), unit), closed(outline, through.minus(aside), unit));
        return Math.abs(total(near) - total(exact)) > JUMP ? near : exact;
    }

    /** The sum of the widths, mm. */
    public static double total(List<Slice> slices) {
        double sum = 0;
        for (Slice slice : slices) {
            sum += slice.width();
        }
        return sum;
    }

    /** The part of the level on the outline or inside: what lies just to either side of it, together. */
    private static List<Slice> closed(Outline outline, Point through, Point unit) {
        List<Slice> oneSide = open(outline, through, unit, true);
        return touched(outline, through, unit) ? union(oneSide, open(outline, through, unit, false)) : oneSide;
    }

    private static boolean touched(Outline outline, Point through, Point unit) {
        boolean[] touched = {false};
        outline.boxes()
                .along(
                        through,
                        unit,
                        GRAZE,
                        i -> touched[0] |= distance(outline.segments().get(i).start(), through, unit) == 0);
        return touched[0];
    }

    private static List<Slice> open(Outline outline, Point through, Point unit, boolean onLineIsClockwise) {
        List<Double> along = new ArrayList<>();
        outline.boxes().along(through, unit, GRAZE, i -> {
            Segment segment = outline.segments().get(i);
            for (double t : segment.passages(through, unit, onLineIsClockwise)) {
                along.add(segment.at(t).minus(through).dot(unit));
            }
        });
        along.sort(Comparator.naturalOrder());
        List<Slice> slices = new ArrayList<>();
        for (int i = 0; i + 1 < along.size(); i += 2) {
            slices.add(new Slice(along.get(i), along.get(i + 1)));
        }
        return union(slices, List.of());
    }

    /** Both lists as one, in order; stretches that touch become one and those without width are dropped. */
    private static List<Slice> union(List<Slice> first, List<Slice> second) {
        List<Slice> all = new ArrayList<>(first);
        all.addAll(second);
        all.sort(Comparator.comparingDouble(Slice::from));
        List<Slice> joined = new ArrayList<>();
        for (Slice slice : all) {
            Slice last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && slice.from() <= last.to() + NOTHING) {
                joined.set(joined.size() - 1, new Slice(last.from(), Math.max(last.to(), slice.to())));
            } else {
                joined.add(slice);
            }
        }
        joined.removeIf(slice -> slice.width() <= NOTHING);
        return joined;
    }

    /** The largest distance from the level of a segment that lies along it but not on it; 0 if there is none. */
    private static double graze(Outline outline, Point through, Point unit) {
        double[] most = {0};
        outline.boxes().along(through, unit, GRAZE, i -> {
            double away = strays(outline.segments().get(i), through, unit);
            if (away <= GRAZE) {
                most[0] = Math.max(most[0], away);
            }
        });
        return most[0];
    }

    /** The distance from the level of what is farthest from it on a segment; infinite for one too short to lie along it. */
    private static double strays(Segment segment, Point through, Point unit) {
        double away = Math.max(
                Math.abs(distance(segment.start(), through, unit)), Math.abs(distance(segment.end(), through, unit)));
        if (away > GRAZE || segment.start().distance(segment.end()) < 4 * GRAZE) {
            return Double.POSITIVE_INFINITY;
        }
        if (segment instanceof Cubic cubic) {
            away = Math.max(
                    away,
                    Math.max(
                            Math.abs(distance(cubic.control1(), through, unit)),
                            Math.abs(distance(cubic.control2(), through, unit))));
        }
        return away;
    }

    private static double distance(Point p, Point through, Point unit) {
        return unit.x() * (p.y() - through.y()) - unit.y() * (p.x() - through.x());
    }
}
