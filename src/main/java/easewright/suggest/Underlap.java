package easewright.suggest;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the underlap of a waistband begins: at a notch near one end of its long seam. Underlaps are 15 to 70 mm wide by
 * common practice.
 */
final class Underlap {
    static final double NARROWEST = 12;
    static final double WIDEST = 75;

    private Underlap() {}

    /** The corners with the beginning of the underlap as one more. */
    static List<Corners.Corner> parted(List<Corners.Corner> corners, List<Point> ticks, Ring ring) {
        List<Corners.Corner> more = new ArrayList<>(corners);
        for (int i = 0; i < corners.size(); i++) {
            double from = corners.get(i).along();
            double whole = ring.way(from, corners.get((i + 1) % corners.size()).along());
            List<Corners.Corner> ends = new ArrayList<>();
            for (Point tick : ticks) {
                double along = ring.way(from, ring.along(tick));
                double toEnd = Math.min(along, whole - along);
                if (along < whole && toEnd >= NARROWEST && toEnd <= WIDEST && whole > 4 * WIDEST) {
                    ends.add(new Corners.Corner(tick, ring.along(tick), 0));
                }
            }
            if (ends.size() == 1) {
                more.addAll(ends);
            }
        }
        more.sort(Comparator.comparingDouble(Corners.Corner::along));
        return more;
    }
}
