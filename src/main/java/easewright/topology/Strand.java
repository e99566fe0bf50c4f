package easewright.topology;

import easewright.geom.BoxTree;
import easewright.geom.Cubic;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A part of a segment along which x and y only rise or only fall. Such a part cannot meet itself, and every part of it
 * fits the box between its ends, which makes the search for meetings cheap and safe.
 */
record Strand(int segment, double from, double to, Segment whole, Point start, Point end) {
    /** A line shorter than this is a place: its direction is rounding, mm. */
    private static final double SHORTEST = 1e-12;

    static List<Strand> of(List<Segment> segments) {
        List<Strand> strands = new ArrayList<>(segments.size());
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            if (segment instanceof Cubic cubic) {
                cut(strands, i, cubic);
            } else if (segment.start().distance(segment.end()) > SHORTEST) {
                strands.add(new Strand(i, 0, 1, segment, segment.start(), segment.end()));
            }
        }
        return strands;
    }

    /** Boxes between the ends: a strand does not leave its own. */
    static BoxTree boxes(List<Strand> strands) {
        double[] edges = new double[4 * strands.size()];
        int at = 0;
        for (Strand strand : strands) {
            edges[at++] = Math.min(strand.start.x(), strand.end.x());
            edges[at++] = Math.min(strand.start.y(), strand.end.y());
            edges[at++] = Math.max(strand.start.x(), strand.end.x());
            edges[at++] = Math.max(strand.start.y(), strand.end.y());
        }
        return new BoxTree(edges);
    }

    private static void cut(List<Strand> strands, int index, Cubic cubic) {
        if (rises(
                        cubic.start().x(),
                        cubic.control1().x(),
                        cubic.control2().x(),
                        cubic.end().x())
                && rises(
                        cubic.start().y(),
                        cubic.control1().y(),
                        cubic.control2().y(),
                        cubic.end().y())) {
            if (!cubic.start().equals(cubic.end())) {
                strands.add(new Strand(index, 0, 1, cubic, cubic.start(), cubic.end()));
            }
            return;
        }
        // A curve that sets out or arrives straight turns, by rounding, just beside its end; a strand as short as that
        // would stand between two neighbours and make their join look like a meeting.
        TreeSet<Double> stops = new TreeSet<>();
        for (double t : cubic.turningPoints()) {
            Point turn = cubic.at(t);
            if (turn.distance(cubic.start()) > StrandMeetings.SAME
                    && turn.distance(cubic.end()) > StrandMeetings.SAME) {
                stops.add(t);
            }
        }
        stops.add(1.0);
        double low = 0;
        for (double high : stops) {
            Point start = cubic.at(low);
            Point end = cubic.at(high);
            if (!start.equals(end)) {
                strands.add(new Strand(index, low, high, cubic, start, end));
            }
            low = high;
        }
    }

    private static boolean rises(double a, double b, double c, double d) {
        return (a <= b && b <= c && c <= d) || (a >= b && b >= c && c >= d);
    }

    Point at(double local) {
        return local == 0 ? start : local == 1 ? end : whole.at(parameter(local));
    }

    /** The rate of change with the strand's own parameter. */
    Point derivative(double local) {
        return whole.derivative(parameter(local)).times(to - from);
    }

    Place place(double local) {
        return new Place(segment, parameter(local));
    }

    private double parameter(double local) {
        return Math.min(1, Math.max(0, from + (to - from) * local));
    }

    boolean straight() {
        return !(whole instanceof Cubic);
    }

    /** Whether x, or y, goes the same way on both: two such strands in a row cannot meet again. */
    boolean keepsOn(Strand next) {
        return (end.x() - start.x()) * (next.end.x() - next.start.x()) > 0
                || (end.y() - start.y()) * (next.end.y() - next.start.y()) > 0;
    }

    boolean apart(Strand other, double slack) {
        return Math.max(start.x(), end.x()) + slack < Math.min(other.start.x(), other.end.x())
                || Math.max(other.start.x(), other.end.x()) + slack < Math.min(start.x(), end.x())
                || Math.max(start.y(), end.y()) + slack < Math.min(other.start.y(), other.end.y())
                || Math.max(other.start.y(), other.end.y()) + slack < Math.min(start.y(), end.y());
    }
}
