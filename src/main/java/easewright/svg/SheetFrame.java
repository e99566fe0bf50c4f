package easewright.svg;

import easewright.geom.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells the border or the background of a sheet from a rectangular piece. */
final class SheetFrame {
    /** How near a rectangle must come to the page to be its frame, mm. */
    private static final double NEAR = 1;

    /** A shape inside a rectangle takes at least this part of it if the rectangle is the sheet it lies on. */
    private static final double LEAST_OF_A_SHEET = 0.02;

    private SheetFrame() {}

    /**
     * @param all the areas of all outlines, itself among them
     */
    static boolean is(Area area, List<Area> all, Optional<Box> page) {
        return all.size() > 1
                && isRectangle(area)
                && (page.filter(p -> liesRound(area.box(), p)).isPresent() || holdsAllOthers(area, all));
    }

    private static boolean isRectangle(Area area) {
        return area.area() > 0.999 * area.box().width() * area.box().height();
    }

    /** A rectangle that goes round the whole page is its background or border. */
    static boolean liesRound(Box box, Box page) {
        return Math.abs(box.minX() - page.minX()) < NEAR
                && Math.abs(box.minY() - page.minY()) < NEAR
                && Math.abs(box.maxX() - page.maxX()) < NEAR
                && Math.abs(box.maxY() - page.maxY()) < NEAR;
    }

    /** So is one that holds everything else, if that is more than one shape with lines inside it. */
    private static boolean holdsAllOthers(Area frame, List<Area> all) {
        List<Box> apart = new ArrayList<>();
        for (Area area : all) {
            if (area != frame) {
                Box box = area.box();
                if (!frame.box().grown(NEAR).contains(box)) {
                    return false;
                }
                boolean large = area.area() >= LEAST_OF_A_SHEET * frame.area();
                if (large && apart.stream().allMatch(other -> areApart(other, box))) {
                    apart.add(box);
                }
            }
        }
        return apart.size() > 1;
    }

    private static boolean areApart(Box a, Box b) {
        return a.maxX() < b.minX() || b.maxX() < a.minX() || a.maxY() < b.minY() || b.maxY() < a.minY();
    }
}
