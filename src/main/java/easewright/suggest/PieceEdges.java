package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where the edges of a piece begin and end, what they are called and what they are for. */
public record PieceEdges(String piece, List<Edge> edges, double confidence) implements Suggestion.OnPiece {
    public PieceEdges {
        edges = List.copyOf(edges);
    }

    @Override
    public Kind kind() {
        return Kind.EDGES;
    }

    @Override
    public String key() {
        return "edges " + piece;
    }

    @Override
    public Reason reason() {
        return Reason.of("corners", confidence);
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("names", edges.stream().map(Edge::name).toList());
    }

    /** A short cross at every corner. */
    @Override
    public List<Segment> shown() {
        List<Segment> crosses = new ArrayList<>();
        for (Edge edge : edges) {
            Point at = edge.from();
            crosses.add(new Line(at.plus(new Point(-4, -4)), at.plus(new Point(4, 4))));
            crosses.add(new Line(at.plus(new Point(-4, 4)), at.plus(new Point(4, -4))));
        }
        return crosses;
    }

    @Override
    public Piece marked(Piece old) {
        return old.withEdges(edges);
    }
}
