package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A run of an outline from corner to corner, as seen with the grain upright: {@code u} runs across to the right,
 * {@code v} down.
 *
 * @param curve  in the drawn direction
 * @param box    around places along it, its ends among them, in u and v, mm
 * @param middle half-way along, in u and v, mm
 * @param across how far it runs across and down from end to end, in u and v, mm
 * @param length mm
 * @param bulge  greatest distance from its chord relative to it: positive outward, negative into the piece
 */
record Run(Curve curve, Box box, Point middle, Point across, double length, double bulge) {
    private static final int STEPS = 12;

    static Run of(Curve curve, Frame frame, boolean clockwise) {
        double length = curve.length();
        Point chord = curve.end().minus(curve.start());
        double span = chord.norm();
        Point unit = span > 0 ? chord.unit() : chord;
        Point inward = clockwise ? unit.quarterTurned() : unit.quarterTurned().times(-1);
        double off = 0;
        List<Point> places = new ArrayList<>(List.of(frame.of(curve.start()), frame.of(curve.end())));
        for (int i = 1; i < STEPS; i++) {
            Point place = curve.pointAtLength(length * i / STEPS);
            places.add(frame.of(place));
            double d = place.minus(curve.start()).dot(inward);
            if (Math.abs(d) > Math.abs(off)) {
                off = d;
            }
        }
        return new Run(
                curve,
                Box.around(places),
                frame.of(curve.pointAtLength(length / 2)),
                frame.direction(chord),
                length,
                span > 0 ? -off / span : 0);
    }

    /** How far along the nearest place to a point lies, as a part of the length. */
    double part(Point p) {
        var place = curve.nearest(p).place();
        double along = curve.segments().get(place.segment()).lengthTo(place.t());
        for (int i = 0; i < place.segment(); i++) {
            along += curve.segments().get(i).length();
        }
        return along / length;
    }

    boolean isStraight() {
        return Math.abs(bulge) < 0.004;
    }

    /** Whether it runs across rather than up and down. */
    boolean isFlat() {
        return Math.abs(across.x()) > 1.2 * Math.abs(across.y());
    }

    /** How far it leans from the grain, degrees, 0 to 90. */
    double lean() {
        return Turns.between(across, new Point(0, 1));
    }

    double span() {
        return across.norm();
    }

    /** Directions of the plane as seen with the grain upright. */
    record Frame(Point right, Point down) {
        static Frame along(Point grain) {
            // The page shows which end of the grainline is below; where it lies level, it is read from left to right.
            boolean flip = Math.abs(grain.y()) > 0.1 ? grain.y() < 0 : grain.x() < 0;
            Point down = flip ? grain.times(-1) : grain;
            return new Frame(down.quarterTurned().times(-1), down);
        }

        Point of(Point p) {
            return new Point(p.dot(right), p.dot(down));
        }

        Point direction(Point d) {
            return of(d);
        }
    }
}
