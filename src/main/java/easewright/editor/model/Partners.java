package easewright.editor.model;

import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Seams that are left out of a change, although what they are sewn to takes part. */
public final class Partners {
    private Partners() {}

    /** Edges at the level that are left out and sewn to one that takes part. */
    public static List<EdgeRef> leftOut(Desk desk) {
        return desk.garment().mates().stream()
                .flatMap(m -> leftOut(desk, m).stream())
                .distinct()
                .toList();
    }

    /** Those of one seam; empty where both its sides take part, or neither does. */
    static List<EdgeRef> leftOut(Desk desk, Mate mate) {
        Set<EdgeRef> out = desk.wanted().map(Wanted::leftOut).orElse(Set.of());
        if (out.isEmpty()) {
            return List.of();
        }
        Pattern garment = desk.garment();
        List<EdgeRef> taking = desk.takingHolds().stream().map(Hold::edge).toList();
        boolean first = taking.stream().anyMatch(e -> has(garment, mate.first(), e));
        boolean second = taking.stream().anyMatch(e -> has(garment, mate.second(), e));
        if (first == second) {
            return List.of();
        }
        List<EdgeRef> other = first ? mate.second() : mate.first();
        return out.stream().filter(e -> has(garment, other, e)).toList();
    }

    /** Whether an edge is one of a side, by whichever name its piece is called there. */
    static boolean has(Pattern pattern, List<EdgeRef> side, EdgeRef edge) {
        String id = id(pattern, edge);
        return side.stream()
                .anyMatch(r -> r.edge().equals(edge.edge()) && id(pattern, r).equals(id));
    }

    private static String id(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).map(Piece::id).orElse(ref.piece());
    }

    /** The wish with these taking part as well. */
    public static Wanted taking(Wanted wanted, List<EdgeRef> edges) {
        Set<EdgeRef> out = new HashSet<>(wanted.leftOut());
        edges.forEach(out::remove);
        return wanted.withLeftOut(out);
    }

    /** What the press says that lets them take part. */
    public static String words(Desk desk, List<EdgeRef> edges) {
        List<String> names = edges.stream().map(e -> HereWords.seam(desk, e)).toList();
        return desk.words().of("editor.here.take-in", java.util.Map.of("seams", names));
    }
}
