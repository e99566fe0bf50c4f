package easewright.check;

import easewright.measure.Cutting;
import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LevelKind;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A garment that was made wider for one hip, but not longer there: the way over a fuller hip is longer as well, and the hem
 * rises with it (common practice).
 */
final class FullerSide implements Rule {
    private static final Set<LevelKind> HIPS = EnumSet.of(LevelKind.HIP, LevelKind.HIGH_HIP);

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        List<SidePair> pairs = SidePair.of(sight.pattern());
        for (Girth girth : pairs.isEmpty() ? List.<Girth>of() : sight.measures().girths()) {
            double more = girth.on(Side.RIGHT) - girth.on(Side.LEFT);
            Side fuller = more > 0 ? Side.RIGHT : Side.LEFT;
            List<SidePair> there = at(girth, pairs);
            boolean seen = there.stream()
                    .anyMatch(p ->
                            sight.pieces().contains(p.drawn()) || sight.pieces().contains(p.copy()));
            boolean wider = HIPS.contains(girth.level().kind()) && Math.abs(more) > Cutting.WORKS;
            if (seen && wider && there.stream().noneMatch(p -> isLonger(sight, p, fuller))) {
                String code = fuller == Side.RIGHT ? "fuller-right" : "fuller-left";
                findings.add(
                        girth.named(Finding.of(code, Severity.NOTE, there.get(0).wholeName())
                                .with("by", Math.abs(more))));
            }
        }
        return findings;
    }

    private static List<SidePair> at(Girth girth, List<SidePair> pairs) {
        List<String> ids = girth.parts().stream().map(LevelWidth::pieceId).toList();
        return pairs.stream()
                .filter(p ->
                        ids.contains(p.left().id()) && ids.contains(p.right().id()))
                .toList();
    }

    /** Whether a seam is longer on that side by more than widening it makes it. */
    private static boolean isLonger(Sight sight, SidePair pair, Side fuller) {
        Piece one = fuller == Side.RIGHT ? pair.right() : pair.left();
        for (Edge edge : one.edges()) {
            double more = length(sight, one, edge) - length(sight, pair.other(one), edge);
            if (edge.role() == EdgeRole.SEAM && more > Cutting.WORKS) {
                return true;
            }
        }
        return false;
    }

    private static double length(Sight sight, Piece piece, Edge edge) {
        return sight.measures()
                .piece(piece.id())
                .flatMap(p -> p.edge(edge.name()))
                .map(EdgeLength::mm)
                .orElse(0.0);
    }
}
