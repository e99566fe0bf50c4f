package easewright.check;

import easewright.measure.OpenEnd;
import easewright.measure.PieceMeasures;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A pair of pieces of which the edges of an opening lie at the ends of a girth: whether they lie over each other, as a
 * button stand does, is not said, and counted to the edge that would be in the girth twice. Of sizes alike one is asked.
 */
final class OverlapSaid implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        Set<String> asked = new HashSet<>();
        for (Piece piece : sight.pieces()) {
            if (piece.times() > 1 && !piece.onFold()) {
                sight.measures()
                        .inEverySize()
                        .piece(piece.id())
                        .ifPresent(measured -> unsaid(piece, measured, sight).forEach((edge, levels) -> {
                            if (asked.add(piece.plainName() + "/" + edge)) {
                                findings.add(Finding.of("overlap-unsaid", Severity.CAUTION, piece.name())
                                        .with("edge", edge)
                                        .with("levels", List.copyOf(levels)));
                            }
                        }));
            }
        }
        return findings;
    }

    private static Map<String, List<String>> unsaid(Piece piece, PieceMeasures measured, Sight sight) {
        Map<String, List<String>> unsaid = new LinkedHashMap<>();
        for (LevelMark mark : piece.levels()) {
            boolean around =
                    sight.pattern().level(mark.level()).filter(l -> !l.limb()).isPresent();
            if (around && mark.counts() && mark.overlapSaid().isEmpty()) {
                OpenEnd.of(measured, mark.level())
                        .map(Edge::name)
                        .ifPresent(edge -> unsaid.computeIfAbsent(edge, e -> new ArrayList<>())
                                .add(mark.level()));
            }
        }
        return unsaid;
    }
}
