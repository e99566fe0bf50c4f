package easewright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A left and a right piece that a change on one side made of one that was cut alike for both: of a pair, or of a piece on
 * the fold, whose halves are joined without a seam where the fold was.
 *
 * @param drawn the one that was drawn, {@code copy} its mirror image
 * @param folds names of the edges, alike on both, that were the fold; empty where it was a pair
 */
public record SidePair(Piece drawn, Piece copy, List<String> folds) {
    public SidePair {
        folds = List.copyOf(folds);
    }

    /** All of a pattern, in the order of the drawn ones. */
    public static List<SidePair> of(Pattern pattern) {
        List<SidePair> pairs = new ArrayList<>();
        for (Piece drawn : pattern.pieces()) {
            if (drawn.side() != Side.BOTH) {
                Side other = drawn.side().other();
                String id = PieceCopy.id(drawn.id(), PieceCopy.ending(other));
                pattern.pieces().stream()
                        .filter(p -> p.side() == other && p.id().equals(id))
                        .findFirst()
                        .ifPresent(copy -> pairs.add(new SidePair(drawn, copy, folds(pattern, drawn, copy))));
            }
        }
        return pairs;
    }

    /** The one that a piece belongs to. */
    public static Optional<SidePair> with(Pattern pattern, Piece piece) {
        return piece.side() == Side.BOTH
                ? Optional.empty()
                : of(pattern).stream().filter(p -> p.has(piece)).findFirst();
    }

    /**
     * The piece that a piece was before: the one of its id, and of a copy that was made since the one that it is a copy
     * of, which lies elsewhere and the other way round. Empty where there was none.
     */
    public static Optional<Piece> before(Pattern before, Pattern after, Piece now) {
        return withId(before, now.id())
                .or(() -> with(after, now).flatMap(s -> withId(before, s.drawn().id())));
    }

    /** By id alone, since another piece may bear it as its name. */
    private static Optional<Piece> withId(Pattern pattern, String id) {
        return pattern.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** Whether two edges are not sewn but are the line where a fold was. */
    public static boolean isFold(Pattern pattern, Mate mate) {
        return of(pattern).stream().anyMatch(p -> p.folds.stream().anyMatch(e -> joins(pattern, mate, p, e)));
    }

    private static List<String> folds(Pattern pattern, Piece drawn, Piece copy) {
        SidePair pair = new SidePair(drawn, copy, List.of());
        return drawn.edges().stream()
                .map(Edge::name)
                .filter(e -> wasFold(drawn, e) && wasFold(copy, e))
                .filter(e -> pattern.mates().stream().anyMatch(m -> joins(pattern, m, pair, e)))
                .toList();
    }

    /** A fold becomes a centre line that has no allowance, and says so. */
    private static boolean wasFold(Piece piece, String edge) {
        return piece.edge(edge)
                .filter(e -> e.role() == EdgeRole.CENTRE && e.allowance().equals(OptionalDouble.of(0)))
                .isPresent();
    }

    private static boolean joins(Pattern pattern, Mate mate, SidePair pair, String edge) {
        if (mate.first().size() != 1 || mate.second().size() != 1 || mate.declaredEase() != 0) {
            return false;
        }
        EdgeRef first = mate.first().get(0);
        EdgeRef second = mate.second().get(0);
        return first.edge().equals(edge)
                && second.edge().equals(edge)
                && !id(pattern, first).equals(id(pattern, second))
                && pair.ids().contains(id(pattern, first))
                && pair.ids().contains(id(pattern, second));
    }

    private static String id(Pattern pattern, EdgeRef edge) {
        return pattern.piece(edge.piece()).map(Piece::id).orElse(edge.piece());
    }

    private List<String> ids() {
        return List.of(drawn.id(), copy.id());
    }

    public boolean has(Piece piece) {
        return ids().contains(piece.id());
    }

    /** Whether they are the halves of a piece that was cut on the fold, and are cut in one. */
    public boolean halves() {
        return !folds.isEmpty();
    }

    public Piece left() {
        return drawn.side() == Side.LEFT ? drawn : copy;
    }

    public Piece right() {
        return drawn.side() == Side.LEFT ? copy : drawn;
    }

    /** The other one of the two. */
    public Piece other(Piece piece) {
        return piece.id().equals(drawn.id()) ? copy : drawn;
    }

    /** What the one piece was called: "Front" of "Front left". */
    public String wholeName() {
        String word = " " + PieceCopy.ending(drawn.side()).substring(1);
        return drawn.name().endsWith(word) && drawn.name().length() > word.length()
                ? drawn.name().substring(0, drawn.name().length() - word.length())
                : drawn.plainName();
    }
}
