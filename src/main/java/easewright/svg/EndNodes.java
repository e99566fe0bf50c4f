package easewright.svg;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Places at which loose lines end: those as near as makes no difference are one. */
final class EndNodes {
    /** More free ends than this in one spot are hatching, not gaps. */
    private static final int CROWD = 16;

    /** Large enough that most places have no other cell within reach, small enough that cells stay short, mm. */
    private static final double CELL = 8 * Closing.MEET;

    /** A cell in which a free end is mostly the only one, mm. */
    private static final double WIDE = 16 * JoinedOutline.TOLERANCE;

    private final List<Point> places = new ArrayList<>();
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    int count() {
        return places.size();
    }

    /** The node at a place, made if there is none within {@link Closing#MEET}. */
    int at(Point p) {
        long lastX = (long) Math.floor((p.x() + Closing.MEET) / CELL);
        long lastY = (long) Math.floor((p.y() + Closing.MEET) / CELL);
        for (long x = (long) Math.floor((p.x() - Closing.MEET) / CELL); x <= lastX; x++) {
            for (long y = (long) Math.floor((p.y() - Closing.MEET) / CELL); y <= lastY; y++) {
                for (int node : cells.getOrDefault(key(x, y), List.of())) {
                    if (places.get(node).distance(p) <= Closing.MEET) {
                        return node;
                    }
                }
            }
        }
        places.add(p);
        add(cells, cell(p, CELL, 0, 0), places.size() - 1);
        return places.size() - 1;
    }

    /**
     * Brings free ends together across gaps of up to {@link JoinedOutline#TOLERANCE}, each with the one nearest to
     * it if that also has it for its nearest.
     *
     * @param degree how many lines end at each node
     * @return for each node the one that now stands for it
     */
    int[] bridged(int[] degree) {
        Map<Long, Integer> around = new HashMap<>();
        for (int i = 0; i < degree.length; i++) {
            if (degree[i] == 1) {
                long cell = cell(places.get(i), WIDE, 0, 0);
                around.put(cell, around.getOrDefault(cell, 0) + 1);
            }
        }
        Map<Long, List<Integer>> free = new HashMap<>();
        boolean[] alone = new boolean[degree.length];
        for (int i = 0; i < degree.length; i++) {
            alone[i] = degree[i] != 1 || alone(places.get(i), around);
            if (!alone[i]) {
                add(free, cell(places.get(i), JoinedOutline.TOLERANCE, 0, 0), i);
            }
        }
        int[] nearest = new int[degree.length];
        for (int i = 0; i < nearest.length; i++) {
            nearest[i] = alone[i] ? -1 : nearest(i, free);
        }
        int[] stands = new int[degree.length];
        for (int i = 0; i < stands.length; i++) {
            stands[i] = nearest[i] >= 0 && nearest[nearest[i]] == i ? Math.min(i, nearest[i]) : i;
        }
        return stands;
    }

    private static void add(Map<Long, List<Integer>> to, long cell, int node) {
        List<Integer> there = to.get(cell);
        if (there == null) {
            there = new ArrayList<>(1);
            to.put(cell, there);
        }
        there.add(node);
    }

    /** Whether there is no other free end anywhere near, as with most. */
    private static boolean alone(Point p, Map<Long, Integer> around) {
        double reach = 2 * JoinedOutline.TOLERANCE;
        long lastX = (long) Math.floor((p.x() + reach) / WIDE);
        long lastY = (long) Math.floor((p.y() + reach) / WIDE);
        int ends = 0;
        for (long x = (long) Math.floor((p.x() - reach) / WIDE); x <= lastX; x++) {
            for (long y = (long) Math.floor((p.y() - reach) / WIDE); y <= lastY; y++) {
                ends += around.getOrDefault(key(x, y), 0);
            }
        }
        return ends == 1;
    }

    /** The nearest other free end, or -1. */
    private int nearest(int node, Map<Long, List<Integer>> free) {
        Point p = places.get(node);
        int best = -1;
        double distance = JoinedOutline.TOLERANCE;
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                List<Integer> there = free.getOrDefault(cell(p, JoinedOutline.TOLERANCE, dx, dy), List.of());
                if (there.size() > CROWD) {
                    return -1;
                }
                for (int other : there) {
                    double away = places.get(other).distance(p);
                    if (other != node && away <= distance) {
                        best = other;
                        distance = away;
                    }
                }
            }
        }
        return best;
    }

    private static long cell(Point p, double size, int dx, int dy) {
        long x = (long) Math.floor(p.x() / size) + dx;
        long y = (long) Math.floor(p.y() / size) + dy;
        return key(x, y);
    }

    private static long key(long x, long y) {
        return x * 0x9E3779B97F4A7C15L + y * 0xC2B2AE3D27D4EB4FL;
    }
}
