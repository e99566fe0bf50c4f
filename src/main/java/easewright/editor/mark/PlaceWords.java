package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Which place a tool points at, in words: for whoever goes there by key, and for whoever does not see it. */
public final class PlaceWords {
    /** As near to an edge as this a place lies on it, mm. */
    private static final double ON_EDGE = 0.01;

    private PlaceWords() {}

    /** The piece, the edges that meet at the place or how far along one it lies, and the marks that are there. */
    public static String of(Desk desk, Snap place) {
        Words words = desk.words();
        Piece piece = place.piece().flatMap(desk.pattern()::piece).orElse(null);
        if (piece == null) {
            return words.of("editor.place.beside");
        }
        List<Edge> edges = piece.edges().stream()
                .filter(e -> e.on(piece.outline()).nearest(place.at()).distance() <= ON_EDGE)
                .toList();
        String where = edges.size() == 1 ? along(piece, edges.get(0), place.at(), words) : at(piece, edges, words);
        List<String> marks = marks(piece, place.at(), words);
        return marks.isEmpty()
                ? where
                : words.of("editor.place.marks", Map.of("place", where, "marks", String.join(", ", marks)));
    }

    private static String at(Piece piece, List<Edge> edges, Words words) {
        String names = edges.stream().map(Edge::name).collect(Collectors.joining(", "));
        return edges.isEmpty()
                ? words.of("editor.place.piece", Map.of("piece", piece.name()))
                : words.of("editor.place.corner", Map.of("piece", piece.name(), "edges", names));
    }

    private static String along(Piece piece, Edge edge, Point at, Words words) {
        return words.of(
                "editor.place.along",
                Map.of(
                        "piece", piece.name(),
                        "edge", edge.name(),
                        "far", AlongEdge.mm(piece, edge, at),
                        "from", AlongEdge.from(piece, edge, words)));
    }

    /** Notches, darts and ends of the grainline at the place. */
    private static List<String> marks(Piece piece, Point at, Words words) {
        List<String> marks = new ArrayList<>();
        piece.notches().stream()
                .filter(n -> isAt(n.at(), at))
                .forEach(n -> marks.add(words.of("editor.place.notch", Map.of("name", n.name()))));
        for (Dart dart : piece.darts()) {
            if (dart.corners().stream().anyMatch(c -> isAt(c, at))) {
                boolean mouth = isAt(dart.mouth1(), at) || isAt(dart.mouth2(), at);
                String key = mouth ? "editor.place.dart-mouth" : "editor.place.dart-point";
                marks.add(words.of(key, Map.of("name", dart.name())));
            }
        }
        piece.grain()
                .filter(g -> isAt(g.from(), at) || isAt(g.to(), at))
                .ifPresent(g -> marks.add(words.of("editor.place.grain")));
        return marks;
    }

    private static boolean isAt(Point one, Point other) {
        return one.distance(other) <= ON_EDGE;
    }
}
