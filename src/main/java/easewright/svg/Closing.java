package easewright.svg;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** Decides whether an outline whose ends do not quite meet was meant to close. */
final class Closing {
    /** Ends this near are taken to meet, mm: less than any pen or cutter shows. */
    static final double MEET = 0.01;

    /** A narrower gap would be told as 0, in centimetres or in inches: half of 1/100 in, mm. */
    static final double TOLD = 0.127;

    /**
     * Ends of one line up to this far apart are taken to meet too, with a caution, if the line is much longer, mm: as
     * near as a hand comes back that traces with a mouse. Of several lines it would not be plain which ends are meant.
     */
    private static final double FORGIVEN = 1;

    /** How many times longer than the gap the line must be, so that a small open mark stays open. */
    private static final double MUCH_LONGER = 200;

    private Closing() {}

    static SubPath of(SubPath drawn, Element source, Notes notes) {
        List<Segment> segments = drawn.segments();
        int last = segments.size() - 1;
        Point start = segments.get(0).start();
        double gap = segments.get(last).end().distance(start);
        if (drawn.closed() || last == 0 && gap > MEET) {
            return drawn;
        }
        if (gap <= MEET || gap <= FORGIVEN && longerThan(segments, gap * MUCH_LONGER)) {
            Segment joined = ParsedPath.ending(segments.get(last), start);
            if (!joined.hasLength()) {
                return drawn;
            }
            List<Segment> closed = new ArrayList<>(segments);
            closed.set(last, joined);
            if (gap > ParsedPath.ROUNDING) {
                notes.add(Finding.of(
                                gap < TOLD ? "outline-closed" : "outline-closed-over-gap",
                                gap > MEET ? Severity.CAUTION : Severity.NOTE,
                                ShapeNames.called(source))
                        .with("gap", gap));
            }
            return new SubPath(closed, true);
        }
        return drawn;
    }

    private static boolean longerThan(List<Segment> segments, double length) {
        double chords = 0;
        for (Segment segment : segments) {
            chords += segment.start().distance(segment.end());
        }
        return chords > length;
    }
}
