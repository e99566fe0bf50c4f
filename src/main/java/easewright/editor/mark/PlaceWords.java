package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;

/** Which place a tool points at, in words: for whoever goes there by key, and for whoever does not see it. */
public final class PlaceWords {
    /** As near to an edge as this a place lies on it, mm. */
    private static final double ON_EDGE = 0.01;

    private PlaceWords() {}

    /** The piece and the edges that meet at the place, as far as there are any. */
    public static String of(Desk desk, Snap place) {
        Piece piece = place.piece().flatMap(desk.pattern()::piece).orElse(null);
        if (piece == null) {
            return desk.words().of("editor.place.beside");
        }
        List<String> edges = piece.edges().stream()
                .filter(e -> e.on(piece.outline()).nearest(place.at()).distance() <= ON_EDGE)
                .map(Edge::name)
                .toList();
        return edges.isEmpty()
                ? desk.words().of("editor.place.piece", Map.of("piece", piece.name()))
                : desk.words()
                        .of(
                                edges.size() == 1 ? "editor.place.edge" : "editor.place.corner",
                                Map.of("piece", piece.name(), "edges", String.join(", ", edges)));
    }
}
