package easewright.alter;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;

/**
 * Something untrue in a pattern, and how it could be put right.
 *
 * @param finding        what is untrue, for people
 * @param size           the size in which it is untrue, where the pattern comes in several
 * @param truing         the change that puts it right, by itself
 * @param protectedEdges protected edges that it would redraw, as {@code piece/edge}; it was made with the user's leave to
 *                       do so, which has to be asked for first
 */
public record Proposal(Finding finding, Optional<String> size, Trued truing, List<String> protectedEdges) {
    public Proposal {
        protectedEdges = List.copyOf(protectedEdges);
    }

    /** In a pattern that comes in one size. */
    public Proposal(Finding finding, Trued truing, List<String> protectedEdges) {
        this(finding, Optional.empty(), truing, protectedEdges);
    }

    /**
     * The pattern with this put right and recorded.
     *
     * @throws Refusal if it cannot be, with the reason
     */
    public Altered apply(Pattern pattern) throws Refusal {
        return Within.of(size, truing).apply(pattern);
    }
}
