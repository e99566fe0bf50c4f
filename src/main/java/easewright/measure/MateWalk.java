package easewright.measure;

import easewright.pattern.Finding;
import easewright.pattern.Mate;
import java.util.List;
import java.util.Optional;

/**
 * Two mated seams walked against each other: sewn lengths, mm.
 *
 * @param drift   first − second − declared ease: what does not fit
 * @param notches notches of the same name on both seams. Walking starts at the first seam's start, and on the second
 *                at that end from which the notches meet best
 * @param size    the size in which they are sewn, where the pattern comes in several
 */
public record MateWalk(
        Mate mate, Optional<String> size, double first, double second, double drift, List<NotchMeeting> notches) {
    public MateWalk {
        notches = List.copyOf(notches);
    }

    /** A finding about this seam: with its name, and with the size where there are several. */
    public Finding named(Finding finding) {
        Finding named = finding.with("mate", mate.name());
        return size.map(s -> named.with("size", s)).orElse(named);
    }

    /** Whether the other one is the same seam of the same size. */
    public boolean sameAs(MateWalk other) {
        return mate.name().equals(other.mate.name()) && size.equals(other.size);
    }
}
