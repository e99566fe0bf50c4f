package easewright.suggest;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The places at which an outline bends sharply, in order along it.
 *
 * @param corners those at which edges end
 * @param nicks   tips of small cuts in the outline, which are notches
 */
record Corners(Outline outline, List<Corner> corners, List<Point> nicks) {
    /** Judged over this much of the outline on both sides, mm. */
    private static final double REACH = 4;

    /** A bend sharper than this is a corner, degrees. */
    private static final double SHARP = 26;

    /** Bends nearer to each other than this are one corner, mm. */
    private static final double ONE = 7;

    /** Widest and deepest nick, mm. */
    private static final double NICK = 13;

    /**
     * @param along from the start of the outline, mm
     * @param turn  degrees, positive clockwise on screen
     */
    record Corner(Point at, double along, double turn) {}

    Corners {
        corners = List.copyOf(corners);
        nicks = List.copyOf(nicks);
    }

    /** Bends inside the mouths of darts are none. */
    static Corners of(Outline outline, List<Dart> darts) {
        Ring ring = new Ring(outline);
        List<Corner> sharp = sharp(outline, ring);
        List<Point> nicks = new ArrayList<>();
        takeNicks(sharp, nicks, ring, outline.signedArea() > 0);
        List<Corner> kept = new ArrayList<>();
        for (Corner corner : sharp) {
            boolean inMouth = darts.stream().anyMatch(d -> d.otherPoint().isEmpty() && inMouth(corner, d, ring));
            if (!inMouth) {
                kept.add(corner);
            }
        }
        return new Corners(outline, merged(kept, ring), nicks);
    }

    private static List<Corner> sharp(Outline outline, Ring ring) {
        double reach = Math.min(REACH, ring.length() / 60);
        List<Corner> sharp = new ArrayList<>();
        for (int i = 0; i < ring.corners(); i++) {
            double turn = ring.turn(ring.start(i), reach);
            if (Math.abs(turn) >= SHARP) {
                sharp.add(new Corner(outline.segments().get(i).start(), ring.start(i), turn));
            }
        }
        return sharp;
    }

    /** Takes small cuts out of the corners: two bends with one the other way between them, all near together. */
    private static void takeNicks(List<Corner> sharp, List<Point> nicks, Ring ring, boolean clockwise) {
        for (int i = 0; i + 2 < sharp.size() + 2 && sharp.size() >= 5; i++) {
            int n = sharp.size();
            Corner a = sharp.get(i % n);
            Corner b = sharp.get((i + 1) % n);
            Corner c = sharp.get((i + 2) % n);
            boolean small = a.at().distance(c.at()) <= NICK
                    && ring.way(a.along(), c.along()) <= 3 * NICK
                    && a.turn() * b.turn() < 0
                    && b.turn() * c.turn() < 0
                    && Math.abs(b.turn()) > 60;
            // The tip of a cut bends against the way the outline runs round.
            if (small && clockwise == b.turn() < 0) {
                nicks.add(b.at());
                sharp.removeAll(List.of(a, b, c));
                i = -1;
            }
        }
    }

    private static boolean inMouth(Corner corner, Dart dart, Ring ring) {
        double one = ring.along(dart.mouth1());
        double two = ring.along(dart.mouth2());
        boolean forward = ring.way(one, two) <= ring.way(two, one);
        double from = forward ? one : two;
        double to = forward ? two : one;
        // A bend beside the mouth is judged over what lies in it.
        double slack = REACH;
        return ring.way(from - slack, corner.along()) <= ring.way(from - slack, to + slack);
    }

    private static List<Corner> merged(List<Corner> corners, Ring ring) {
        List<Corner> merged = new ArrayList<>();
        for (Corner corner : corners) {
            Corner last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && ring.way(last.along(), corner.along()) < ONE) {
                if (Math.abs(corner.turn()) > Math.abs(last.turn())) {
                    merged.set(merged.size() - 1, corner);
                }
            } else {
                merged.add(corner);
            }
        }
        int n = merged.size();
        if (n > 1 && ring.way(merged.get(n - 1).along(), merged.get(0).along()) < ONE) {
            int weaker =
                    Math.abs(merged.get(0).turn()) < Math.abs(merged.get(n - 1).turn()) ? 0 : n - 1;
            merged.remove(weaker);
        }
        merged.sort(Comparator.comparingDouble(Corner::along));
        return merged;
    }
}
