package easewright.suggest;

import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What seams are called: after their edges, and where several would be called the same, after their pieces too, as in
 * "yoke seam (back)". Only where the pieces are the same as well are they numbered.
 */
public final class SeamNames {
    private final Pattern pattern;
    private final List<Mate> found;

    private SeamNames(List<Mate> found, Pattern pattern) {
        this.found = found;
        this.pattern = pattern;
    }

    /** What two edges sewn together are called by themselves. */
    public static String stem(EdgeRef one, EdgeRef two) {
        return one.edge().equals(two.edge()) ? one.edge() : one.edge() + " and " + two.edge();
    }

    /** The name of one more seam, which by itself would be called as it is. */
    public static String of(Mate found, Pattern pattern) {
        return of(List.of(found), pattern).get(0);
    }

    /** The names of several more seams, none of which another one of the pattern has. */
    static List<String> of(List<Mate> found, Pattern pattern) {
        SeamNames names = new SeamNames(found, pattern);
        Set<String> used = new HashSet<>();
        pattern.mates().forEach(m -> used.add(m.name()));
        List<String> all = new ArrayList<>();
        for (Mate mate : found) {
            String wanted = names.wanted(mate);
            String unique = wanted;
            for (int i = 2; !used.add(unique); i++) {
                unique = wanted + " " + i;
            }
            all.add(unique);
        }
        return all;
    }

    private List<Mate> alike(Mate mate) {
        return Stream.concat(pattern.mates().stream(), found.stream())
                .filter(m -> m != mate && m.name().equals(mate.name()))
                .toList();
    }

    private String wanted(Mate mate) {
        List<Mate> alike = alike(mate);
        if (alike.isEmpty()) {
            return mate.name();
        }
        String half = half(mate);
        if (!half.isEmpty() && alike.stream().noneMatch(m -> half(m).equals(half))) {
            return mate.name() + " (" + half + ")";
        }
        Set<String> own = ownPieces(mate);
        return alike.stream().anyMatch(m -> ownPieces(m).equals(own))
                ? mate.name()
                : mate.name() + " (" + String.join(" and ", own) + ")";
    }

    /** Whether its pieces, other than those that it shares with its like, are all of the front or of the back. */
    private String half(Mate mate) {
        Set<String> own = ownPieces(mate);
        boolean back = own.stream().allMatch(name -> Vocabulary.has(name, "back"));
        boolean front = own.stream().allMatch(name -> Vocabulary.has(name, "front"));
        return back == front ? "" : back ? "back" : "front";
    }

    /** The names of its pieces but for those that all its like have too. */
    private Set<String> ownPieces(Mate mate) {
        Set<String> all = pieces(mate);
        Set<String> own = new LinkedHashSet<>(all);
        Set<String> shared = new HashSet<>(all);
        alike(mate).forEach(m -> shared.retainAll(pieces(m)));
        own.removeAll(shared);
        return own.isEmpty() ? all : own;
    }

    private Set<String> pieces(Mate mate) {
        Set<String> names = new LinkedHashSet<>();
        Stream.of(mate.first(), mate.second())
                .flatMap(List::stream)
                .forEach(e ->
                        names.add(pattern.piece(e.piece()).map(Piece::plainName).orElse(e.piece())));
        return names;
    }
}
