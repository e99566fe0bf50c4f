package easewright.check;

import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.PieceMeasures;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A change so large that a slip of the unit is likelier than a wish: 24 cm or 24 in where 24 mm were meant. */
public final class Proportion implements ChangeRule {
    /**
     * Share of a girth beyond which a change is no alteration of fit any more: at a hip of 1 m, four sizes of 5 cm
     * (common practice).
     */
    public static final double OF_GIRTH = 0.2;

    /** An edge that becomes more than so many times as long (common practice). */
    private static final double OF_LENGTH = 2;

    /** Whether a finding says that a change is out of proportion. */
    public static boolean says(Finding finding) {
        return finding.code().equals("girth-out-of-proportion")
                || finding.code().equals("edge-out-of-proportion");
    }

    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        for (Girth now : after.measures().girths()) {
            Optional<Girth> then = before.measures().girth(now);
            double was = then.map(Girth::finished).orElse(0.0);
            double by = now.finished() - was;
            if (was > 0 && Math.abs(by) > was * OF_GIRTH) {
                findings.add(now.named(Finding.of("girth-out-of-proportion", Severity.CAUTION, ""))
                        .with("by.signed", by)
                        .with("of.percent", 100 * Math.abs(by) / was)
                        .with("from", was));
            }
        }
        for (Piece piece : after.pieces()) {
            Optional<PieceMeasures> then =
                    before.before(piece, after).flatMap(p -> before.measures().piece(p.id()));
            Optional<PieceMeasures> now = after.measures().piece(piece.id());
            if (then.isPresent() && now.isPresent()) {
                longest(then.get(), now.get()).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** Only the edge that grew most: the others of the piece went along. */
    private static Optional<Finding> longest(PieceMeasures then, PieceMeasures now) {
        Finding worst = null;
        double most = OF_LENGTH;
        for (EdgeLength edge : now.edges()) {
            double was = then.edge(edge.edge()).map(EdgeLength::mm).orElse(0.0);
            if (was > 0 && edge.mm() > was * most) {
                most = edge.mm() / was;
                worst = Finding.of(
                                "edge-out-of-proportion",
                                Severity.CAUTION,
                                now.stitch().piece().name())
                        .with("edge", edge.edge())
                        .with("from", was)
                        .with("to", edge.mm());
            }
        }
        return Optional.ofNullable(worst);
    }
}
