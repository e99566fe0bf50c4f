package easewright.geom;

/**
 * The run of an outline from one place to another in the drawn direction, asked about without being made; the whole
 * outline if they are the same place.
 */
public final class Stretch {
    private final int first;
    private final double begin;
    private final double end;
    private final int steps;
    private final int all;

    public Stretch(Outline outline, Place from, Place to) {
        all = outline.segments().size();
        first = from.t() == 1 ? (from.segment() + 1) % all : from.segment();
        begin = from.t() == 1 ? 0 : from.t();
        int last = to.t() == 0 ? (to.segment() + all - 1) % all : to.segment();
        end = to.t() == 0 ? 1 : to.t();
        steps = first == last && begin >= end ? all : Math.floorMod(last - first, all);
    }

    /** Whether a part of it lies on a segment of the outline. */
    public boolean has(int segment) {
        return Math.floorMod(segment - first, all) <= steps;
    }

    /** Whether a place of the outline lies on it, by whichever of its two segments a corner is called. */
    public boolean has(Place place) {
        return holds(place.segment(), place.t())
                || place.t() == 0 && holds(place.segment() + all - 1, 1)
                || place.t() == 1 && holds(place.segment() + 1, 0);
    }

    private boolean holds(int segment, double t) {
        int step = Math.floorMod(segment - first, all);
        if (steps == all) {
            return step > 0 || t >= begin || t <= end;
        }
        return step <= steps && (step > 0 || t >= begin) && (step < steps || t <= end);
    }
}
