package easewright.alter;

import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The names that marks have now, given to an earlier state of the same pattern: what was renamed since is still known for
 * the same edge, dart, notch or seam.
 */
final class NamesNow {
    private NamesNow() {}

    /**
     * An earlier state of a pattern with the names that are there now, as far as it can be told which is which: by the
     * order in which a piece has its edges, darts and notches, and by the edges that a seam sews.
     */
    static Pattern of(Pattern then, Pattern now) {
        Map<String, Renaming.OnPiece> pieces = new LinkedHashMap<>();
        for (Piece piece : then.pieces()) {
            withId(now, piece.id())
                    .map(is -> between(piece, is))
                    .filter(n -> !n.isNone())
                    .ifPresent(names -> pieces.put(piece.id(), names));
        }
        Pattern called = pieces.isEmpty() ? then : new Renaming(pieces, Map.of()).of(then);
        Map<String, String> seams = new LinkedHashMap<>();
        for (Mate mate : called.mates()) {
            now.mates().stream()
                    .filter(m -> sewsTheSame(called, mate, now, m) && !isParted(called, mate, now))
                    .map(Mate::name)
                    .filter(name -> !name.equals(mate.name()))
                    .findFirst()
                    .ifPresent(name -> seams.put(mate.name(), name));
        }
        return seams.isEmpty() ? called : new Renaming(Map.of(), seams).of(called);
    }

    private static Renaming.OnPiece between(Piece then, Piece now) {
        return new Renaming.OnPiece(
                between(
                        then.edges().stream().map(Edge::name).toList(),
                        now.edges().stream().map(Edge::name).toList()),
                between(
                        then.darts().stream().map(Dart::name).toList(),
                        now.darts().stream().map(Dart::name).toList()),
                between(
                        then.notches().stream().map(Notch::name).toList(),
                        now.notches().stream().map(Notch::name).toList()));
    }

    private static Map<String, String> between(List<String> then, List<String> now) {
        Map<String, String> names = new LinkedHashMap<>();
        if (then.size() == now.size()) {
            for (int i = 0; i < then.size(); i++) {
                if (!then.get(i).equals(now.get(i))) {
                    names.put(then.get(i), now.get(i));
                }
            }
        }
        return names;
    }

    /** Whether two seams, each of its pattern, sew the same edges. */
    static boolean sewsTheSame(Pattern one, Mate mate, Pattern other, Mate otherMate) {
        return ids(one, mate.first()).equals(ids(other, otherMate.first()))
                && ids(one, mate.second()).equals(ids(other, otherMate.second()));
    }

    /** Whether a piece that is sewn there was made into a left and a right one: the seam of one side is not the whole one. */
    private static boolean isParted(Pattern then, Mate mate, Pattern now) {
        return Stream.of(mate.first(), mate.second())
                .flatMap(List::stream)
                .flatMap(e -> then.piece(e.piece()).stream())
                .anyMatch(was -> withId(now, was.id())
                        .filter(is -> is.side() == was.side())
                        .isEmpty());
    }

    /** Edges by the ids of their pieces: in a file they may stand by name. */
    private static List<EdgeRef> ids(Pattern pattern, List<EdgeRef> edges) {
        return edges.stream()
                .map(e -> new EdgeRef(pattern.piece(e.piece()).map(Piece::id).orElse(e.piece()), e.edge(), e.times()))
                .toList();
    }

    private static Optional<Piece> withId(Pattern pattern, String id) {
        return pattern.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
