package easewright.topology;

import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** How much of the table two outlines share. Worked out on polygons, since it is asked only how pieces lie. */
public final class Overlap {
    /** How far a polygon may stray from the curve it stands for, mm. */
    private static final double STRAY = 0.02;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Overlap() {}

    /**
     * The area that lies in both outlines, in mm², off by no more than 0.02 mm along each border that is curved. An outline that crosses
     * itself counts with all that it goes round.
     */
    public static double area(Outline one, Outline other) {
        if (!one.box().overlaps(other.box()) || clear(one, other)) {
            return 0;
        }
        return OverlayNGRobust.overlay(sound(one), sound(other), OverlayNG.INTERSECTION)
                .getArea();
    }

    /** Whether nothing of one border comes near the other's, and neither outline lies inside the other. */
    private static boolean clear(Outline one, Outline other) {
        return !one.boxes().meets(other.boxes()) && !mayHold(one, other) && !mayHold(other, one);
    }

    /** Whether one outline may lie inside another whose border it does not meet. */
    private static boolean mayHold(Outline outer, Outline inner) {
        Point any = inner.segments().get(0).start();
        // Where an outline goes round twice, the even-odd rule takes the inside for the outside.
        return outer.box().contains(any) && (outer.contains(any) || !Validity.isSimple(outer));
    }

    private static Geometry sound(Outline outline) {
        Polygon polygon = FACTORY.createPolygon(ring(outline));
        return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
    }

    private static Coordinate[] ring(Outline outline) {
        List<Point> corners = outline.corners(STRAY);
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = corners.get(i % corners.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return ring;
    }
}
