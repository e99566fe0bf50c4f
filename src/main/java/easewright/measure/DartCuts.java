package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An outline with the darts that were cut out of it as a V closed over their mouths.
 *
 * @param cut by position in the list of darts: the run, legs and point, that the closing replaces
 */
record DartCuts(Outline closed, Map<Integer, Curve> cut) {
    /** The run along two straight legs is as long as the legs; shaped legs are a little longer. */
    private static final double LEG_SLACK = 1.3;

    /** How far a seam is led on from either side, as a share of the mouth. */
    private static final double LED_ON = 0.45;

    /** A seam that turns off by more is not led on, radians. */
    private static final double TURNS_OFF = Math.toRadians(30);

    /**
     * @param ledOn whether the seam runs straight on from either side into the mouth, so that its parallel meets the legs
     *              wherever they lean; else the mouth is closed by its straight line
     */
    static DartCuts of(Outline drawn, List<Dart> darts, boolean ledOn) {
        Outline outline = drawn;
        Map<Integer, Curve> cut = new TreeMap<>();
        for (int i = 0; i < darts.size(); i++) {
            Optional<V> v = findV(outline, darts.get(i), ledOn);
            if (v.isPresent()) {
                cut.put(i, v.get().run());
                outline = v.get().rest();
            }
        }
        return new DartCuts(outline, cut);
    }

    /** The legs as drawn, and the outline with the mouth line in their stead. */
    private record V(Curve run, Outline rest) {}

    private static Optional<V> findV(Outline outline, Dart dart, boolean ledOn) {
        if (dart.otherPoint().isPresent()) {
            return Optional.empty();
        }
        Nearest one = outline.nearest(dart.mouth1());
        Nearest two = outline.nearest(dart.mouth2());
        Nearest point = outline.nearest(dart.point());
        if (Math.max(one.distance(), Math.max(two.distance(), point.distance())) > ClosedDart.ON_LINE
                || one.point().equals(two.point())) {
            return Optional.empty();
        }
        double legs = LEG_SLACK
                * (dart.mouth1().distance(dart.point()) + dart.mouth2().distance(dart.point()));
        Place first = Places.corner(outline, dart.mouth1());
        Place second = Places.corner(outline, dart.mouth2());
        return Places.between(first, point.place(), second)
                ? cutOut(outline, first, second, legs, ledOn)
                : cutOut(outline, second, first, legs, ledOn);
    }

    private static Optional<V> cutOut(Outline outline, Place from, Place to, double longest, boolean ledOn) {
        Curve run = outline.run(from, to);
        if (run.length() > longest) {
            return Optional.empty();
        }
        List<Segment> rest = new ArrayList<>(outline.run(to, from).segments());
        rest.addAll(mouth(rest, run, ledOn));
        return Optional.of(new V(run, new Outline(rest)));
    }

    private static List<Line> mouth(List<Segment> seam, Curve run, boolean ledOn) {
        Point across = run.end().minus(run.start());
        Point before = seam.get(seam.size() - 1).tangent(1);
        Point after = seam.get(0).tangent(0);
        if (!ledOn || turn(before, across) > TURNS_OFF || turn(across, after) > TURNS_OFF) {
            return List.of(new Line(run.start(), run.end()));
        }
        Point one = run.start().plus(before.times(LED_ON * across.norm()));
        Point two = run.end().minus(after.times(LED_ON * across.norm()));
        return List.of(new Line(run.start(), one), new Line(one, two), new Line(two, run.end()));
    }

    private static double turn(Point one, Point two) {
        return Math.abs(Math.atan2(one.cross(two), one.dot(two)));
    }
}
