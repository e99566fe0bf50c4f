package easewright.measure;

import easewright.geom.Place;

/** Order of places around a closed outline. */
final class Places {
    private Places() {}

    /** Whether going on from {@code from} one meets {@code place} no later than {@code to}. */
    static boolean between(Place from, Place place, Place to) {
        if (from.compareTo(to) <= 0) {
            return from.compareTo(place) <= 0 && place.compareTo(to) <= 0;
        }
        return from.compareTo(place) <= 0 || place.compareTo(to) <= 0;
    }
}
