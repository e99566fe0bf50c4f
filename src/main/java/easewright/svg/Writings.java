package easewright.svg;

import java.util.ArrayList;
import java.util.List;

/** Gives unnamed closed shapes the first words written inside them. */
final class Writings {
    /** Beyond this, searching every text in every outline would be felt. */
    private static final int MOST = 2000;

    private Writings() {}

    static List<DrawnShape> name(List<DrawnShape> shapes, List<Walker.Writing> writings) {
        if (writings.isEmpty() || writings.size() > MOST) {
            return shapes;
        }
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            Area.largest(shapes.get(i), i)
                    .filter(a -> a.area() >= BarePattern.LEAST_AREA)
                    .ifPresent(areas::add);
            if (areas.size() > MOST) {
                return shapes;
            }
        }
        List<DrawnShape> named = new ArrayList<>(shapes);
        for (Walker.Writing writing : writings) {
            Area smallest = null;
            for (Area area : areas) {
                if ((smallest == null || area.area() < smallest.area()) && area.contains(writing.at())) {
                    smallest = area;
                }
            }
            if (smallest != null && named.get(smallest.index()).label().isEmpty()) {
                named.set(
                        smallest.index(),
                        named.get(smallest.index()).withLabel(writing.caption().words()));
            }
        }
        return named;
    }
}
