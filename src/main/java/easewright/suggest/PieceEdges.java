package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Where the edges of a piece begin and end, what they are called and what they are for.
 *
 * @param spreads along which of them the allowance that is drawn is not even
 */
public record PieceEdges(String piece, List<Edge> edges, double confidence, List<AllowanceSpread> spreads)
        implements Suggestion.OnPiece {
    public PieceEdges {
        edges = List.copyOf(edges);
        spreads = List.copyOf(spreads);
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
        if (spreads.isEmpty()) {
            return Reason.of("corners", confidence);
        }
        AllowanceSpread widest = spreads.stream()
                .max(Comparator.comparingDouble(AllowanceSpread::width))
                .orElseThrow();
        List<String> others = spreads.stream()
                .filter(s -> s != widest)
                .map(AllowanceSpread::edge)
                .toList();
        String code = others.isEmpty() ? "corners-allowance-varies" : "corners-allowances-vary";
        return new Reason(
                code,
                Map.of("edge", widest.edge(), "least", widest.least(), "most", widest.most(), "others", others),
                confidence);
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
