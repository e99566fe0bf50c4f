package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines around half a leg, each from the top down or from the centre outwards; and how they are drawn through the
 * points of a draft. The crease is x = 0.
 *
 * @param kneeHalf from the crease to either seam at the knee, mm
 */
record TrouserLeg(DartedSeam waist, Curve outseam, Curve inseam, Curve crotch, double kneeHalf) {
    /** Straight but for its ends, which meet the slanted seams square so that it runs on over them. */
    Curve hem() {
        Point out = outseam.end();
        Point in = inseam.end();
        Point up = outseam.reversed().segments().get(0).tangent(0);
        Point down = in.minus(inseam.reversed().segments().get(0).end());
        return new Curve(List.of(Fair.bow(out, up.quarterTurned().times(-1), in, down.quarterTurned(), 0.15)));
    }

    /** Where the crotch curve aims from the fork: square to the inseam, so that it runs on over it. */
    static Point square(Point fork, Curve inseam, double x) {
        Point square = inseam.segments().get(0).tangent(0).quarterTurned();
        return fork.plus(square.times((x - fork.x()) / square.x()));
    }

    /** Waist, bowed out by 0.5 cm to the hip, knee, and straight to the hem. */
    static Curve outseam(Point waist, Point hip, Point knee, Point hem) {
        Point run = hip.minus(waist);
        Point bowed = waist.towards(hip, 0.5).plus(run.unit().quarterTurned().times(-5));
        Curve shaped = Fair.through(List.of(waist, bowed, hip, knee), bowed.minus(waist), hem.minus(knee));
        List<Segment> segments = new ArrayList<>(shaped.segments());
        segments.add(new Line(knee, hem));
        return new Curve(segments);
    }

    /** From the fork, hollowed inwards to the knee, and straight to the hem. */
    static Curve inseam(Point fork, Point knee, Point hem, double hollow) {
        Point run = knee.minus(fork);
        Point middle = fork.towards(knee, 0.5).plus(run.unit().quarterTurned().times(-hollow));
        Point down = hem.minus(knee);
        Curve shaped = Fair.through(List.of(fork, middle, knee), middle.minus(fork), down);
        List<Segment> segments = new ArrayList<>(shaped.segments());
        segments.add(new Line(knee, hem));
        return new Curve(segments);
    }

    /** The waist seam, square to the centre line and to the outseam. */
    static DartedSeam waist(Point centre, Point downCentre, Curve outseam, List<DartPlan> plans) {
        Point leaving = downCentre.quarterTurned().times(-1);
        Point side = outseam.segments().get(0).tangent(0);
        Point square = DartedSeam.shutDirection(plans, 1, side).quarterTurned().times(-1);
        Point end = DartedSeam.shut(plans, 1, outseam.start());
        Curve closed = new Curve(List.of(Fair.bow(centre, leaving, end, square, 0.36)));
        return DartedSeam.open("waist", closed, plans, 1);
    }
}
