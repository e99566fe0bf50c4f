package easewright.alter;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * Whether a changed outline still bounds one piece of cloth: it does not cross itself where it was changed, and was
 * not turned inside out. Only the segments that are new are tried against the rest, which is what a drag needs.
 */
final class Simple {
    /** Straight pieces that stand in for a curve: 16 keep a 300 mm seam within 0.3 mm. */
    private static final int STEPS = 16;

    private Simple() {}

    static boolean stays(Outline before, Outline after) {
        if (before.signedArea() * after.signedArea() <= 0) {
            return false;
        }
        Set<Segment> old = Collections.newSetFromMap(new IdentityHashMap<>());
        old.addAll(before.segments());
        List<Segment> all = after.segments();
        List<Stretch> stretches = new ArrayList<>(all.size());
        for (Segment s : all) {
            stretches.add(new Stretch(s, old.contains(s)));
        }
        for (int i = 0; i < all.size(); i++) {
            for (int j = i; j < all.size(); j++) {
                boolean bothOld = stretches.get(i).old && stretches.get(j).old;
                if (!bothOld && stretches.get(i).crosses(stretches.get(j))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A segment and, once it is needed, the straight pieces that stand in for it. */
    private static final class Stretch {
        private final Segment segment;
        private final boolean old;
        private final Box box;
        private Point[] places;

        Stretch(Segment segment, boolean old) {
            this.segment = segment;
            this.old = old;
            this.box = segment.box();
        }

        boolean crosses(Stretch other) {
            if (box.minX() > other.box.maxX()
                    || other.box.minX() > box.maxX()
                    || box.minY() > other.box.maxY()
                    || other.box.minY() > box.maxY()) {
                return false;
            }
            Point[] mine = places();
            Point[] theirs = other.places();
            for (int i = 0; i + 1 < mine.length; i++) {
                for (int j = this == other ? i + 2 : 0; j + 1 < theirs.length; j++) {
                    if (cross(mine[i], mine[i + 1], theirs[j], theirs[j + 1])) {
                        return true;
                    }
                }
            }
            return false;
        }

        private Point[] places() {
            if (places == null) {
                int steps = segment instanceof easewright.geom.Line ? 1 : STEPS;
                places = new Point[steps + 1];
                for (int i = 0; i <= steps; i++) {
                    places[i] = segment.at(i / (double) steps);
                }
            }
            return places;
        }
    }

    /** Whether two straight pieces cross properly; touching at an end, as neighbours do, is no crossing. */
    private static boolean cross(Point a, Point b, Point c, Point d) {
        double c1 = b.minus(a).cross(c.minus(a));
        double c2 = b.minus(a).cross(d.minus(a));
        double c3 = d.minus(c).cross(a.minus(c));
        double c4 = d.minus(c).cross(b.minus(c));
        double tiny = 1e-9 * (1 + a.distance(b)) * (1 + c.distance(d));
        return apart(c1, c2, tiny) && apart(c3, c4, tiny);
    }

    private static boolean apart(double one, double other, double tiny) {
        return (one > tiny && other < -tiny) || (one < -tiny && other > tiny);
    }
}
