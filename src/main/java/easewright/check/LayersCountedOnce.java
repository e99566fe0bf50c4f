package easewright.check;

import easewright.measure.LayerCounted;
import easewright.measure.LinedWithItself;
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
 * A facing, a lining or a band that counts in a girth together with what it lies on, or is sewn above, and a piece that
 * counts in it with both its layers: whether it does is asked, since a panel may be called so as well. Of sizes alike one
 * is asked.
 */
final class LayersCountedOnce implements Rule {
    /** One question. */
    private record Asked(String piece, String code) {}

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
            Where where = where(asked, piece, each.above() ? "layer-above-counted" : "layer-counted");
            where.levels.add(each.level());
            each.others()
                    .forEach(id -> where.others.add(piece(sight.pattern(), id).plainName()));
        }
        for (LinedWithItself each : LinedWithItself.of(sight.pattern(), sight.measures())) {
            Piece piece = piece(sight.pattern(), each.piece());
            // Left out as what it is sewn above or below, it is not counted at all.
            Where above = asked.get(new Asked(piece.plainName(), "layer-above-counted"));
            if (above == null || !above.levels.contains(each.level())) {
                where(asked, piece, "layer-on-itself").levels.add(each.level());
            }
        }
        List<Finding> findings = new ArrayList<>();
        asked.forEach((question, where) -> {
            Finding levels =
                    Finding.of(question.code(), Severity.CAUTION, where.name).with("levels", List.copyOf(where.levels));
            findings.add(where.others.isEmpty() ? levels : levels.with("others", List.copyOf(where.others)));
        });
        return findings;
    }

    private static Where where(Map<Asked, Where> asked, Piece piece, String code) {
        return asked.computeIfAbsent(new Asked(piece.plainName(), code), k -> new Where(piece.name()));
    }

    private static Piece piece(Pattern pattern, String id) {
        return pattern.pieces().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
