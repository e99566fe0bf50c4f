package easewright.svg;

import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    /** What still rests when the pattern is as it is now; places at another scale are worth nothing. */
    Resting beside(Pattern now) {
        Optional<Pattern> left =
                pattern.filter(p -> p.scale().equals(now.scale())).map(p -> beside(p, now));
        return new Resting(left.filter(p -> !p.pieces().isEmpty()), kept);
    }

    private static Pattern beside(Pattern resting, Pattern now) {
        Set<String> there = new HashSet<>(now.noPieces());
        now.pieces().forEach(p -> {
            there.add(p.id());
            p.riders().stream().map(Rider::id).forEach(there::add);
        });
        return only(
                resting,
                resting.pieces().stream().filter(p -> !there.contains(p.id())).toList());
    }

    /** Some pieces of a pattern, with what belongs to them. */
    static Pattern only(Pattern all, List<Piece> pieces) {
        Pattern some = Pattern.bare(pieces, all.scale());
        Set<String> levels = pieces.stream()
                .flatMap(p -> p.levels().stream())
                .map(LevelMark::level)
                .collect(Collectors.toSet());
        List<Level> marked =
                all.levels().stream().filter(l -> levels.contains(l.name())).toList();
        List<Mate> sewn = all.mates().stream()
                .filter(m -> Stream.concat(m.first().stream(), m.second().stream())
                        .anyMatch(ref -> pieces.stream().anyMatch(p -> isMeant(p, ref))))
                .toList();
        return some.withLevels(marked).withMates(sewn);
    }

    private static boolean isMeant(Piece piece, EdgeRef ref) {
        return ref.piece().equals(piece.id())
                || ref.piece().equals(piece.name())
                || ref.piece().equals(piece.plainName());
    }
}
