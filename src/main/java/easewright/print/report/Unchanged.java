package easewright.print.report;

import easewright.measure.EdgeLength;
import easewright.measure.PieceMeasures;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.print.MovedBy;
import easewright.print.Reading;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a change left alone: whole pieces, and edges that are the same to the last bit. */
final class Unchanged {
    private Unchanged() {}

    /** One line a piece; empty where nothing stayed. */
    static Optional<List<String>> of(Reading before, Reading after, Words words) {
        List<String> lines = new ArrayList<>();
        for (PieceMeasures piece : after.measures().pieces()) {
            Piece now = after.pattern().piece(piece.pieceId()).orElseThrow();
            Optional<Piece> then = before.pattern().piece(piece.pieceId());
            boolean whole = then.isPresent()
                    ? then.get().outline().equals(now.outline())
                    : MovedBy.outlineBefore(before.pattern(), now).equals(now.outline());
            if (whole) {
                lines.add(words.of("report.whole-piece", Map.of("piece", now.name())));
                continue;
            }
            List<String> kept = new ArrayList<>();
            for (EdgeLength edge : piece.edges()) {
                if (unmoved(then, now, edge.edge())) {
                    kept.add(edge.edge() + " " + words.length(edge.mm()));
                }
            }
            if (!kept.isEmpty()) {
                lines.add(words.of("report.edges-kept", Map.of("piece", now.name(), "edges", kept)));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
    }

    private static boolean unmoved(Optional<Piece> then, Piece now, String name) {
        Optional<Edge> was = then.flatMap(p -> p.edge(name));
        Optional<Edge> is = now.edge(name);
        return was.isPresent()
                && is.isPresent()
                && was.get().on(then.get().outline()).equals(is.get().on(now.outline()));
    }
}
