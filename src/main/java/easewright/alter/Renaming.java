package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.SetAside;
import easewright.pattern.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Other names for what is marked. All that speaks of it goes along, the records of changes too: they could not be made
 * anew otherwise.
 *
 * @param pieces for each piece, by its id, its edges, darts and notches that are called otherwise
 * @param seams  the seams that are, by their present names
 */
public record Renaming(Map<String, OnPiece> pieces, Map<String, String> seams) {
    /** New names by present ones. */
    record OnPiece(Map<String, String> edges, Map<String, String> darts, Map<String, String> notches) {
        boolean isNone() {
            return edges.isEmpty() && darts.isEmpty() && notches.isEmpty();
        }
    }

    /** An edge, and with it that of the copy for the other side, if the piece has one. */
    public static Pattern edge(Pattern pattern, Piece piece, String old, String now) {
        OnPiece names = new OnPiece(Map.of(old, now), Map.of(), Map.of());
        return withCopy(
                pattern,
                piece,
                names,
                p -> p.edge(old).isPresent() && p.edge(now).isEmpty());
    }

    /** A dart, likewise. */
    public static Pattern dart(Pattern pattern, Piece piece, String old, String now) {
        OnPiece names = new OnPiece(Map.of(), Map.of(old, now), Map.of());
        return withCopy(
                pattern,
                piece,
                names,
                p -> p.darts().stream().noneMatch(d -> d.name().equals(now)));
    }

    /** Every notch of that name on a piece, likewise. */
    public static Pattern notch(Pattern pattern, Piece piece, String old, String now) {
        return withCopy(pattern, piece, new OnPiece(Map.of(), Map.of(), Map.of(old, now)), p -> true);
    }

    /** A seam. */
    public static Pattern seam(Pattern pattern, String old, String now) {
        return new Renaming(Map.of(), Map.of(old, now)).of(pattern);
    }

    private static Pattern withCopy(Pattern pattern, Piece piece, OnPiece names, Predicate<Piece> fits) {
        Map<String, OnPiece> all = new LinkedHashMap<>();
        all.put(piece.id(), names);
        pattern.pieces().stream()
                .filter(other -> isCopy(piece, other) || isCopy(other, piece))
                .filter(fits)
                .forEach(other -> all.put(other.id(), names));
        return new Renaming(all, Map.of()).of(pattern);
    }

    /** Whether a piece is what a change for one side made of another. */
    static boolean isCopy(Piece piece, Piece copy) {
        return piece.side() != Side.BOTH
                && copy.side() == piece.side().other()
                && copy.id().equals(PieceCopy.id(piece.id(), PieceCopy.ending(copy.side())));
    }

    /** A pattern with these names. */
    Pattern of(Pattern pattern) {
        UnaryOperator<ChangeNote> notes = new RenamedNotes(this, pattern)::of;
        return pattern.withPieces(pattern.pieces().stream()
                        .map(p -> pieces.containsKey(p.id()) ? piece(p, pieces.get(p.id())) : p)
                        .toList())
                .withMates(pattern.mates().stream().map(m -> mate(pattern, m)).toList())
                .withChanges(pattern.changes().stream().map(notes).toList())
                .withAside(pattern.aside().stream()
                        .map(a -> new SetAside(a.before(), notes.apply(a.note())))
                        .toList());
    }

    private static Piece piece(Piece piece, OnPiece names) {
        return piece.toBuilder()
                .edges(piece.edges().stream()
                        .map(e -> new Edge(
                                called(names.edges(), e.name()),
                                e.role(),
                                e.from(),
                                e.to(),
                                e.isProtected(),
                                e.allowance()))
                        .toList())
                .levels(piece.levels().stream()
                        .map(l -> level(l, names.edges()))
                        .toList())
                .darts(piece.darts().stream()
                        .map(d -> new Dart(
                                called(names.darts(), d.name()),
                                d.mouth1(),
                                d.mouth2(),
                                d.point(),
                                d.otherPoint(),
                                d.edge().map(e -> called(names.edges(), e))))
                        .toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(called(names.notches(), n.name()), n.at()))
                        .toList())
                .build();
    }

    private static LevelMark level(LevelMark mark, Map<String, String> edges) {
        return mark.along().filter(edges::containsKey).isEmpty()
                ? mark
                : mark.placed(mark.through(), mark.along().map(edges::get), mark.turn(), mark.reference());
    }

    static String called(Map<String, String> names, String name) {
        return names.getOrDefault(name, name);
    }

    private Mate mate(Pattern pattern, Mate mate) {
        return new Mate(
                called(seams, mate.name()),
                mate.first().stream().map(e -> ref(pattern, e)).toList(),
                mate.second().stream().map(e -> ref(pattern, e)).toList(),
                mate.declaredEase());
    }

    private EdgeRef ref(Pattern pattern, EdgeRef ref) {
        return onPiece(pattern, ref.piece())
                .map(names -> new EdgeRef(ref.piece(), called(names.edges(), ref.edge()), ref.times()))
                .orElse(ref);
    }

    /** A name may mean the piece in each of its sizes; then only what is called otherwise on all of them is. */
    Optional<OnPiece> onPiece(Pattern pattern, String idOrName) {
        if (pieces.containsKey(idOrName)) {
            return Optional.of(pieces.get(idOrName));
        }
        List<Piece> meant =
                pattern.pieces().stream().filter(p -> p.isCalled(idOrName)).toList();
        boolean all = !meant.isEmpty() && meant.stream().allMatch(p -> pieces.containsKey(p.id()));
        return all ? Optional.of(pieces.get(meant.get(0).id())) : Optional.empty();
    }
}
