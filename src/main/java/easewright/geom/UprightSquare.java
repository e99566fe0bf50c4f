package easewright.geom;

import java.util.List;
import java.util.Optional;

/**
 * A square that stands upright, as it is drawn, or as a hand or a scan draws it: by many short lines that shake a little.
 *
 * @param box  around it
 * @param side of the square of the same area, in which what shakes outwards and inwards evens out
 */
public record UprightSquare(Box box, double side) {
    /** Of a square of many lines all places lie this near to an upright one, as a part of its side. */
    private static final double SHAKES = 0.012;

    /** More lines are some other figure. */
    private static final int MOST = 2000;

    /**
     * @param sides straight lines that close
     * @param slack by how much a square of just four lines may be off, as a part of its side
     */
    public static Optional<UprightSquare> of(List<Segment> sides, double slack) {
        if (sides.size() < 4 || sides.size() > MOST || !sides.stream().allMatch(Line.class::isInstance)) {
            return Optional.empty();
        }
        double area = 0;
        for (int i = 0; i < sides.size(); i++) {
            Point from = sides.get(i).start();
            Point to = sides.get(i).end();
            if (!to.equals(sides.get((i + 1) % sides.size()).start())) {
                return Optional.empty();
            }
            area += from.x() * to.y() - to.x() * from.y();
        }
        double side = Math.sqrt(Math.abs(area) / 2);
        Box box = sides.stream().map(Segment::box).reduce(Box::union).orElseThrow();
        double off = side * (sides.size() == 4 ? slack : SHAKES);
        boolean square = side > 0
                && Math.abs(box.width() - side) <= 2 * off
                && Math.abs(box.height() - side) <= 2 * off
                && Math.abs(box.width() - box.height()) <= 2 * off
                && sides.stream().allMatch(s -> along(box, s, 2 * off));
        return square ? Optional.of(new UprightSquare(box, side)) : Optional.empty();
    }

    private static boolean along(Box box, Segment side, double off) {
        Point p = side.at(0.5);
        double across = Math.min(Math.abs(p.x() - box.minX()), Math.abs(p.x() - box.maxX()));
        double down = Math.min(Math.abs(p.y() - box.minY()), Math.abs(p.y() - box.maxY()));
        return Math.min(across, down) <= off;
    }
}
