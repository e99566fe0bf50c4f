package easewright.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * The parts of an outline near a segment, ready for many questions about places on it: for each of them few of the
 * outline's segments are looked at. Immutable.
 */
public final class Nearby {
    private final List<Segment> segments = new ArrayList<>(4);
    private final double distance;

    Nearby(Outline outline, Segment about, double distance) {
        this.distance = distance;
        Point a = about.start();
        Point d = about.end();
        Point b = about instanceof Cubic c ? c.control1() : a;
        Point c = about instanceof Cubic cubic ? cubic.control2() : d;
        outline.boxes()
                .near(
                        Math.min(Math.min(a.x(), b.x()), Math.min(c.x(), d.x())),
                        Math.min(Math.min(a.y(), b.y()), Math.min(c.y(), d.y())),
                        Math.max(Math.max(a.x(), b.x()), Math.max(c.x(), d.x())),
                        Math.max(Math.max(a.y(), b.y()), Math.max(c.y(), d.y())),
                        distance + Outline.BESIDE,
                        i -> segments.add(outline.segments().get(i)));
    }

    /** Whether no place of the segment is near: then no place has to be asked about. */
    public boolean isEmpty() {
        return segments.isEmpty();
    }

    /** Whether the outline comes within the distance of a place on the segment. */
    public boolean reaches(Point place) {
        for (Segment segment : segments) {
            if (NearestSearch.comesWithin(segment, place, distance)) {
                return true;
            }
        }
        return false;
    }
}
