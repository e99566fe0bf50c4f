package easewright.measure;

import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;

/** Order of places around a closed outline. */
final class Places {
    private Places() {}

    /** The corner of the line that a mark means, if it lies at one and was only rounded; else the place nearest to it. */
    static Place corner(Outline outline, Point mark) {
        Nearest nearest = outline.nearest(mark);
        int i = nearest.place().segment();
        Segment segment = outline.segments().get(i);
        if (segment.start().distance(nearest.point()) <= ClosedDart.ON_LINE) {
            return new Place(i, 0);
        }
        return segment.end().distance(nearest.point()) <= ClosedDart.ON_LINE
                ? new Place((i + 1) % outline.segments().size(), 0)
                : nearest.place();
    }

    /** Whether going on from {@code from} one meets {@code place} no later than {@code to}. */
    static boolean between(Place from, Place place, Place to) {
        if (from.compareTo(to) <= 0) {
            return from.compareTo(place) <= 0 && place.compareTo(to) <= 0;
        }
        return from.compareTo(place) <= 0 || place.compareTo(to) <= 0;
    }
}
