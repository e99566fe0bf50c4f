package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;

/** Finds marks on an outline. Most marks are corners, and those are found without any search along curves. */
final class Nodes {
    private Nodes() {}

    /** The place of the outline nearest to a mark. */
    static Place place(Outline outline, Point mark) {
        List<Segment> all = outline.segments();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).start().equals(mark)) {
                return new Place(i, 0);
            }
        }
        return outline.nearest(mark).place();
    }
}
