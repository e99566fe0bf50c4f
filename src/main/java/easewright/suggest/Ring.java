package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.Arrays;

/** An outline as a ring with lengths along it, mm. */
final class Ring {
    private final Outline outline;
    /** Length from the start of the outline to the start of each segment. */
    private final double[] starts;

    private final double length;

    Ring(Outline outline) {
        this.outline = outline;
        starts = new double[outline.segments().size()];
        double sum = 0;
        for (int i = 0; i < starts.length; i++) {
            starts[i] = sum;
            sum += outline.segments().get(i).length();
        }
        length = sum;
    }

    double length() {
        return length;
    }

    int corners() {
        return starts.length;
    }

    /** Where a segment starts. */
    double start(int segment) {
        return starts[segment];
    }

    Point at(double along) {
        return outline.point(place(along));
    }

    Place place(double along) {
        double s = along - Math.floor(along / length) * length;
        int found = Arrays.binarySearch(starts, s);
        int i = found >= 0 ? found : -found - 2;
        Segment segment = outline.segments().get(i);
        return new Place(i, segment.parameterAtLength(s - starts[i]));
    }

    /** How far along the nearest place to a point lies. */
    double along(Point p) {
        Place place = outline.nearest(p).place();
        return starts[place.segment()] + outline.segments().get(place.segment()).lengthTo(place.t());
    }

    /** The way from one place to another in the drawn direction; the whole ring for the same place. */
    double way(double from, double to) {
        double way = to - from;
        return way > 0 ? way : way + length;
    }

    Curve run(double from, double to) {
        return outline.run(place(from), place(to));
    }

    /**
     * By how much the outline turns at a place, judged over {@code reach} on both sides, degrees, positive clockwise
     * on screen.
     */
    double turn(double along, double reach) {
        Point at = at(along);
        Point before = at.minus(at(along - reach));
        Point after = at(along + reach).minus(at);
        return Turns.signed(before, after);
    }
}
