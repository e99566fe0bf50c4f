package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Point;

/**
 * A run of an outline from corner to corner, as seen with the grain upright: {@code u} runs across to the right,
 * {@code v} down.
 *
 * @param curve  in the drawn direction
 * @param middle half-way along, in u and v, mm
 * @param across how far it runs across and down from end to end, in u and v, mm
 * @param length mm
 * @param bulge  greatest distance from its chord relative to it: positive outward, negative into the piece
 */
record Run(Curve curve, Point middle, Point across, double length, double bulge) {
    static Run of(Curve curve, Frame frame, boolean clockwise) {
        double length = curve.length();
        Point chord = curve.end().minus(curve.start());
        double span = chord.norm();
        double off = 0;
        if (span > 0) {
            Point inward = clockwise
                    ? chord.unit().quarterTurned()
                    : chord.unit().quarterTurned().times(-1);
            for (int i = 1; i < 12; i++) {
                double d = curve.pointAtLength(length * i / 12)
                        .minus(curve.start())
                        .dot(inward);
                if (Math.abs(d) > Math.abs(off)) {
                    off = d;
                }
            }
        }
        return new Run(
                curve,
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
