package easewright.check;

import easewright.measure.LayerCounted;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A facing, a lining or a band that counts in a girth together with what it lies on, or is sewn above: whether it does is
 * asked, since a panel may be called so as well. Of sizes alike one is asked.
 */
final class LayersCountedOnce implements Rule {
    /** One question. */
    private record Asked(String piece, boolean above) {}

    private static final class Where {
        private final Set<String> levels = new LinkedHashSet<>();
        private final Set<String> others = new LinkedHashSet<>();
        private final String name;

        private Where(String name) {
            this.name = name;
        }
    }

    @Override
    public List<Finding> look(Sight sight) {
        Map<Asked, Where> asked = new LinkedHashMap<>();
        for (LayerCounted each : LayerCounted.of(sight.pattern(), sight.measures())) {
            Piece piece = piece(sight.pattern(), each.piece());
            Where where =
                    asked.computeIfAbsent(new Asked(piece.plainName(), each.above()), k -> new Where(piece.name()));
            where.levels.add(each.level());
            each.others()
                    .forEach(id -> where.others.add(piece(sight.pattern(), id).plainName()));
        }
        List<Finding> findings = new ArrayList<>();
        asked.forEach((question, where) -> findings.add(
                Finding.of(question.above() ? "layer-above-counted" : "layer-counted", Severity.CAUTION, where.name)
                        .with("levels", List.copyOf(where.levels))
                        .with("others", List.copyOf(where.others))));
        return findings;
    }

    private static Piece piece(Pattern pattern, String id) {
        return pattern.pieces().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
