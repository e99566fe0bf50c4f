package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stretch of a straight line that lies within an upright box, as parts of its length. */
record Stretch(double from, double to) {
    /** The stretch between two places that lies in the box; empty if there is none. */
    static Optional<Stretch> of(Box box, double x0, double y0, double x1, double y1) {
        double[] speeds = {x0 - x1, x1 - x0, y0 - y1, y1 - y0};
        double[] ways = {x0 - box.minX(), box.maxX() - x0, y0 - box.minY(), box.maxY() - y0};
        double from = 0;
        double to = 1;
        for (int i = 0; i < speeds.length; i++) {
            if (speeds[i] == 0) {
                if (ways[i] < 0) {
                    return Optional.empty();
                }
            } else if (speeds[i] < 0) {
                from = Math.max(from, ways[i] / speeds[i]);
            } else {
                to = Math.min(to, ways[i] / speeds[i]);
            }
        }
        return from <= to ? Optional.of(new Stretch(from, to)) : Optional.empty();
    }

    static Optional<Line> within(Box box, Point start, Point end) {
        return of(box, start.x(), start.y(), end.x(), end.y())
                .map(s -> new Line(start.towards(end, s.from()), start.towards(end, s.to())));
    }

    /** The stretches of a straight line that lie in none of some boxes, in order. */
    static List<Stretch> outside(List<Box> boxes, Point start, Point end) {
        List<Stretch> inside = new ArrayList<>();
        boxes.forEach(box -> of(box, start.x(), start.y(), end.x(), end.y()).ifPresent(inside::add));
        inside.sort(Comparator.comparingDouble(Stretch::from));
        List<Stretch> outside = new ArrayList<>();
        double at = 0;
        for (Stretch covered : inside) {
            if (covered.from() > at) {
                outside.add(new Stretch(at, covered.from()));
            }
            at = Math.max(at, covered.to());
        }
        if (at < 1) {
            outside.add(new Stretch(at, 1));
        }
        return outside;
    }
}
