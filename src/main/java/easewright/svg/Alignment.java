package easewright.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which of the old segments are still there, bit for bit and in the same order.
 *
 * @param changed the new segments; for a closed run, begun where most old ones keep their order
 * @param kept    for each old segment its index in {@code changed}, or -1
 */
record Alignment<T>(List<T> changed, int[] kept) {
    /** Follows the old list and takes the next equal one each time. */
    static <T> Alignment<T> of(List<T> old, List<T> changed, boolean closed) {
        Alignment<T> straight = new Alignment<>(changed, follow(old, changed));
        if (!closed || straight.count() == Math.min(old.size(), changed.size())) {
            return straight;
        }
        for (T segment : old) {
            int j = changed.indexOf(segment);
            if (j > 0) {
                List<T> turned = new ArrayList<>(changed.subList(j, changed.size()));
                turned.addAll(changed.subList(0, j));
                Alignment<T> other = new Alignment<>(turned, follow(old, turned));
                return other.count() > straight.count() ? other : straight;
            }
            if (j == 0) {
                return straight;
            }
        }
        return straight;
    }

    private static <T> int[] follow(List<T> old, List<T> changed) {
        Map<T, Deque<Integer>> places = new HashMap<>();
        for (int j = 0; j < changed.size(); j++) {
            places.computeIfAbsent(changed.get(j), k -> new ArrayDeque<>()).add(j);
        }
        int[] kept = new int[old.size()];
        Arrays.fill(kept, -1);
        int next = 0;
        for (int i = 0; i < kept.length; i++) {
            Deque<Integer> at = places.getOrDefault(old.get(i), new ArrayDeque<>());
            while (!at.isEmpty() && at.peek() < next) {
                at.poll();
            }
            if (!at.isEmpty()) {
                kept[i] = at.poll();
                next = kept[i] + 1;
            }
        }
        return kept;
    }

    private int count() {
        return (int) Arrays.stream(kept).filter(j -> j >= 0).count();
    }
}
