package easewright.check;

import easewright.measure.Cutting;
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
            if (seen && wider && there.stream().noneMatch(p -> isLonger(girth, p, fuller))) {
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

    /**
     * Whether a seam goes farther up and down on that side. How long it is does not tell: made wider, it is more curved
     * and with that longer by itself.
     */
    private static boolean isLonger(Girth girth, SidePair pair, Side fuller) {
        Piece one = fuller == Side.RIGHT ? pair.right() : pair.left();
        Piece other = pair.other(one);
        return one.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .anyMatch(e -> other.edge(e.name())
                        .filter(o -> height(girth, one, e) - height(girth, other, o) > Cutting.WORKS)
                        .isPresent());
    }

    /** How far an edge goes square to the level, mm. */
    private static double height(Girth girth, Piece piece, Edge edge) {
        return girth.parts().stream()
                .filter(w -> w.pieceId().equals(piece.id()))
                .flatMap(w -> w.spans().stream())
                .map(s -> s.to().minus(s.from()))
                .filter(across -> across.norm() > 0)
                .findFirst()
                .map(across ->
                        Math.abs(edge.to().minus(edge.from()).dot(across.unit().quarterTurned())))
                .orElse(0.0);
    }
}
