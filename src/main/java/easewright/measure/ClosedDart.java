package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dart as it lies under the stitching line.
 *
 * @param cloth   the folded-away cloth, as an area
 * @param mouth   the run of the stitching line that folding takes out; empty for a dart inside the piece
 * @param offEdge how far a mouth lies from where it should be, mm
 */
record ClosedDart(Dart dart, Outline cloth, Optional<Mouth> mouth, double offEdge) {
    /** The mouth on the stitching line, from one place to the other in the drawn direction. */
    record Mouth(Place from, Place to, double length) {}

    /** How exactly marks lie on the drawn line after rounding, mm. */
    static final double ON_LINE = 0.1;

    /**
     * @param cut        the run that was cut out of the outline for this dart, if it was
     * @param farthestIn the largest allowance of the piece, mm: how far a mouth marked on the cutting line may lie
     *                   from the stitching line
     */
    static ClosedDart on(Outline stitched, Dart dart, Optional<Curve> cut, double farthestIn) {
        if (dart.otherPoint().isPresent() || (dart.edge().isEmpty() && cut.isEmpty())) {
            return new ClosedDart(dart, Outline.polygon(dart.corners()), Optional.empty(), 0);
        }
        Place one = mouthPlace(stitched, dart.mouth1(), dart.point(), farthestIn);
        Place two = mouthPlace(stitched, dart.mouth2(), dart.point(), farthestIn);
        double off = Math.max(
                offLeg(stitched.point(one), dart.mouth1(), dart.point()),
                offLeg(stitched.point(two), dart.mouth2(), dart.point()));
        if (stitched.point(one).equals(stitched.point(two))) {
            return new ClosedDart(dart, Outline.polygon(dart.corners()), Optional.empty(), off);
        }
        Curve there = stitched.run(one, two);
        Curve back = stitched.run(two, one);
        double thereLength = there.length();
        double backLength = back.length();
        boolean forth = thereLength <= backLength;
        Curve run = forth ? there : back;
        Mouth mouth = forth ? new Mouth(one, two, thereLength) : new Mouth(two, one, backLength);
        return new ClosedDart(dart, cloth(run, dart.point(), cut), Optional.of(mouth), off);
    }

    /** A cut-out dart keeps its own legs, which may be shaped; a drawn one has straight legs to the mouth run. */
    private static Outline cloth(Curve mouth, Point point, Optional<Curve> cut) {
        List<Segment> around = new ArrayList<>();
        if (cut.isPresent()
                && cut.get().start().equals(mouth.start())
                && cut.get().end().equals(mouth.end())) {
            around.addAll(cut.get().segments());
            around.addAll(mouth.reversed().segments());
        } else {
            around.addAll(mouth.segments());
            around.add(new Line(mouth.end(), point));
            around.add(new Line(point, mouth.start()));
        }
        return new Outline(around);
    }

    /** Where the leg meets the stitching line: at the marked mouth, or on the leg's line near it. */
    private static Place mouthPlace(Outline stitched, Point mouth, Point point, double farthestIn) {
        var nearest = stitched.nearest(mouth);
        if (nearest.distance() <= ON_LINE || mouth.equals(point)) {
            return nearest.place();
        }
        double reach = 3 * farthestIn + ON_LINE;
        return stitched.crossings(mouth, point.minus(mouth)).stream()
                .filter(c -> Math.abs(c.along()) <= reach)
                .min((a, b) -> Double.compare(Math.abs(a.along()), Math.abs(b.along())))
                .map(c -> c.place())
                .orElse(nearest.place());
    }

    private static double offLeg(Point found, Point mouth, Point point) {
        if (mouth.equals(point)) {
            return found.distance(mouth);
        }
        Point leg = point.minus(mouth).unit();
        return Math.min(found.distance(mouth), Math.abs(leg.cross(found.minus(mouth))));
    }
}
