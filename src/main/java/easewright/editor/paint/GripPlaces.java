package easewright.editor.paint;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Where the grips are drawn by which the ends of a level are taken hold of: at the ends, and where those of pieces that
 * lie close would touch each other, beside them on their own piece. On pieces too small for that they are dots.
 */
public final class GripPlaces {
    /** Grips whose middles are so far apart can be told apart and pressed, pixels. */
    static final double APART = 2 * OverlayPainter.GRIP + 3;

    /** How far from its end a grip may be drawn along the level, into the piece, pixels: on it, or so that a stem is seen. */
    private static final double[] INWARD = {0, 2 * OverlayPainter.GRIP + 2, 2 * OverlayPainter.GRIP + 9};

    /** How far beside the level, as parts of what is apart. */
    private static final double[] BESIDE = {0, 1, -1, 2, -2};

    /** On a piece narrower than this a grip would cover all there is to be seen of it, pixels. */
    private static final double NARROW = 10;

    private GripPlaces() {}

    /**
     * An end of a level on the screen, pixels.
     *
     * @param piece   which piece it is an end on
     * @param outward unit direction away from the cloth
     */
    public record End(String piece, Point at, Point outward) {}

    /**
     * Where one is drawn.
     *
     * @param off   from the end of the level, pixels
     * @param small a dot: there is no room for more
     */
    public record Place(Point off, boolean small) {}

    /** A place for each of the ends, in their order. */
    public static List<Place> of(List<End> ends) {
        List<Point> taken = new ArrayList<>();
        Set<String> full = new HashSet<>();
        List<Point> offs = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            Point off = free(ends, i, taken);
            if (off == null) {
                full.add(ends.get(i).piece());
            } else {
                taken.add(ends.get(i).at().plus(off));
            }
            offs.add(off);
        }
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            boolean small = full.contains(ends.get(i).piece());
            places.add(small ? new Place(Point.ORIGIN, true) : new Place(offs.get(i), false));
        }
        return places;
    }

    /** The first place that is apart from those taken; null if there is none. */
    private static Point free(List<End> ends, int i, List<Point> taken) {
        End end = ends.get(i);
        double most = inside(ends, end);
        if (2 * most < NARROW) {
            return null;
        }
        boolean crowded = isCrowded(ends, i);
        Point along = end.outward().times(-1);
        for (double beside : BESIDE) {
            for (double inward : INWARD) {
                // Both of two neighbours draw back a little, so that neither lies on the other's piece.
                boolean onTheEdge = crowded && inward == 0;
                if (!onTheEdge) {
                    double in = Math.min(inward, most);
                    Point off = along.times(in).plus(along.quarterTurned().times(beside * APART));
                    Point at = end.at().plus(off);
                    if (taken.stream().allMatch(t -> t.distance(at) >= APART)) {
                        return off;
                    }
                }
            }
        }
        return null;
    }

    private static boolean isCrowded(List<End> ends, int i) {
        for (int k = 0; k < ends.size(); k++) {
            if (k != i && ends.get(k).at().distance(ends.get(i).at()) < APART) {
                return true;
            }
        }
        return false;
    }

    /** To the middle between an end and the nearest other one of its piece that lies further in, pixels. */
    private static double inside(List<End> ends, End end) {
        return ends.stream()
                .filter(other -> other != end && other.piece().equals(end.piece()))
                .mapToDouble(other -> end.at().minus(other.at()).dot(end.outward()) / 2)
                .filter(half -> half > 0)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
