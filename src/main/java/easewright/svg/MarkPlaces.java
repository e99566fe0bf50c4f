package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.HashMap;
import java.util.Map;

/** Finds the places that marks name on an outline as it is drawn now. */
final class MarkPlaces {
    /** A place this near to the outline is meant to be on it, mm. */
    static final double TOLERANCE = 0.5;

    /** Written places land within this of where they were meant, so it is no move at all, mm. */
    private static final double ROUNDING = 2e-6;

    private final Outline outline;
    private final Affine moved;

    /** Where written places landed; edges that meet share one. */
    private final Map<Point, Landed> known = new HashMap<>();

    /**
     * @param moved how the piece has been moved or scaled since the marks were written
     */
    MarkPlaces(Outline outline, Affine moved) {
        this.outline = outline;
        this.moved = moved;
    }

    /** Thrown where a place lies too far from the outline. */
    static final class Off extends Exception {
        private static final long serialVersionUID = 1L;
        private final double distance;

        Off(double distance) {
            super("A place lies " + distance + " mm from the outline");
            this.distance = distance;
        }

        double distance() {
            return distance;
        }
    }

    /** A place of the piece, not bound to its outline. */
    Point free(Point written) {
        return moved.equals(Affine.IDENTITY) ? written : moved.apply(written);
    }

    /** The place of the outline nearest to a written one. */
    Nearest nearest(Point written) {
        return outline.nearest(free(written));
    }

    /**
     * A place on the outline.
     *
     * @param place where along the outline the point lies
     */
    record Landed(Point point, Place place) {}

    /**
     * The place on the outline that a written place means: the corner if one is about as near as the outline itself,
     * else the nearest place; the written place itself where it is on the outline already.
     *
     * @throws Off if the outline is further away than {@link #TOLERANCE}
     */
    Landed onOutline(Point written) throws Off {
        Landed before = known.get(written);
        if (before != null) {
            return before;
        }
        Point wanted = free(written);
        Nearest nearest = outline.nearest(wanted);
        if (nearest.distance() > TOLERANCE) {
            throw new Off(nearest.distance());
        }
        Point point = meant(wanted, nearest);
        Landed landed = new Landed(
                point,
                point.equals(nearest.point())
                        ? nearest.place()
                        : outline.nearest(point).place());
        known.put(written, landed);
        return landed;
    }

    private Point meant(Point wanted, Nearest nearest) {
        if (nearest.distance() == 0) {
            return nearest.point();
        }
        Segment segment = outline.segments().get(nearest.place().segment());
        Point corner =
                segment.start().distance(wanted) <= segment.end().distance(wanted) ? segment.start() : segment.end();
        if (corner.distance(wanted) <= Math.max(ROUNDING, 4 * nearest.distance())) {
            return corner;
        }
        return nearest.distance() <= ROUNDING ? wanted : nearest.point();
    }

    /** Whether the run from one place to another, in the direction in which the outline is drawn now, passes a third. */
    static boolean passes(Place from, Place to, Place via) {
        return from.compareTo(to) < 0
                ? from.compareTo(via) <= 0 && via.compareTo(to) <= 0
                : from.compareTo(via) <= 0 || via.compareTo(to) <= 0;
    }
}
