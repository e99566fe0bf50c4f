package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The places on the screen that words have taken, pixels, so that no words are written over others. Whoever comes first
 * has the room: the more important words are to be placed first.
 */
public final class LabelRoom {
    /** A slanting line is followed in steps of this many pixels. */
    private static final double STEP = 12;

    private final List<Box> taken = new ArrayList<>();

    /** The same room for words that come and go above those that stay. */
    public LabelRoom above() {
        LabelRoom room = new LabelRoom();
        room.taken.addAll(taken);
        return room;
    }

    /** Takes the place, whatever stands there. */
    void put(Box place) {
        taken.add(place);
    }

    /** Takes the places along a drawn line, which words above it would hide. */
    void putLine(Point from, Point to) {
        int steps = isUpright(from, to) ? 1 : (int) Math.ceil(from.distance(to) / STEP);
        for (int i = 0; i < steps; i++) {
            Point start = from.towards(to, (double) i / steps);
            Point end = from.towards(to, (i + 1.0) / steps);
            put(Box.around(List.of(start, end)).grown(1));
        }
    }

    private static boolean isUpright(Point from, Point to) {
        return Math.min(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y())) < 3;
    }

    /** Takes the place if it is free; says whether it was. */
    boolean take(Box place) {
        boolean free = taken.stream().noneMatch(place::overlaps);
        if (free) {
            taken.add(place);
        }
        return free;
    }

    /** Takes the first of some middles around which there is room; empty if there is none. */
    Optional<Point> take(List<Point> middles, double width, double height) {
        return middles.stream().filter(m -> take(around(m, width, height))).findFirst();
    }

    static Box around(Point middle, double width, double height) {
        return new Box(
                middle.x() - width / 2, middle.y() - height / 2, middle.x() + width / 2, middle.y() + height / 2);
    }

    /** The upright box around words that are turned about their middle, radians. */
    static Box around(Point middle, double width, double height, double turn) {
        double cos = Math.abs(Math.cos(turn));
        double sin = Math.abs(Math.sin(turn));
        return around(middle, width * cos + height * sin, width * sin + height * cos);
    }
}
