package easewright.measure;

import easewright.geom.Outline;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds which stretches of an outline lie elsewhere than they did. */
public final class MovedRuns {
    private static final int MOST_LOOKS = 16;

    /** Looks no closer together than this, mm. */
    private static final double STEP = 3;

    private MovedRuns() {}

    /**
     * The stretches of {@code after} that leave the line of {@code before}, to a sixteenth of a segment or 3 mm.
     *
     * @param seen what is off by less is not seen, mm
     */
    public static List<Segment> between(Outline before, Outline after, double seen) {
        Set<Segment> old = new HashSet<>(before.segments());
        List<Segment> moved = new ArrayList<>();
        for (Segment segment : after.segments()) {
            if (!old.contains(segment)) {
                addParts(segment, before, seen, moved);
            }
        }
        return List.copyOf(moved);
    }

    /** Adds the parts that lie off the line: a hem that only became longer has moved at its end alone. */
    private static void addParts(Segment segment, Outline line, double seen, List<Segment> moved) {
        double reach = segment.start().distance(segment.end());
        int looks = (int) Math.max(1, Math.min(MOST_LOOKS, Math.ceil(reach / STEP)));
        double from = -1;
        boolean wasOff = off(segment, line, seen, 0);
        for (int i = 1; i <= looks; i++) {
            boolean isOff = off(segment, line, seen, (double) i / looks);
            if ((wasOff || isOff) && from < 0) {
                from = (double) (i - 1) / looks;
            } else if (!wasOff && !isOff && from >= 0) {
                moved.add(segment.between(from, (double) (i - 1) / looks));
                from = -1;
            }
            wasOff = isOff;
        }
        if (from >= 0) {
            moved.add(segment.between(from, 1));
        }
    }

    private static boolean off(Segment segment, Outline line, double seen, double t) {
        return !line.comesWithin(segment.at(t), seen);
    }
}
