package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.HashMap;
import java.util.Map;

/**
 * Writes places, given in mm of the drawing, in the units of one element. A place that the element had before is
 * written as the very number it had; another one with as few decimals as land within {@link #TOLERANCE}.
 */
final class Landing {
    /** How far a written place may lie from the wanted one, mm. */
    static final double TOLERANCE = 5e-7;

    private static final int MOST_PLACES = 17;

    private final Affine toMm;
    private final Affine fromMm;
    private final Map<Point, Point> known = new HashMap<>();

    /**
     * @throws ArithmeticException if the map cannot be undone
     */
    Landing(Affine toMm) {
        this.toMm = toMm;
        this.fromMm = toMm.inverse();
    }

    /** Remembers the places of a segment given in the element's units. */
    void know(Segment units) {
        know(units.start());
        know(units.end());
        if (units instanceof Cubic c) {
            know(c.control1());
            know(c.control2());
        }
    }

    void know(Point units) {
        known.putIfAbsent(toMm.apply(units), units);
    }

    /** Both numbers in the element's units, across first. */
    String[] numbers(Point mm) {
        Point before = known.get(mm);
        return before != null ? exact(before) : nearby(mm);
    }

    /** The same with a space between. */
    String pair(Point mm) {
        return String.join(" ", numbers(mm));
    }

    /** The very place, in the element's units. */
    static String exactPair(Point units) {
        return String.join(" ", exact(units));
    }

    private static String[] exact(Point units) {
        return new String[] {Decimals.exact(units.x()), Decimals.exact(units.y())};
    }

    private String[] nearby(Point mm) {
        Point units = fromMm.apply(mm);
        for (int places = 0; places < MOST_PLACES; places++) {
            Point written = new Point(Decimals.readBack(units.x(), places), Decimals.readBack(units.y(), places));
            if (toMm.apply(written).distance(mm) <= TOLERANCE) {
                return new String[] {Decimals.rounded(units.x(), places), Decimals.rounded(units.y(), places)};
            }
        }
        return exact(units);
    }

    /** A drawing command for a segment given in mm, from where the pen is. */
    String command(Segment mm) {
        return command(mm, pair(mm.end()));
    }

    /** The same with the text of its end given. */
    String command(Segment mm, String end) {
        if (mm instanceof Cubic c) {
            return "C" + pair(c.control1()) + " " + pair(c.control2()) + " " + end;
        }
        return "L" + end;
    }

    /** A drawing command for a segment in the element's units, number for number. */
    static String exactCommand(Segment units) {
        if (units instanceof Cubic c) {
            return "C" + exactPair(c.control1()) + " " + exactPair(c.control2()) + " " + exactPair(c.end());
        }
        return "L" + exactPair(units.end());
    }
}
