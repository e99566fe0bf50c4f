package easewright.topology;

import easewright.geom.Point;
import java.util.List;

/**
 * Finds the pairs of strands whose boxes meet. Strands that follow one another lie beside one another, so boxes around
 * halves of the line, quarters and so on rule out nearly all pairs; nothing has to be sorted, and on the outline of a
 * piece the work grows with the number of strands.
 */
final class StrandPairs {
    /** Takes a pair, the earlier strand first. */
    interface Sink {
        void pair(int first, int second);
    }

    private final Sink sink;
    private final int count;
    private final double[] left;
    private final double[] top;
    private final double[] right;
    private final double[] bottom;

    StrandPairs(List<Strand> strands, Sink sink) {
        this.sink = sink;
        count = strands.size();
        int nodes = Math.max(1, 4 * count);
        left = new double[nodes];
        top = new double[nodes];
        right = new double[nodes];
        bottom = new double[nodes];
        if (count > 0) {
            build(strands, 1, 0, count);
        }
    }

    private void build(List<Strand> strands, int node, int from, int to) {
        if (to - from == 1) {
            Point a = strands.get(from).start();
            Point b = strands.get(from).end();
            left[node] = Math.min(a.x(), b.x()) - StrandMeetings.SAME;
            right[node] = Math.max(a.x(), b.x()) + StrandMeetings.SAME;
            top[node] = Math.min(a.y(), b.y()) - StrandMeetings.SAME;
            bottom[node] = Math.max(a.y(), b.y()) + StrandMeetings.SAME;
            return;
        }
        int middle = (from + to) >>> 1;
        build(strands, 2 * node, from, middle);
        build(strands, 2 * node + 1, middle, to);
        left[node] = Math.min(left[2 * node], left[2 * node + 1]);
        right[node] = Math.max(right[2 * node], right[2 * node + 1]);
        top[node] = Math.min(top[2 * node], top[2 * node + 1]);
        bottom[node] = Math.max(bottom[2 * node], bottom[2 * node + 1]);
    }

    void all() {
        within(1, 0, count);
    }

    private void within(int node, int from, int to) {
        if (to - from < 2) {
            return;
        }
        int middle = (from + to) >>> 1;
        within(2 * node, from, middle);
        within(2 * node + 1, middle, to);
        between(2 * node, from, middle, 2 * node + 1, middle, to);
    }

    private void between(int one, int from, int to, int other, int otherFrom, int otherTo) {
        if (right[one] < left[other]
                || right[other] < left[one]
                || bottom[one] < top[other]
                || bottom[other] < top[one]) {
            return;
        }
        boolean single = to - from == 1;
        if (single && otherTo - otherFrom == 1) {
            sink.pair(from, otherFrom);
        } else if (single || otherTo - otherFrom > to - from) {
            int middle = (otherFrom + otherTo) >>> 1;
            between(one, from, to, 2 * other, otherFrom, middle);
            between(one, from, to, 2 * other + 1, middle, otherTo);
        } else {
            int middle = (from + to) >>> 1;
            between(2 * one, from, middle, other, otherFrom, otherTo);
            between(2 * one + 1, middle, to, other, otherFrom, otherTo);
        }
    }
}
