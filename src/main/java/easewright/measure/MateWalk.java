package easewright.measure;

import easewright.pattern.Mate;
import java.util.List;

/**
 * Two mated seams walked against each other: sewn lengths, mm.
 *
 * @param drift   first − second − declared ease: what does not fit
 * @param notches notches of the same name on both seams. Walking starts at the first seam's start, and on the second
 *                at that end from which the notches meet best
 */
public record MateWalk(Mate mate, double first, double second, double drift, List<NotchMeeting> notches) {
    public MateWalk {
        notches = List.copyOf(notches);
    }
}
