package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A piece that may be half a skirt by its form alone: a straight centre with a waist and a hem square to it, and wider
 * than its waist. A pocket may be cut out of the side, the hem may run round into it, and a vent may reach out at the
 * centre. Some pockets and facings are of such a form too, so that size has to speak as well.
 *
 * @param sides the runs from the waist down to the hem, other than the centre
 * @param hem   none where it runs round into the side
 */
record SkirtHalf(CentreEdge centre, int waist, OptionalInt hem, List<Integer> sides) {
    /** A waist and a hem are this near to square with the centre, degrees. */
    private static final double SQUARE = 27;

    /** The piece is at least so many times as wide as its waist, and at most so many. */
    private static final double WIDER = 1.02;

    private static final double WIDEST = 4;

    /** A hem rises by less than this part of the length; one that rises more runs round into the side. */
    private static final double RISE = 0.5;

    /** Sides lean no more than this, degrees: the edge of a pocket in a side does so most. */
    private static final double LEAN = 62;

    SkirtHalf {
        sides = List.copyOf(sides);
    }

    static Optional<SkirtHalf> of(Form form) {
        return CentreEdge.of(form).flatMap(centre -> at(form, centre));
    }

    private static Optional<SkirtHalf> at(Form form, CentreEdge centre) {
        int middle = centre.run();
        // The way round on which the waist comes next.
        int way = form.run(middle).across().y() < 0 ? 1 : -1;
        int waist = Math.floorMod(middle + way, form.size());
        int below = Math.floorMod(middle - way, form.size());
        boolean square = form.size() >= 3
                && isSquare(form, middle, waist, way)
                && isSquare(form, middle, below, -way)
                && form.run(waist).isFlat();
        if (!square || waist == below) {
            return Optional.empty();
        }
        OptionalInt low = form.lowest().stream()
                .filter(i -> i != waist && form.run(i).box().height() < RISE * form.length())
                .findFirst();
        List<Integer> sides = new ArrayList<>();
        for (int i = waist + way; Math.floorMod(i, form.size()) != middle; i += way) {
            int run = Math.floorMod(i, form.size());
            if (low.isPresent() && low.getAsInt() == run) {
                break;
            }
            sides.add(run);
        }
        double times = form.width() / form.run(waist).span();
        boolean fits = !sides.isEmpty()
                && times >= WIDER
                && times <= WIDEST
                && sides.stream().allMatch(i -> low.isEmpty() || form.run(i).lean() < LEAN);
        return fits ? Optional.of(new SkirtHalf(centre, waist, low, sides)) : Optional.empty();
    }

    /** How the next run sets out from the corner at that end of the centre. */
    private static boolean isSquare(Form form, int centre, int next, int way) {
        Curve along = form.run(centre).curve();
        List<Segment> other = form.run(next).curve().segments();
        Point away =
                way > 0 ? other.get(0).tangent(0) : other.get(other.size() - 1).tangent(1);
        return Turns.between(along.end().minus(along.start()), away) > 90 - SQUARE;
    }
}
