package easewright.svg;

import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Marks of pieces that lie in layers which are not read now, such as other sizes of a nest. They are kept in the file beside
 * those of the pattern, and are there again when their layer is.
 *
 * @param pattern the pieces, with the levels that lie on them and the seams that they are sewn in
 * @param kept    elements among them that could not be used
 */
record Resting(Optional<Pattern> pattern, List<KeptMark> kept) {
    static final Resting NONE = new Resting(Optional.empty(), List.of());

    Resting {
        kept = List.copyOf(kept);
    }

    /** The same with other pieces, where somebody said which. */
    Resting or(Optional<Pattern> said) {
        return said.isPresent() ? new Resting(said, kept) : this;
    }

    /** What still rests when the pattern is as it is now, at whose scale it must be. */
    Resting beside(Pattern now) {
        Set<String> there = new HashSet<>(now.noPieces());
        now.pieces().forEach(p -> {
            there.add(p.id());
            p.riders().stream().map(Rider::id).forEach(there::add);
        });
        Optional<Pattern> left = pattern.map(resting -> resting.only(
                resting.pieces().stream().filter(p -> !there.contains(p.id())).toList()));
        return new Resting(left.filter(p -> !p.pieces().isEmpty()), kept);
    }
}
