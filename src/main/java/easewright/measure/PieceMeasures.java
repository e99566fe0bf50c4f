package easewright.measure;

import easewright.pattern.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What one piece measures.
 *
 * @param levels widths at the levels that are marked on the piece and reached by it, counted or not
 * @param stitch the stitching line on which all was measured
 */
public record PieceMeasures(
        String pieceId, List<EdgeLength> edges, List<LevelWidth> levels, List<Finding> findings, StitchOutline stitch) {
    public PieceMeasures {
        edges = List.copyOf(edges);
        levels = List.copyOf(levels);
        findings = List.copyOf(findings);
    }

    public Optional<EdgeLength> edge(String name) {
        for (EdgeLength edge : edges) {
            if (edge.edge().equals(name)) {
                return Optional.of(edge);
            }
        }
        return Optional.empty();
    }

    public Optional<LevelWidth> level(String name) {
        for (LevelWidth width : levels) {
            if (width.level().equals(name)) {
                return Optional.of(width);
            }
        }
        return Optional.empty();
    }
}
