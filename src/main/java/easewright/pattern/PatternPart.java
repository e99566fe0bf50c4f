package easewright.pattern;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Some pieces of a pattern, to be measured and changed as if they were all: those of one size, or of one side. Pieces
 * of no size belong to every size, and pieces of no side to either. What is left out stays what it is.
 */
public final class PatternPart {
    private final Pattern whole;
    private final Pattern alone;

    private PatternPart(Pattern whole, Pattern alone) {
        this.whole = whole;
        this.alone = alone;
    }

    /** The sizes that a pattern comes in, in the order of its pieces; empty where no piece has a size. */
    public static List<String> sizes(Pattern pattern) {
        Set<String> sizes = new LinkedHashSet<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.size().isPresent()) {
                sizes.add(piece.size().get());
            }
        }
        return List.copyOf(sizes);
    }

    /** Whether a pattern comes in more than one size, so that its pieces are never all of one garment. */
    public static boolean severalSizes(Pattern pattern) {
        return sizes(pattern).size() > 1;
    }

    /** All of it. */
    public static PatternPart whole(Pattern whole) {
        return new PatternPart(whole, whole);
    }

    /** The garment in one size, for its own wearer. */
    public static PatternPart ofSize(Pattern whole, String size) {
        PatternPart part = of(whole, p -> p.size().isEmpty() || p.size().get().equals(size));
        return new PatternPart(whole, part.alone.withBody(whole.body(Optional.of(size))));
    }

    /** Every garment that the pattern holds: one for each size, or the whole where it comes in one. */
    public static List<Pattern> garments(Pattern pattern) {
        if (!severalSizes(pattern)) {
            return List.of(pattern);
        }
        List<Pattern> garments = new ArrayList<>();
        for (String size : sizes(pattern)) {
            garments.add(ofSize(pattern, size).alone);
        }
        return garments;
    }

    /** The pieces that a condition holds for, with the levels marked on them and the seams between them. */
    static PatternPart of(Pattern whole, Predicate<Piece> taken) {
        List<Piece> in = new ArrayList<>();
        Set<String> here = new LinkedHashSet<>();
        Set<String> elsewhere = new LinkedHashSet<>();
        for (Piece piece : whole.pieces()) {
            boolean takes = taken.test(piece);
            if (takes) {
                in.add(piece);
            }
            for (LevelMark mark : piece.levels()) {
                (takes ? here : elsewhere).add(mark.level());
            }
        }
        if (in.size() == whole.pieces().size()) {
            return new PatternPart(whole, whole);
        }
        List<Level> levels = whole.levels().stream()
                .filter(l -> here.contains(l.name()) || !elsewhere.contains(l.name()))
                .toList();
        Pattern alone = whole.withPieces(in).withLevels(levels);
        List<Mate> mates = whole.mates().stream()
                .filter(m -> holds(alone, whole, m.first()) && holds(alone, whole, m.second()))
                .toList();
        return new PatternPart(whole, alone.withMates(mates));
    }

    /** Whether none of the edges is of a piece that is left out. */
    private static boolean holds(Pattern alone, Pattern whole, List<EdgeRef> edges) {
        for (EdgeRef edge : edges) {
            boolean known = whole.pieces().stream()
                    .anyMatch(p -> p.id().equals(edge.piece())
                            || p.name().equals(edge.piece())
                            || p.plainName().equals(edge.piece()));
            if (known && alone.piece(edge.piece()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** The part as a pattern of its own. */
    public Pattern alone() {
        return alone;
    }

    /**
     * The whole pattern with what became of the pieces of the part; everything else as it was.
     *
     * @param changed the part after a change
     */
    public Pattern back(Pattern changed) {
        Pattern now = whole;
        for (Piece piece : changed.pieces()) {
            now = now.withPiece(piece);
        }
        return now;
    }
}
