package easewright.editor.mark;

import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Keeps what speaks of an edge right when the edge is renamed, parted, joined or taken away. */
final class EdgeRefs {
    private EdgeRefs() {}

    private static boolean means(EdgeRef ref, Piece piece, String edge) {
        return ref.edge().equals(edge)
                && (ref.piece().equals(piece.id()) || ref.piece().equals(piece.name()));
    }

    /** Everything that spoke of the old edge speaks of the new one. */
    static Pattern renamed(Pattern pattern, Piece piece, String old, String now) {
        Piece present = EdgeEdits.piece(pattern, piece.id());
        Piece changed = present.toBuilder()
                .levels(present.levels().stream()
                        .map(l -> l.along().equals(Optional.of(old)) ? along(l, now) : l)
                        .toList())
                .darts(present.darts().stream()
                        .map(d -> d.edge().equals(Optional.of(old)) ? on(d, now) : d)
                        .toList())
                .build();
        return mates(
                pattern.withPiece(changed),
                ref -> means(ref, piece, old) ? List.of(new EdgeRef(ref.piece(), now, ref.times())) : List.of(ref));
    }

    /** What is sewn to an edge is sewn to both its parts. */
    static Pattern parted(Pattern pattern, Piece piece, String first, String second) {
        return mates(
                pattern,
                ref -> means(ref, piece, first)
                        ? List.of(ref, new EdgeRef(ref.piece(), second, ref.times()))
                        : List.of(ref));
    }

    /** Seams lose the edge; a seam without an edge on one side is none. */
    static Pattern removed(Pattern pattern, Piece piece, String edge) {
        return mates(pattern, ref -> means(ref, piece, edge) ? List.of() : List.of(ref));
    }

    /** The same for all edges of a piece. What is sewn to a piece of this name in every size stays while one has it. */
    static Pattern removed(Pattern pattern, Piece piece) {
        boolean others = pattern.pieces().stream()
                .anyMatch(p -> !p.id().equals(piece.id()) && p.name().equals(piece.name()));
        return mates(
                pattern,
                ref -> ref.piece().equals(piece.id()) || !others && ref.piece().equals(piece.name())
                        ? List.of()
                        : List.of(ref));
    }

    /** Seams of a piece are those of one with another id. */
    static Pattern moved(Pattern pattern, Piece piece, String id) {
        return mates(
                pattern,
                ref -> List.of(ref.piece().equals(piece.id()) ? new EdgeRef(id, ref.edge(), ref.times()) : ref));
    }

    /** Seams that named the piece by name go on to mean it. */
    static Pattern byId(Pattern pattern, Piece piece) {
        return mates(
                pattern,
                ref -> List.of(
                        ref.piece().equals(piece.name()) ? new EdgeRef(piece.id(), ref.edge(), ref.times()) : ref));
    }

    private static Pattern mates(Pattern pattern, Function<EdgeRef, List<EdgeRef>> change) {
        List<Mate> mates = new ArrayList<>();
        for (Mate mate : pattern.mates()) {
            List<EdgeRef> first = side(mate.first(), change);
            List<EdgeRef> second = side(mate.second(), change);
            if (!first.isEmpty() && !second.isEmpty()) {
                mates.add(new Mate(mate.name(), first, second, mate.declaredEase()));
            }
        }
        return pattern.withMates(mates);
    }

    private static List<EdgeRef> side(List<EdgeRef> refs, Function<EdgeRef, List<EdgeRef>> change) {
        return refs.stream().flatMap(r -> change.apply(r).stream()).distinct().toList();
    }

    private static LevelMark along(LevelMark mark, String edge) {
        return mark.placed(mark.through(), Optional.of(edge), mark.turn(), mark.reference());
    }

    static Dart on(Dart dart, String edge) {
        return new Dart(dart.name(), dart.mouth1(), dart.mouth2(), dart.point(), dart.otherPoint(), Optional.of(edge));
    }
}
