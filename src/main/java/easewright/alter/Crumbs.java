package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Leaves segments out of an outline that are too short to have a parallel: what is left where lines were cut off. */
final class Crumbs {
    /** Shorter segments are crumbs, mm. */
    private static final double CRUMB = 2e-5;

    private Crumbs() {}

    static Outline swept(Outline outline) {
        List<Segment> all = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            if (segment.length() > CRUMB) {
                all.add(segment);
            }
        }
        if (all.size() == outline.segments().size() || all.isEmpty()) {
            return outline;
        }
        for (int i = 0; i < all.size(); i++) {
            all.set(
                    i,
                    Ends.startingAt(
                            all.get(i),
                            all.get((i + all.size() - 1) % all.size()).end()));
        }
        return new Outline(all);
    }
}
