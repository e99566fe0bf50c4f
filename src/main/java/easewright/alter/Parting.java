package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * An outline cut in two at two of its places: a part that stays and a part that moves as a whole.
 *
 * @param stays segments of the staying run, in drawn order
 * @param moves segments of the moving run, in drawn order, before they move
 */
record Parting(List<Segment> stays, List<Segment> moves) {
    /** Ends this close to each other are one place, mm. */
    private static final double SAME = SlashPlaces.ON_LINE;

    /** The outline cut at two places; the run from the first to the second moves. */
    static Parting of(Outline outline, Place first, Place second) {
        return new Parting(
                outline.run(second, first).segments(),
                outline.run(first, second).segments());
    }

    /** Whether a point lies in the moving part; the straight cut closes it. */
    boolean movesWith(Point p) {
        List<Segment> closed = new ArrayList<>(moves);
        Point end = moves.get(moves.size() - 1).end();
        closed.add(new Line(end, moves.get(0).start()));
        return new Outline(closed).contains(p);
    }

    /** Whether a point of the outline belongs to the moving run rather than to the staying one. */
    boolean nearerToMoving(Point p) {
        return new Curve(moves).nearest(p).distance()
                < new Curve(stays).nearest(p).distance();
    }

    /** The outline with the moving part mapped; gaps are closed by straight runs. */
    Outline joined(Affine map, Segment startsWith) {
        List<Segment> moved = new ArrayList<>();
        for (Segment s : moves) {
            moved.add(s.transformed(map));
        }
        Point stayEnd = stays.get(stays.size() - 1).end();
        Point stayStart = stays.get(0).start();
        if (near(moved.get(0).start(), stayEnd)) {
            moved.set(0, withEnds(moved.get(0), stayEnd, moved.get(0).end()));
        }
        int last = moved.size() - 1;
        if (near(moved.get(last).end(), stayStart)) {
            moved.set(last, withEnds(moved.get(last), moved.get(last).start(), stayStart));
        }
        List<Segment> all = new ArrayList<>(stays);
        bridge(all, moved.get(0).start());
        all.addAll(moved);
        bridge(all, stayStart);
        int first = 0;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == startsWith) {
                first = i;
            }
        }
        List<Segment> ordered = new ArrayList<>(all.subList(first, all.size()));
        ordered.addAll(all.subList(0, first));
        return new Outline(ordered);
    }

    private static void bridge(List<Segment> run, Point to) {
        Point end = run.get(run.size() - 1).end();
        if (!end.equals(to)) {
            run.add(new Line(end, to));
        }
    }

    private static boolean near(Point one, Point other) {
        return one.distance(other) <= SAME;
    }

    private static Segment withEnds(Segment s, Point start, Point end) {
        return s instanceof Cubic c ? new Cubic(start, c.control1(), c.control2(), end) : new Line(start, end);
    }
}
