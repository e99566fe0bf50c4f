package easewright.measure;

import easewright.geom.Crossing;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a piece that is not alike left and right covers both sides of the body all the same, as a front does that
 * closes aslant, hangs longer at one side or has one shoulder only: over a good part of its length it goes out and in
 * by the same to both sides. A half does so to one side alone, its centre being straight.
 */
public final class BothSides {
    private static final int LEVELS = 48;

    /** At least this part of the piece's length is alike left and right. */
    private static final double PART = 0.35;

    /** Over that part the width changes by at least this, mm. */
    private static final double SHAPED = 15;

    /** Both sides are bowed by at least this, mm: a centre that slants is as straight as a side may be. */
    private static final double BOWED = 4;

    private static final int END = 2;

    /** The middle stays where it is within this, mm, or within this part of what the width changes by. */
    private static final double STILL = 2.5;

    private static final double STILL_OF_SHAPE = 0.08;

    private BothSides() {}

    /** How far a piece reaches to both sides at one level, along the direction across its grain, mm. */
    private record Width(double from, double to) {
        double middle() {
            return (from + to) / 2;
        }

        double wide() {
            return to - from;
        }
    }

    /** Whether both halves are on the piece, alike or not. */
    public static boolean on(Piece piece) {
        return several(piece, EdgeRole.SHOULDER)
                || several(piece, EdgeRole.ARMHOLE)
                || Alike.leftAndRight(piece)
                || shapedAlike(piece);
    }

    private static boolean several(Piece piece, EdgeRole role) {
        return piece.edges().stream().filter(e -> e.role() == role).count() > 1;
    }

    private static boolean shapedAlike(Piece piece) {
        List<Width> widths = widths(piece.outline(), piece.grainDirection());
        int least = (int) Math.ceil(PART * LEVELS);
        for (int many = least; many <= widths.size(); many += END) {
            for (int i = 0; i + many <= widths.size(); i++) {
                if (shapedAlike(widths.subList(i, i + many))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean shapedAlike(List<Width> widths) {
        if (bow(widths.stream().mapToDouble(Width::from).toArray()) < BOWED
                || bow(widths.stream().mapToDouble(Width::to).toArray()) < BOWED) {
            return false;
        }
        double shape = range(widths.stream().mapToDouble(Width::wide).toArray());
        double moved = range(widths.stream().mapToDouble(Width::middle).toArray());
        return shape >= SHAPED && moved <= Math.max(STILL, STILL_OF_SHAPE * shape);
    }

    /** How far values at even steps are from rising or falling evenly; at the ends another edge may begin. */
    private static double bow(double[] values) {
        int first = END;
        int last = values.length - 1 - END;
        double most = 0;
        for (int i = first; i < last; i++) {
            double even = values[first] + (values[last] - values[first]) * (i - first) / (last - first);
            most = Math.max(most, Math.abs(values[i] - even));
        }
        return most;
    }

    private static double range(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }

    /** At even steps along the grain. */
    private static List<Width> widths(Outline outline, Point grain) {
        Point across = grain.quarterTurned();
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Segment segment : outline.segments()) {
            for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
                double v = segment.at(t).dot(grain);
                top = Math.min(top, v);
                bottom = Math.max(bottom, v);
            }
        }
        List<Width> widths = new ArrayList<>();
        for (int i = 0; i < LEVELS; i++) {
            Point on = grain.times(top + (bottom - top) * (i + 0.5) / LEVELS);
            double[] places = outline.crossings(on, across).stream()
                    .map(Crossing::point)
                    .mapToDouble(p -> p.dot(across))
                    .sorted()
                    .toArray();
            if (places.length > 1) {
                widths.add(new Width(places[0], places[places.length - 1]));
            }
        }
        return widths;
    }
}
