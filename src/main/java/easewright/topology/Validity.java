package easewright.topology;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Whether an outline can be cut out: it must not meet itself. Worked out on the curves, not on a flattening. */
public final class Validity {
    private Validity() {}

    /** Whether the outline neither crosses nor touches itself. */
    public static boolean isSimple(Outline outline) {
        return meetings(outline).isEmpty();
    }

    /**
     * The points at which the outline crosses or touches itself, to 1e-9 mm, in order of their first places. Runs
     * that lie on one another are told by the ends of what they share.
     */
    public static List<Meeting> meetings(Outline outline) {
        return meetings(outline.segments());
    }

    static List<Meeting> meetings(List<Segment> closed) {
        List<Strand> strands = Strand.of(closed);
        List<Meeting> found = new ArrayList<>();
        if (!strands.isEmpty()) {
            Strand.boxes(strands).pairs(StrandMeetings.SAME, (i, j) -> pair(strands, i, j, found));
        }
        found.sort(Comparator.comparing(Meeting::first).thenComparing(Meeting::second));
        return distinct(found);
    }

    private static void pair(List<Strand> strands, int i, int j, List<Meeting> found) {
        Strand one = strands.get(i);
        Strand two = strands.get(j);
        boolean follows = j == i + 1;
        boolean precedes = i == 0 && j == strands.size() - 1;
        if ((follows && one.keepsOn(two)) || (precedes && two.keepsOn(one))) {
            return;
        }
        StrandMeetings.find(one, two, (t, u) -> {
            Point p = one.at(t);
            boolean atJoin = (follows
                            && p.distance(one.end()) < 1e-7
                            && two.at(u).distance(two.start()) < 1e-7)
                    || (precedes && p.distance(one.start()) < 1e-7 && two.at(u).distance(two.end()) < 1e-7);
            if (!atJoin) {
                found.add(new Meeting(one.place(t), two.place(u), p));
            }
        });
    }

    /**
     * Ends shared by two strands are found twice. Two that are the same have their first places close together in order,
     * or both at ends of segments: only those are compared, since lines that lie on one another meet in thousands of
     * places.
     */
    private static List<Meeting> distinct(List<Meeting> sorted) {
        List<Meeting> kept = new ArrayList<>();
        List<Meeting> atEnds = new ArrayList<>();
        for (Meeting meeting : sorted) {
            boolean atEnd = atEnd(meeting.first());
            boolean known = atEnd && atEnds.stream().anyMatch(k -> same(k, meeting));
            for (int i = kept.size() - 1; !known && i >= 0 && near(kept.get(i).first(), meeting.first()); i--) {
                known = same(kept.get(i), meeting);
            }
            if (!known) {
                kept.add(meeting);
                if (atEnd) {
                    atEnds.add(meeting);
                }
            }
        }
        return List.copyOf(kept);
    }

    private static boolean same(Meeting one, Meeting other) {
        return one.point().distance(other.point()) < 1e-7
                && near(one.first(), other.first())
                && near(one.second(), other.second());
    }

    /** Whether two places at the same point belong to the same passage: on one segment or on neighbours. */
    private static boolean near(Place a, Place b) {
        if (a.segment() == b.segment()) {
            return Math.abs(a.t() - b.t()) < 1e-3;
        }
        return atEnd(a) && atEnd(b);
    }

    private static boolean atEnd(Place place) {
        return place.t() > 0.999 || place.t() < 0.001;
    }
}
