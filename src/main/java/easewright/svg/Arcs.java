package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Elliptical arcs as cubics. */
final class Arcs {
    /** How far a cubic may stray from the arc it stands for, mm. Well below what a length to 0.001 mm needs. */
    static final double TOLERANCE = 1e-5;

    private static final int MOST_PARTS = 4096;

    /** An arc whose half chord is a smaller part of its radius is straight to 1e-8 of the chord. */
    private static final double STRAIGHT = 1e-8;

    /** Where the radius is this many times the half chord, the way round is longer than numbers can tell. */
    private static final double WIDEST = 1e60;

    private Arcs() {}

    /**
     * The arc of SVG's A command: lengths in user units, the turn in degrees. Follows "Elliptical arc implementation
     * notes" of the SVG recommendation: a radius of 0 gives a line, radii that are too small are enlarged, coincident
     * ends give nothing.
     *
     * @param mmPerUnit the largest number of mm that one unit becomes
     * @throws IllegalArgumentException if the arc reaches beyond what numbers can hold
     */
    static List<Segment> between(
            Point start,
            Point end,
            double radiusX,
            double radiusY,
            double turn,
            boolean large,
            boolean clockwise,
            double mmPerUnit) {
        if (start.equals(end)) {
            return List.of();
        }
        double rx = Math.abs(radiusX);
        double ry = Math.abs(radiusY);
        if (rx == 0 || ry == 0) {
            return List.of(new Line(start, end));
        }
        double phi = Math.toRadians(turn % 360);
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double halfX = (start.x() - end.x()) / 2;
        double halfY = (start.y() - end.y()) / 2;
        // On the unit circle: half the chord, turned and scaled.
        double ux = (cos * halfX + sin * halfY) / rx;
        double uy = (cos * halfY - sin * halfX) / ry;
        double square = ux * ux + uy * uy;
        if (!(square < 1e300) || square < STRAIGHT * STRAIGHT && !large) {
            return List.of(new Line(start, end));
        }
        if (square < 1 / (WIDEST * WIDEST) || Math.max(rx, ry) > WIDEST) {
            throw new IllegalArgumentException("The arc goes round a circle that is too wide");
        }
        if (square > 1) {
            double grow = Math.sqrt(square);
            rx *= grow;
            ry *= grow;
            ux /= grow;
            uy /= grow;
            square = 1;
        }
        double toCentre = Math.sqrt((1 - square) / square) * (large == clockwise ? -1 : 1);
        double centreX = toCentre * uy;
        double centreY = -toCentre * ux;
        double from = Math.atan2(uy - centreY, ux - centreX);
        double sweep = Math.atan2(-uy - centreY, -ux - centreX) - from;
        if (clockwise && sweep < 0) {
            sweep += 2 * Math.PI;
        } else if (!clockwise && sweep > 0) {
            sweep -= 2 * Math.PI;
        }
        Affine circleToPlane = new Affine(
                rx * cos,
                rx * sin,
                -ry * sin,
                ry * cos,
                rx * cos * centreX - ry * sin * centreY + (start.x() + end.x()) / 2,
                rx * sin * centreX + ry * cos * centreY + (start.y() + end.y()) / 2);
        return along(circleToPlane, from, sweep, start, end, Math.max(rx, ry) * mmPerUnit);
    }

    /** A whole ellipse with upright axes, from its rightmost place, clockwise. */
    static List<Segment> ellipse(Point centre, double rx, double ry, double mmPerUnit) {
        Point right = new Point(centre.x() + rx, centre.y());
        Affine circleToPlane = new Affine(rx, 0, 0, ry, centre.x(), centre.y());
        return along(circleToPlane, 0, 2 * Math.PI, right, right, Math.max(rx, ry) * mmPerUnit);
    }

    private static List<Segment> along(
            Affine circleToPlane, double from, double sweep, Point start, Point end, double radiusMm) {
        int parts = parts(Math.abs(sweep), radiusMm);
        double step = sweep / parts;
        double handle = 4 / 3.0 * Math.tan(step / 4);
        List<Segment> cubics = new ArrayList<>(parts);
        Point last = start;
        for (int i = 0; i < parts; i++) {
            double angle0 = from + i * step;
            double angle1 = from + (i + 1) * step;
            double cos0 = Math.cos(angle0);
            double sin0 = Math.sin(angle0);
            double cos1 = Math.cos(angle1);
            double sin1 = Math.sin(angle1);
            Point next = i == parts - 1 ? end : circleToPlane.apply(new Point(cos1, sin1));
            cubics.add(new Cubic(
                    last,
                    circleToPlane.apply(new Point(cos0 - handle * sin0, sin0 + handle * cos0)),
                    circleToPlane.apply(new Point(cos1 + handle * sin1, sin1 - handle * cos1)),
                    next));
            last = next;
        }
        return cubics;
    }

    /** Fewest equal parts, none above a quarter turn, whose cubics keep the tolerance on a circle of that radius. */
    private static int parts(double sweep, double radiusMm) {
        int parts = Math.max(1, (int) Math.ceil(sweep / (Math.PI / 2) - 1e-9));
        while (parts < MOST_PARTS && radiusMm * strayOnUnitCircle(sweep / parts) > TOLERANCE) {
            parts++;
        }
        return parts;
    }

    /** Largest radial error of the usual cubic over an angle: 2/27 sin⁶(a/4) / cos²(a/4). */
    private static double strayOnUnitCircle(double angle) {
        double sin = Math.sin(angle / 4);
        double cos = Math.cos(angle / 4);
        return 2 / 27.0 * Math.pow(sin, 6) / (cos * cos);
    }
}
