package easewright.suggest;

import easewright.geom.Point;

/** Angles between directions, degrees. */
final class Turns {
    private Turns() {}

    /** Between two directions of travel, from 0 to 180. */
    static double degrees(Point a, Point b) {
        return Math.toDegrees(Math.atan2(Math.abs(a.cross(b)), a.dot(b)));
    }

    /** Between two lines, whichever way they are travelled, from 0 to 90. */
    static double between(Point a, Point b) {
        double turn = degrees(a, b);
        return Math.min(turn, 180 - turn);
    }

    /** From one direction to the other, positive clockwise on screen. */
    static double signed(Point from, Point to) {
        return Math.toDegrees(Math.atan2(from.cross(to), from.dot(to)));
    }
}
