package easewright.geom;

import java.util.Arrays;

/**
 * Boxes around things that lie in a row, such as the segments of an outline, and around ever longer runs of them.
 * Neighbours in the row are neighbours on the table, so that nothing has to be sorted, and a search looks only into the
 * runs that can matter. Immutable.
 */
public final class BoxTree {
    private static final int FAN = 8;

    /** Four numbers a box: least x and y, greatest x and y; the things first, then runs of {@link #FAN}, and so on. */
    private final double[] boxes;

    /** By level: the number of the first box, and behind the last level the number of all boxes. */
    private final int[] levels;

    /** Takes the number of one of the things. */
    public interface Sink {
        void take(int index);
    }

    /** Takes the numbers of two of the things, the lower one first. */
    public interface PairSink {
        void take(int first, int second);
    }

    /**
     * @param edges four numbers for each thing: least x and y, greatest x and y, mm
     */
    public BoxTree(double[] edges) {
        int count = edges.length / 4;
        int all = count;
        int depth = 1;
        for (int n = count; n > 1; depth++) {
            n = runs(n);
            all += n;
        }
        levels = new int[depth + 1];
        boxes = Arrays.copyOf(edges, 4 * all);
        int from = 0;
        int n = count;
        for (int level = 1; level <= depth; level++) {
            int next = from + n;
            levels[level] = next;
            if (level < depth) {
                for (int i = 0; i < n; i++) {
                    widen(next + i / FAN, from + i, i % FAN == 0);
                }
                from = next;
                n = runs(n);
            }
        }
    }

    private static int runs(int things) {
        return (things + FAN - 1) / FAN;
    }

    private void widen(int run, int by, boolean first) {
        int to = 4 * run;
        int from = 4 * by;
        for (int k = 0; k < 2; k++) {
            boxes[to + k] = first ? boxes[from + k] : Math.min(boxes[to + k], boxes[from + k]);
            boxes[to + 2 + k] = first ? boxes[from + 2 + k] : Math.max(boxes[to + 2 + k], boxes[from + 2 + k]);
        }
    }

    int depth() {
        return levels.length - 1;
    }

    /** How many boxes a level has. */
    int size(int level) {
        return levels[level + 1] - levels[level];
    }

    /** The first box of the level below that lies in a box; one behind the last is {@link #end}. */
    static int begin(int index) {
        return index * FAN;
    }

    int end(int level, int index) {
        return Math.min((index + 1) * FAN, size(level - 1));
    }

    /** The square of the distance from a place to a box, 0 inside. */
    double squareGap(int level, int index, double x, double y) {
        int b = 4 * (levels[level] + index);
        double dx = Math.max(0, Math.max(boxes[b] - x, x - boxes[b + 2]));
        double dy = Math.max(0, Math.max(boxes[b + 1] - y, y - boxes[b + 3]));
        return dx * dx + dy * dy;
    }

    /**
     * Everything whose box comes as near as {@code slack} to the endless line through {@code through}, in order.
     *
     * @param unit direction of the line, of length 1
     */
    public void along(Point through, Point unit, double slack, Sink sink) {
        along(depth() - 1, 0, through, unit, slack, sink);
    }

    private void along(int level, int index, Point through, Point unit, double slack, Sink sink) {
        int b = 4 * (levels[level] + index);
        double x = (boxes[b] + boxes[b + 2]) / 2 - through.x();
        double y = (boxes[b + 1] + boxes[b + 3]) / 2 - through.y();
        double reach = Math.abs(unit.x()) * (boxes[b + 3] - boxes[b + 1]) / 2
                + Math.abs(unit.y()) * (boxes[b + 2] - boxes[b]) / 2;
        if (Math.abs(unit.x() * y - unit.y() * x) > reach + slack) {
            return;
        }
        if (level == 0) {
            sink.take(index);
            return;
        }
        int end = end(level, index);
        for (int i = begin(index); i < end; i++) {
            along(level - 1, i, through, unit, slack, sink);
        }
    }

    /** Everything whose box comes as near as {@code slack} to a box, in x and in y, in order. */
    public void near(double minX, double minY, double maxX, double maxY, double slack, Sink sink) {
        near(depth() - 1, 0, minX - slack, minY - slack, maxX + slack, maxY + slack, sink);
    }

    private void near(int level, int index, double minX, double minY, double maxX, double maxY, Sink sink) {
        int b = 4 * (levels[level] + index);
        if (boxes[b] > maxX || boxes[b + 2] < minX || boxes[b + 1] > maxY || boxes[b + 3] < minY) {
            return;
        }
        if (level == 0) {
            sink.take(index);
            return;
        }
        int end = end(level, index);
        for (int i = begin(index); i < end; i++) {
            near(level - 1, i, minX, minY, maxX, maxY, sink);
        }
    }

    /** All pairs whose boxes come as near to one another as {@code slack}, in x and in y. */
    public void pairs(double slack, PairSink sink) {
        pairs(depth() - 1, 0, 0, slack, sink);
    }

    private void pairs(int level, int one, int two, double slack, PairSink sink) {
        if (level == 0) {
            if (one != two) {
                sink.take(one, two);
            }
            return;
        }
        int endOne = end(level, one);
        int endTwo = end(level, two);
        for (int i = begin(one); i < endOne; i++) {
            // Of two runs that follow one another mostly only the last thing of one is near any of the other.
            if (one != two && !near(level - 1, i, level, two, slack)) {
                continue;
            }
            for (int j = one == two ? i : begin(two); j < endTwo; j++) {
                if (i == j ? level > 1 : near(level - 1, i, level - 1, j, slack)) {
                    pairs(level - 1, i, j, slack, sink);
                }
            }
        }
    }

    private boolean near(int levelOne, int one, int levelTwo, int two, double slack) {
        int a = 4 * (levels[levelOne] + one);
        int b = 4 * (levels[levelTwo] + two);
        return boxes[a] <= boxes[b + 2] + slack
                && boxes[b] <= boxes[a + 2] + slack
                && boxes[a + 1] <= boxes[b + 3] + slack
                && boxes[b + 1] <= boxes[a + 3] + slack;
    }

    /** Whether a box of one of the things meets a box of one of the other's; boxes that only touch meet. */
    public boolean meets(BoxTree other) {
        return meets(depth() - 1, 0, other, other.depth() - 1, 0);
    }

    private boolean meets(int level, int index, BoxTree other, int otherLevel, int otherIndex) {
        int a = 4 * (levels[level] + index);
        int b = 4 * (other.levels[otherLevel] + otherIndex);
        boolean near = boxes[a] <= other.boxes[b + 2]
                && other.boxes[b] <= boxes[a + 2]
                && boxes[a + 1] <= other.boxes[b + 3]
                && other.boxes[b + 1] <= boxes[a + 3];
        if (!near || (level == 0 && otherLevel == 0)) {
            return near;
        }
        if (level < otherLevel) {
            return other.meets(otherLevel, otherIndex, this, level, index);
        }
        int end = end(level, index);
        for (int i = begin(index); i < end; i++) {
            if (meets(level - 1, i, other, otherLevel, otherIndex)) {
                return true;
            }
        }
        return false;
    }
}
