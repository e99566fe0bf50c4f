package easewright.alter;

import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A line parted as another one that runs about as it does: changes part a line beside an outline where it could not
 * follow that in one curve ({@link Shift#carryBeside}), and never join its parts again.
 */
final class AlikeParts {
    /** A line parted in more places than this has become another one. */
    private static final int MOST = 64;

    private final List<Segment> line;
    private final List<Segment> like;

    /** How many parts the other line has more. */
    private final int more;

    private AlikeParts(List<Segment> line, List<Segment> like) {
        this.line = line;
        this.like = like;
        this.more = like.size() - line.size();
    }

    /** The line in as many parts as the other one has; as it is, where that has fewer or far more. */
    static List<Segment> of(List<Segment> line, List<Segment> like) {
        AlikeParts parts = new AlikeParts(line, like);
        return line.isEmpty() || parts.more <= 0 || parts.more > MOST ? line : parts.parted();
    }

    private List<Segment> parted() {
        int[] before = before(ends(line), ends(like));
        List<Segment> parts = new ArrayList<>();
        for (int k = 0; k < line.size(); k++) {
            add(line.get(k), like.subList(k + before[k], k + 1 + before[k + 1]), parts);
        }
        return parts;
    }

    /** How far along the whole each part ends, as a share of it. */
    private static double[] ends(List<Segment> parts) {
        double[] ends = new double[parts.size()];
        double along = 0;
        for (int i = 0; i < ends.length; i++) {
            along += parts.get(i).length();
            ends[i] = along;
        }
        for (int i = 0; along > 0 && i < ends.length; i++) {
            ends[i] /= along;
        }
        return ends;
    }

    /** How many places in which the other line alone is parted lie before each part, so that the ends lie most alike. */
    private int[] before(double[] own, double[] others) {
        double[] cost = new double[more + 1];
        Arrays.fill(cost, 1, more + 1, Double.POSITIVE_INFINITY);
        int[][] from = new int[own.length + 1][more + 1];
        for (int k = 1; k <= own.length; k++) {
            double[] next = new double[more + 1];
            int best = 0;
            for (int s = 0; s <= more; s++) {
                best = cost[s] < cost[best] ? s : best;
                from[k][s] = best;
                next[s] = cost[best] + Math.abs(own[k - 1] - others[k - 1 + s]);
            }
            cost = next;
        }
        int[] before = new int[own.length + 1];
        before[own.length] = more;
        for (int k = own.length; k > 0; k--) {
            before[k - 1] = from[k][before[k]];
        }
        return before;
    }

    /** Adds a part in as many as there are in its stead, of lengths in the same proportion. */
    private static void add(Segment whole, List<Segment> like, List<Segment> parts) {
        double[] ends = ends(like);
        double from = 0;
        for (int i = 0; i < ends.length; i++) {
            boolean last = i == ends.length - 1;
            double to = last ? 1 : whole.parameterAtLength(whole.length() * ends[i]);
            parts.add(from == 0 && last ? whole : whole.between(from, to));
            from = to;
        }
    }
}
