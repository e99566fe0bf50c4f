package easewright.editor.model;

import easewright.editor.paint.NamePlace;
import easewright.geom.Line;
import easewright.measure.LevelWidth;
import easewright.pattern.Piece;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Remembers where the name of each piece has room: looking for that takes longer than painting it. */
public final class NamePlaces {
    private final Map<Piece, NamePlace> known = new IdentityHashMap<>();

    /** The place on the piece as it was before a change is tried, so that names do not jump about. */
    NamePlace of(Desk desk, Piece shown) {
        Piece piece = desk.pattern().piece(shown.id()).orElse(shown);
        return known.computeIfAbsent(piece, p -> NamePlace.on(p, levels(desk, p)));
    }

    void forgetAllBut(List<Piece> present) {
        known.keySet().removeIf(p -> present.stream().noneMatch(q -> q == p));
    }

    private static List<Line> levels(Desk desk, Piece piece) {
        return desk.reading().measures().girths().stream()
                .flatMap(g -> g.parts().stream())
                .filter(part -> part.pieceId().equals(piece.id()))
                .map(LevelWidth::spans)
                .flatMap(List::stream)
                .filter(s -> !s.from().equals(s.to()))
                .map(s -> new Line(s.from(), s.to()))
                .toList();
    }
}
