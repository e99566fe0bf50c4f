package easewright.alter;

import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.EdgeLength;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * What every truing promises, looked for in what was drawn: it makes true what it set out to, costs no girth at a
 * marked level and can be taken back. One that does not is refused.
 *
 * @param before the pattern before the truing
 * @param after  the pattern with it drawn
 */
record TruingPromise(Pattern before, Pattern after) {
    /** Girths at marked levels may change by this, mm. */
    private static final double GIRTH_KEPT = 0.01;

    /** A truing taken back restores the outline to this, mm. */
    private static final double WAY_BACK = 1e-6;

    /** A length that changes by less is not worth a word, mm. */
    private static final double NOTICED = 0.05;

    /** On a cutting line the sewn line is found anew; where bends are tight it is not quite the one that was drawn. */
    void requireTrue(Trued done) throws Refusal {
        for (int i = 0; i < before.pieces().size(); i++) {
            Piece piece = after.pieces().get(i);
            boolean redrawn = piece != before.pieces().get(i) && piece.drawn() == LineKind.CUTTING;
            if (redrawn && !isTrue(done)) {
                throw Refusal.of("allowance-not-redrawn").with("piece", piece.name());
            }
        }
    }

    /** Whether the place that was to be made true is. */
    boolean isTrue(Trued done) throws Refusal {
        return done.matter() == Trued.Matter.JOINED_LINE
                ? Math.abs(JoinTruer.joint(SewnCopy.of(after, Measures.of(after)), done)
                                .missing())
                        < Truing.TRUE_WITHIN
                : Truing.proposals(after).stream().map(Proposal::truing).noneMatch(p -> samePlace(p, done));
    }

    private static boolean samePlace(Trued one, Trued other) {
        return one.matter() == other.matter() && one.target().equals(other.target());
    }

    /** What cannot be taken back exactly is not done. */
    void requireWayBack(List<Stroke> strokes) throws Refusal {
        Pattern now = after;
        for (Stroke stroke : Stroke.opposite(strokes).orElse(List.of())) {
            now = now.withPiece(stroke.on(now.piece(stroke.piece()).orElseThrow()));
        }
        for (int i = 0; i < before.pieces().size(); i++) {
            Piece was = before.pieces().get(i);
            Piece is = now.pieces().get(i);
            for (Segment segment : was == is ? List.<Segment>of() : is.outline().segments()) {
                for (double t = 0; t < 1; t += 0.25) {
                    if (was.outline().nearest(segment.at(t)).distance() > WAY_BACK) {
                        throw Refusal.of("truing-not-exact");
                    }
                }
            }
        }
    }

    /** Refuses a truing that costs girth, and says which edges became longer or shorter. */
    List<Finding> consequences() throws Refusal {
        GarmentMeasures was = Measures.of(before);
        GarmentMeasures is = Measures.again(after, before, was);
        for (Girth girth : is.girths()) {
            double by = girth.finished() - was.girth(girth).map(Girth::finished).orElse(girth.finished());
            if (Math.abs(by) > GIRTH_KEPT) {
                throw Refusal.of("truing-costs-girth")
                        .with("level", girth.level().name())
                        .with("by.signed", by);
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : after.pieces()) {
            for (Edge edge : piece.edges()) {
                double now = sewn(is, piece, edge);
                double by = now - sewn(was, piece, edge);
                if (Math.abs(by) > NOTICED) {
                    boolean little = Cutting.same(by);
                    Severity severity = edge.isProtected() && !little ? Severity.CAUTION : Severity.NOTE;
                    findings.add((little
                                    ? Finding.of("trued-length-little", severity, piece.name())
                                    : Finding.of("trued-length", severity, piece.name()))
                            .with("edge", edge.name())
                            .with("by.signed", by));
                }
            }
        }
        return findings;
    }

    private static double sewn(GarmentMeasures measures, Piece piece, Edge edge) {
        return measures.piece(piece.id())
                .flatMap(p -> p.edge(edge.name()))
                .map(EdgeLength::mm)
                .orElse(0.0);
    }
}
