package easewright.editor.model;

import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.PieceKind;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** In which sizes of a nest the same may be done as in the one at work, and in which it is. */
public final class AlsoIn {
    private AlsoIn() {}

    /**
     * The other sizes that have a piece like one of those about to be changed, in the order of the pattern; none where
     * it comes in one size.
     */
    public static List<String> offered(Desk desk) {
        return desk.wanted().map(w -> offered(desk.pattern(), desk.size(), w)).orElse(List.of());
    }

    private static List<String> offered(Pattern pattern, Optional<String> work, Wanted wanted) {
        if (work.isEmpty()) {
            return List.of();
        }
        Set<PieceKind> here = kinds(pattern, work.get(), Optional.of(wanted.level()));
        if (here.isEmpty()) {
            here = kinds(pattern, work.get(), Optional.empty());
        }
        Set<String> sizes = new LinkedHashSet<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.size().filter(s -> !s.equals(work.get())).isPresent() && here.contains(piece.kind())) {
                sizes.add(piece.size().get());
            }
        }
        return List.copyOf(sizes);
    }

    /** The pieces of a size that lie at a level, or all of them. */
    private static Set<PieceKind> kinds(Pattern pattern, String size, Optional<String> level) {
        Set<PieceKind> kinds = new HashSet<>();
        for (Piece piece : pattern.pieces()) {
            boolean there = level.isEmpty() || piece.level(level.get()).isPresent();
            if (piece.size().equals(Optional.of(size)) && there) {
                kinds.add(piece.kind());
            }
        }
        return kinds;
    }

    /**
     * All sizes in which what is wanted is done, in the order of the pattern: that at work and those chosen beside it;
     * none where the pattern comes in one.
     */
    static List<String> taking(Pattern pattern, Optional<String> work, Wanted wanted) {
        if (work.isEmpty() || wanted.alsoIn().isEmpty()) {
            return work.stream().toList();
        }
        List<String> offered = offered(pattern, work, wanted);
        return PatternPart.sizes(pattern).stream()
                .filter(s -> work.get().equals(s) || wanted.alsoIn().contains(s) && offered.contains(s))
                .toList();
    }
}
