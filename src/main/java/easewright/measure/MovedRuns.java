package easewright.measure;

import easewright.geom.Nearby;
import easewright.geom.Outline;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds which stretches of an outline lie elsewhere than they did. */
public final class MovedRuns {
    private static final int MOST_LOOKS = 16;

    /** Between two quarters, a curve that lies on the line at both, or off it at both, does so throughout. */
    private static final int QUARTERS = 4;

    /** Looks no closer together than this, mm. */
    private static final double STEP = 3;

    /** Where a line leaves the old one is told as exactly as that, mm: less cannot be seen beside the thickness of lines. */
    private static final double EDGE = 0.5;

    private MovedRuns() {}

    /**
     * The stretches of {@code after} that leave the line of {@code before}. Of a segment a sixteenth or 3 mm is looked at
     * together; the ends of what is found are told to half a millimetre.
     *
     * @param seen what is off by less is not seen, mm
     */
    public static List<Segment> between(Outline before, Outline after, double seen) {
        Set<Segment> old = new HashSet<>(before.segments());
        List<Segment> now = after.segments();
        List<Segment> moved = new ArrayList<>();
        // The end of the one before, which is the start of the next: what the old line has as well lies on it.
        boolean off = !old.contains(now.get(now.size() - 1))
                && !before.comesWithin(now.get(0).start(), seen);
        for (Segment segment : now) {
            off = !old.contains(segment) && addParts(segment, before.nearby(segment, seen), off, moved);
        }
        return List.copyOf(moved);
    }

    /**
     * Adds the parts that lie off the line: a hem that only became longer has moved at its end alone.
     *
     * @param starts whether its start does
     * @return whether its end does
     */
    private static boolean addParts(Segment segment, Nearby line, boolean starts, List<Segment> moved) {
        if (line.isEmpty()) {
            moved.add(segment);
            return true;
        }
        double reach = segment.start().distance(segment.end());
        int looks = (int) Math.max(1, Math.min(MOST_LOOKS, Math.ceil(reach / STEP)));
        boolean[] off = new boolean[looks + 1];
        off[0] = starts;
        off[looks] = !line.reaches(segment.end());
        look(segment, line, off, 0, looks);
        double from = -1;
        for (int i = 1; i <= looks; i++) {
            if ((off[i - 1] || off[i]) && from < 0) {
                from = off[i - 1] ? (double) (i - 1) / looks : edge(segment, line, i - 1, i, looks);
            } else if (!off[i - 1] && !off[i] && from >= 0) {
                moved.add(segment.between(from, edge(segment, line, i - 1, i - 2, looks)));
                from = -1;
            }
        }
        if (from >= 0) {
            moved.add(segment.between(from, off[looks] ? 1 : edge(segment, line, looks, looks - 1, looks)));
        }
        return off[looks];
    }

    /** Where between two looks a segment leaves the line, as a part of it: the last place that is known to lie on it. */
    private static double edge(Segment segment, Nearby line, int on, int off, int looks) {
        double lies = (double) on / looks;
        double leaves = (double) off / looks;
        double apart = segment.at(lies).distance(segment.at(leaves));
        while (apart > EDGE) {
            double middle = (lies + leaves) / 2;
            if (line.reaches(segment.at(middle))) {
                lies = middle;
            } else {
                leaves = middle;
            }
            apart /= 2;
        }
        return lies;
    }

    /** Looks between two places: at every quarter of the segment, and nearer only where it leaves the line. */
    private static void look(Segment segment, Nearby line, boolean[] off, int from, int to) {
        int looks = off.length - 1;
        if (to - from < 2) {
            return;
        }
        if (off[from] == off[to] && to - from <= looks / QUARTERS) {
            Arrays.fill(off, from + 1, to, off[from]);
            return;
        }
        int middle = (from + to) / 2;
        off[middle] = !line.reaches(segment.at((double) middle / looks));
        look(segment, line, off, from, middle);
        look(segment, line, off, middle, to);
    }
}
