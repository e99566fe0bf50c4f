package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A closed sub-path of a shape, with a coarse polygon of it that answers quickly what lies inside. Good for
 * telling which line belongs to which piece, not for measuring.
 *
 * @param index    number of the shape in the drawing
 * @param subPath  number of the sub-path in the shape
 * @param area     mm²
 * @param box      around the polygon, mm
 * @param polygon  corners of the polygon, x and y in turn, mm
 */
record Area(int index, int subPath, Outline outline, double area, Box box, double[] polygon) {
    private static final int CHORDS_PER_CURVE = 8;

    /** A place this near to the outline counts as inside, mm. */
    private static final double ON_THE_LINE = 0.1;

    /** A line may stick out so far, mm, about the widest step between the sizes at the ends of a nest. */
    private static final double STICKS_OUT = 40;

    /** As long as at least this part of it lies inside. */
    private static final double MOSTLY = 0.7;

    private static final int SAMPLES_ALONG = 40;

    /** Most places of a line that are looked at. */
    private static final int SAMPLES = 12;

    /** Those of a shape that may be pieces, the largest first. */
    static List<Area> ofPieces(DrawnShape shape, int index) {
        return Ring.ofPieces(shape).stream().map(ring -> of(ring, index)).toList();
    }

    static Area of(Outline outline, int index, int subPath) {
        return of(new Ring(subPath, outline, Math.abs(outline.signedArea())), index);
    }

    private static Area of(Ring ring, int index) {
        List<Point> corners = corners(ring.outline());
        return new Area(index, ring.subPath(), ring.outline(), ring.area(), Box.around(corners), flat(corners));
    }

    private static List<Point> corners(Outline outline) {
        List<Point> corners = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            corners.add(segment.start());
            if (segment instanceof Cubic) {
                for (int i = 1; i < CHORDS_PER_CURVE; i++) {
                    corners.add(segment.at(i / (double) CHORDS_PER_CURVE));
                }
            }
        }
        return corners;
    }

    private static double[] flat(List<Point> corners) {
        double[] flat = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            flat[2 * i] = corners.get(i).x();
            flat[2 * i + 1] = corners.get(i).y();
        }
        return flat;
    }

    boolean contains(Point p) {
        if (!box.contains(p)) {
            return false;
        }
        boolean inside = false;
        int n = polygon.length;
        for (int i = 0, j = n - 2; i < n; j = i, i += 2) {
            double y0 = polygon[i + 1];
            double y1 = polygon[j + 1];
            if (y0 > p.y() != y1 > p.y()) {
                double x = polygon[i] + (polygon[j] - polygon[i]) * (p.y() - y0) / (y1 - y0);
                inside ^= p.x() < x;
            }
        }
        return inside;
    }

    /** Whether the whole line lies inside, or on the outline. */
    boolean holds(SubPath line) {
        List<Segment> segments = line.segments();
        int step = Math.max(1, segments.size() / SAMPLES);
        for (int i = 0; i < segments.size(); i += step) {
            Segment segment = segments.get(i);
            // Where each segment is looked at, the next one begins at its end.
            boolean end = step > 1 || i == segments.size() - 1 && !line.closed();
            if (!near(segment.start()) || !near(segment.at(0.5)) || end && !near(segment.end())) {
                return false;
            }
        }
        return true;
    }

    /** Whether a line that is open lies inside but for its ends, as a level drawn through to the largest of some sizes. */
    boolean holdsMost(SubPath line) {
        if (line.closed()
                || !box.grown(STICKS_OUT).contains(line.segments().get(0).start())) {
            return false;
        }
        double length = line.segments().stream().mapToDouble(Segment::length).sum();
        double step = length / SAMPLES_ALONG;
        double next = step / 2;
        int inside = 0;
        for (Segment segment : line.segments()) {
            double own = segment.length();
            while (next < own) {
                Point p = segment.at(segment.parameterAtLength(next));
                if (contains(p)) {
                    inside++;
                } else if (!box.grown(STICKS_OUT).contains(p) || !outline.comesWithin(p, STICKS_OUT)) {
                    return false;
                }
                next += step;
            }
            next -= own;
        }
        return inside >= MOSTLY * SAMPLES_ALONG;
    }

    private boolean near(Point p) {
        if (contains(p)) {
            return true;
        }
        return box.grown(ON_THE_LINE).contains(p) && outline.nearest(p).distance() <= ON_THE_LINE;
    }
}
