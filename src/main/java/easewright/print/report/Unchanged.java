package easewright.print.report;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.measure.EdgeLength;
import easewright.measure.PieceMeasures;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.print.MovedBy;
import easewright.print.Reading;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a change left alone: whole pieces, and edges that are the same to the last bit. */
final class Unchanged {
    /** What a mirrored line may differ in length, mm. */
    private static final double ROUNDING = 1e-6;

    private Unchanged() {}

    /** One line a piece; empty where nothing stayed. */
    static Optional<List<String>> of(Reading before, Reading after, Words words) {
        List<String> lines = new ArrayList<>();
        for (PieceMeasures piece : after.measures().pieces()) {
            Piece now = after.pattern().piece(piece.pieceId()).orElseThrow();
            Optional<Piece> then = SidePair.before(before.pattern(), after.pattern(), now);
            Outline old = MovedBy.outlineBefore(before.pattern(), now);
            if (old.equals(now.outline())) {
                lines.add(words.of("report.whole-piece", Map.of("piece", now.name())));
                continue;
            }
            List<String> kept = new ArrayList<>();
            for (EdgeLength edge : piece.edges()) {
                if (unmoved(then, old, now, edge.edge())) {
                    kept.add(edge.edge() + " " + words.length(edge.mm()));
                }
            }
            if (!kept.isEmpty()) {
                lines.add(words.of("report.edges-kept", Map.of("piece", now.name(), "edges", kept)));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
    }

    /** @param old the outline that the piece had, where the piece lies now */
    private static boolean unmoved(Optional<Piece> then, Outline old, Piece now, String name) {
        Optional<Edge> was = then.flatMap(p -> p.edge(name));
        Optional<Edge> is = now.edge(name);
        if (was.isEmpty() || is.isEmpty()) {
            return false;
        }
        Curve before = was.get().on(then.get().outline());
        Curve after = is.get().on(now.outline());
        if (then.get().id().equals(now.id())) {
            return before.equals(after);
        }
        // Of a copy: the same line where the copy lies, and as much of it.
        return Math.abs(before.length() - after.length()) <= ROUNDING
                && is.get().on(old).equals(after);
    }
}
