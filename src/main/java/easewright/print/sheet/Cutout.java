package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;

/**
 * A shape to be laid out.
 *
 * @param corners   its polygon, grain upright
 * @param turns     ways in which it may lie; the first is preferred
 * @param leftFirst it must lie with its left side on the left border (the fold of the cloth)
 */
record Cutout(List<Point> corners, List<Affine> turns, boolean leftFirst) {
    /** How far the polygon of a piece may stray from its outline, mm: far less than the gap that is kept between pieces. */
    static final double STRAY = 0.1;

    static final Affine AS_DRAWN = Affine.IDENTITY;
    static final Affine UPSIDE_DOWN = new Affine(-1, 0, 0, -1, 0, 0);

    /** Whether a place for a shape turns it upside down. */
    static boolean isUpsideDown(Affine place) {
        return place.a() < 0;
    }

    Cutout {
        corners = List.copyOf(corners);
        turns = List.copyOf(turns);
    }

    List<Point> turned(int turn) {
        return corners.stream().map(turns.get(turn)::apply).toList();
    }

    Box box(int turn) {
        return Box.around(turned(turn));
    }
}
