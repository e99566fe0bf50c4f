package easewright.svg;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Deals a changed outline out again to the loose lines that draw it. Segments that are still there stay on their
 * line, with the very ends that were drawn; where both neighbours of a joint have changed, the joint goes to the new
 * corner nearest to the old one. Together the lines always draw the whole changed outline.
 */
final class DealtOutline {
    private final JoinedOutline joined;
    private final List<Segment> old;
    private final List<Segment> now;
    private final int[] kept;

    private DealtOutline(JoinedOutline joined, List<Segment> changed) {
        this.joined = joined;
        this.old = joined.outline().segments();
        Alignment<Segment> alignment = Alignment.of(old, changed, true);
        this.now = alignment.changed();
        this.kept = alignment.kept();
    }

    /** New segments for each part, in the direction in which it is drawn; empty if some line would be left without. */
    static Optional<List<List<Segment>>> of(JoinedOutline joined, List<Segment> changed, List<DrawnShape> shapes) {
        return new DealtOutline(joined, changed).deal(shapes);
    }

    private Optional<List<List<Segment>>> deal(List<DrawnShape> shapes) {
        int n = joined.parts().size();
        int[] joints = new int[n + 1];
        for (int i = 0; i < n; i++) {
            joints[i] = joint(joined.parts().get(i).from());
        }
        joints[n] = joints[0] + now.size();
        for (int i = 1; i < n; i++) {
            // The new outline may begin inside a line.
            joints[i] += joints[i] < joints[0] ? now.size() : 0;
        }
        List<List<Segment>> dealt = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (joints[i + 1] <= joints[i]) {
                return Optional.empty();
            }
            dealt.add(line(joined.parts().get(i), joints[i], joints[i + 1], shapes));
        }
        return Optional.of(dealt);
    }

    /** Number of the new segment that begins at the joint before an old one. */
    private int joint(int index) {
        int n = old.size();
        int before = Math.floorMod(index - 1, n);
        if (kept[index] >= 0) {
            return kept[index];
        }
        if (kept[before] >= 0) {
            return (kept[before] + 1) % now.size();
        }
        int first = 1;
        while (first < n && kept[Math.floorMod(index - 1 - first, n)] < 0) {
            first++;
        }
        int last = 1;
        while (last < n && kept[(index + last) % n] < 0) {
            last++;
        }
        if (first >= n) {
            return now.size() == n ? index : nearest(old.get(index).start(), 0, now.size());
        }
        // The old stretch without a kept segment holds first segments before the joint and last after it.
        int from = (kept[Math.floorMod(index - 1 - first, n)] + 1) % now.size();
        int length = Math.floorMod(kept[(index + last) % n] - from, now.size());
        return length == first + last
                ? (from + first) % now.size()
                : nearest(old.get(index).start(), from, length + 1);
    }

    private int nearest(Point corner, int from, int count) {
        int best = from % now.size();
        for (int k = 0; k < count; k++) {
            int j = (from + k) % now.size();
            if (now.get(j).start().distance(corner) < now.get(best).start().distance(corner)) {
                best = j;
            }
        }
        return best;
    }

    private List<Segment> line(JoinedOutline.Part part, int from, int to, List<DrawnShape> shapes) {
        List<Segment> drawn =
                shapes.get(part.shape()).subPaths().get(part.subPath()).segments();
        List<Segment> own = part.reversed() ? JoinedOutline.reversed(drawn) : drawn;
        List<Segment> line = new ArrayList<>();
        for (int j = from; j < to; j++) {
            Segment segment = now.get(j % now.size());
            Segment asDrawn = segment;
            for (int i = part.from(); i < part.to(); i++) {
                if (kept[i] == j % now.size()) {
                    asDrawn = own.get(i - part.from());
                }
            }
            line.add(asDrawn);
        }
        return part.reversed() ? JoinedOutline.reversed(meeting(line)) : meeting(line);
    }

    /** A gap that was closed by leading an end stays at the end of the line, never inside it. */
    private static List<Segment> meeting(List<Segment> line) {
        List<Segment> met = new ArrayList<>(line);
        for (int i = 0; i + 1 < met.size(); i++) {
            if (!met.get(i).end().equals(met.get(i + 1).start())) {
                met.set(i, ParsedPath.ending(met.get(i), met.get(i + 1).start()));
            }
        }
        return met;
    }
}
