package easewright.editor.paint;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Where the grips are drawn by which the ends of a level are taken hold of: at the ends, and where those of pieces that
 * lie close would touch each other, beside them on their own piece. One whose end is a corner or bears a notch lies on
 * the seam a little along from it, as that is what the change is judged by, or else off the piece beside it; on the piece
 * none lies over a dart, a notch or a corner where there is another place. On pieces too small for all that they are dots.
 */
public final class GripPlaces {
    /** Grips whose middles are so far apart can be told apart and pressed, pixels. */
    static final double APART = 2 * OverlayPainter.GRIP + 3;

    /** How far from its end a grip may be drawn along the level, into the piece, pixels: on it, or so that a stem is seen. */
    private static final double[] INWARD = {0, 2 * OverlayPainter.GRIP + 2, 2 * OverlayPainter.GRIP + 9};

    /** How far beside the level, as parts of what is apart. */
    private static final double[] BESIDE = {0, 1, -1, 2, -2};

    /** So far into the piece from a marked end, where it must be there: a stem is seen beyond a notch. */
    private static final double[] PAST_NOTCH = {2 * OverlayPainter.GRIP + 9, 2 * OverlayPainter.GRIP + 2};

    /** How far along its seam the grip of a marked end may lie, pixels: a notch is to be seen between the two. */
    private static final double[] ALONG = {2 * OverlayPainter.GRIP + 6, 2 * OverlayPainter.GRIP + 6 + APART};

    /** How far off its piece the grip of a marked end may be drawn, and then how far up, pixels: clear of the seam. */
    private static final double[][] OUTWARD = {{2 * OverlayPainter.GRIP + 2, 0}, {OverlayPainter.GRIP + 3, 17}};

    /** Where one may lie above or below a marked end, where the piece next to it lies close: so far in, and so far up, pixels. */
    private static final double[][] UPWARD = {
        {0, 2 * OverlayPainter.GRIP + 4},
        {OverlayPainter.GRIP + 3, 2 * OverlayPainter.GRIP + 1},
        {0, 2 * OverlayPainter.GRIP + 4 + APART}
    };

    /** A grip off its piece keeps so far from the ends of others, pixels. */
    private static final double KEPT_OFF = OverlayPainter.GRIP + 3;

    /** On a piece narrower than this a grip would cover all there is to be seen of it, pixels. */
    private static final double NARROW = 10;

    private GripPlaces() {}

    /**
     * An end of a level on the screen, pixels.
     *
     * @param piece   which piece it is an end on
     * @param outward unit direction away from the cloth
     * @param marked  whether it is a corner or bears a notch, to be seen beside the grip
     */
    public record End(String piece, Point at, Point outward, boolean marked) {}

    /**
     * Where one is drawn.
     *
     * @param off   from the end of the level, pixels
     * @param small  a dot: there is no room for more
     * @param marked whether a corner or a notch at the end is to be seen
     */
    public record Place(Point off, boolean small, boolean marked) {}

    /** What lies on the table where a grip might be drawn. */
    public interface Ground {
        /** Whether a grip with this middle, pixels, would hide what its piece is judged by. */
        boolean hides(End end, Point at);

        /** Whether it would lie beside its piece, clear of the line. */
        boolean isOff(End end, Point at);

        /**
         * How far from an end its seam has come after so many pixels, upwards or, with a minus, downwards on the screen;
         * empty where the seam is not as long.
         */
        default Optional<Point> along(End end, double pixels) {
            return Optional.empty();
        }
    }

    /** A place for each of the ends, in their order. */
    public static List<Place> of(List<End> ends, Ground ground) {
        List<Point> taken = new ArrayList<>();
        Set<String> full = new HashSet<>();
        List<Point> offs = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            Point off = free(ends, i, taken, ground);
            if (off == null) {
                full.add(ends.get(i).piece());
            } else {
                taken.add(ends.get(i).at().plus(off));
            }
            offs.add(off);
        }
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            boolean marked = ends.get(i).marked();
            boolean small = full.contains(ends.get(i).piece());
            places.add(small ? new Place(Point.ORIGIN, true, marked) : new Place(offs.get(i), false, marked));
        }
        return places;
    }

    /** The first place that is apart from those taken; null if there is none. */
    private static Point free(List<End> ends, int i, List<Point> taken, Ground ground) {
        End end = ends.get(i);
        double most = inside(ends, end);
        if (2 * most < NARROW) {
            return null;
        }
        if (end.marked()) {
            Optional<Point> off = alongSeam(ends, i, taken, ground);
            if (off.isPresent()) {
                return off.get();
            }
        }
        boolean crowded = isCrowded(ends, i, APART);
        if (end.marked() && !crowded) {
            Optional<Point> off = outside(ends, i, taken);
            if (off.isPresent()) {
                return off.get();
            }
        }
        List<Point> inward = inward(end, most, crowded);
        inward.removeIf(off -> !isApart(end.at().plus(off), taken));
        List<Point> clear = inward.stream()
                .filter(off -> !ground.hides(end, end.at().plus(off)))
                .toList();
        Point across = end.outward().quarterTurned();
        return clear.stream()
                .filter(off -> Math.abs(off.dot(across)) < APART / 2)
                .findFirst()
                .or(() -> upward(ends, i, taken, ground))
                .or(() -> Stream.concat(clear.stream(), inward.stream()).findFirst())
                .orElse(null);
    }

    private static boolean isApart(Point at, List<Point> taken) {
        return taken.stream().allMatch(t -> t.distance(at) >= APART);
    }

    /** Places on the piece and its end, from the end, the best first. */
    private static List<Point> inward(End end, double most, boolean crowded) {
        Point along = end.outward().times(-1);
        List<Point> offs = new ArrayList<>();
        for (double beside : BESIDE) {
            for (double inward : end.marked() ? PAST_NOTCH : INWARD) {
                // Both of two neighbours draw back a little, so that neither lies on the other's piece.
                boolean onTheEdge = crowded && inward == 0;
                if (!onTheEdge) {
                    double in = Math.min(inward, most);
                    offs.add(along.times(in).plus(along.quarterTurned().times(beside * APART)));
                }
            }
        }
        return offs;
    }

    /** The first place on the seam of a marked end that is clear of all others. */
    private static Optional<Point> alongSeam(List<End> ends, int i, List<Point> taken, Ground ground) {
        End end = ends.get(i);
        return Arrays.stream(ALONG)
                .boxed()
                .flatMap(far -> Stream.of(far, -far))
                .flatMap(far -> ground.along(end, far).stream())
                .filter(off -> {
                    Point at = end.at().plus(off);
                    return isApart(at, taken) && isOffEnds(at, ends) && !ground.hides(end, at);
                })
                .findFirst();
    }

    /** The first place above or below a marked end, off the piece, that is clear of all others. */
    private static Optional<Point> upward(List<End> ends, int i, List<Point> taken, Ground ground) {
        End end = ends.get(i);
        if (!end.marked()) {
            return Optional.empty();
        }
        Point up = up(end);
        return Arrays.stream(UPWARD)
                .flatMap(way -> Stream.of(up.times(way[1]), up.times(-way[1]))
                        .map(off -> off.minus(end.outward().times(way[0]))))
                .filter(off -> {
                    Point at = end.at().plus(off);
                    return isApart(at, taken) && isOffEnds(at, ends) && ground.isOff(end, at) && !ground.hides(end, at);
                })
                .findFirst();
    }

    private static Point up(End end) {
        Point across = end.outward().quarterTurned();
        return across.y() > 0 ? across.times(-1) : across;
    }

    private static boolean isOffEnds(Point at, List<End> ends) {
        return ends.stream().allMatch(e -> e.at().distance(at) >= KEPT_OFF);
    }

    /** The first place off the piece that is apart from those taken and from all ends, those to come as well. */
    private static Optional<Point> outside(List<End> ends, int i, List<Point> taken) {
        End end = ends.get(i);
        Point up = up(end);
        return Arrays.stream(OUTWARD)
                // Both of two neighbours go the same way, and do not touch.
                .filter(way -> !isCrowded(ends, i, 2 * way[0] + APART))
                .map(way -> end.outward().times(way[0]).plus(up.times(way[1])))
                .filter(off -> {
                    Point at = end.at().plus(off);
                    return isApart(at, taken) && isOffEnds(at, ends);
                })
                .findFirst();
    }

    private static boolean isCrowded(List<End> ends, int i, double apart) {
        for (int k = 0; k < ends.size(); k++) {
            if (k != i && ends.get(k).at().distance(ends.get(i).at()) < apart) {
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
