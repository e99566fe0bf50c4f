package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * A stretch of a waist or hem from one place that stays to the next, such as a dart and a side seam, before a truing and
 * after it: between such places a truing may draw the line anew.
 *
 * @param edge   the number of the edge
 * @param number of the stretch on its edge, {@code of} how many
 */
record TruedRun(int edge, int number, int of, Curve was, Curve is) {
    /** A run that lies off what was there by no more was not trued, mm. */
    static final double UNTOUCHED = 1e-6;

    private static final Set<EdgeRole> ROLES = EnumSet.of(EdgeRole.WAIST, EdgeRole.HEM);

    /** All of a piece; none of an edge that a truing has parted otherwise. */
    static List<TruedRun> all(Piece was, Piece is) {
        List<TruedRun> runs = new ArrayList<>();
        for (int i = 0; i < is.edges().size(); i++) {
            runs.addAll(of(was, is, i));
        }
        return runs;
    }

    /** Those of one edge. */
    static List<TruedRun> of(Piece was, Piece is, int edge) {
        List<Curve> before = stretches(was, edge);
        List<Curve> after = stretches(is, edge);
        List<TruedRun> runs = new ArrayList<>();
        for (int k = 0; before.size() == after.size() && k < after.size(); k++) {
            runs.add(new TruedRun(edge, k, after.size(), before.get(k), after.get(k)));
        }
        return runs;
    }

    /** Whether it lies elsewhere than before. */
    boolean isTouched() {
        return Apart.isMoreThan(UNTOUCHED, was, is);
    }

    boolean isOneCurve() {
        return is.segments().size() == 1;
    }

    /**
     * What lies between the ends of a waist or hem and the mouths of its darts; nothing of another edge. Where a dart
     * begins at the end of the edge or at another dart, nothing lies between.
     */
    static List<Curve> stretches(Piece piece, int number) {
        Edge edge = piece.edges().get(number);
        if (!ROLES.contains(edge.role())) {
            return List.of();
        }
        Curve line = edge.on(piece.outline());
        List<Point> ends = new ArrayList<>(List.of(line.start(), line.end()));
        for (Dart dart : piece.darts()) {
            if (lies(line, dart.mouth1()) && lies(line, dart.mouth2())) {
                ends.add(dart.mouth1());
                ends.add(dart.mouth2());
            }
        }
        ToDoubleFunction<Point> along = p -> p.equals(line.end())
                ? line.length()
                : line.lengthTo(line.nearest(p).place());
        ends.sort(Comparator.comparingDouble(along));
        List<Curve> all = new ArrayList<>();
        for (int i = 0; i < ends.size(); i += 2) {
            // From a place to itself the run of an outline is all of it.
            if (along.applyAsDouble(ends.get(i + 1)) - along.applyAsDouble(ends.get(i)) > Fewer.CRUMB) {
                Curve run = Redraw.run(piece.outline(), new Stretch(ends.get(i), ends.get(i + 1)));
                List<Segment> segments = Fewer.withoutCrumbs(run.segments());
                if (!segments.isEmpty()) {
                    all.add(new Curve(segments));
                }
            }
        }
        return all;
    }

    static boolean lies(Curve line, Point p) {
        return line.nearest(p).distance() <= Shift.ON_OUTLINE;
    }
}
