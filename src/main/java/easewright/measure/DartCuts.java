package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An outline with the darts that were cut out of it as a V closed by their mouth lines.
 *
 * @param cut by position in the list of darts: the run, legs and point, that the mouth line replaces
 */
record DartCuts(Outline closed, Map<Integer, Curve> cut) {
    /** The run along two straight legs is as long as the legs; shaped legs are a little longer. */
    private static final double LEG_SLACK = 1.3;

    static DartCuts of(Outline drawn, List<Dart> darts) {
        Outline outline = drawn;
        Map<Integer, Curve> cut = new TreeMap<>();
        for (int i = 0; i < darts.size(); i++) {
            Optional<V> v = findV(outline, darts.get(i));
            if (v.isPresent()) {
                cut.put(i, v.get().run());
                outline = v.get().rest();
            }
        }
        return new DartCuts(outline, cut);
    }

    /** The legs as drawn, and the outline with the mouth line in their stead. */
    private record V(Curve run, Outline rest) {}

    private static Optional<V> findV(Outline outline, Dart dart) {
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
                ? cutOut(outline, first, second, legs)
                : cutOut(outline, second, first, legs);
    }

    private static Optional<V> cutOut(Outline outline, Place from, Place to, double longest) {
        Curve run = outline.run(from, to);
        if (run.length() > longest) {
            return Optional.empty();
        }
        List<Segment> rest = new ArrayList<>(outline.run(to, from).segments());
        rest.add(new Line(run.start(), run.end()));
        return Optional.of(new V(run, new Outline(rest)));
    }
}
