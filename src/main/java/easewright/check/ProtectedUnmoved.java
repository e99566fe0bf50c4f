package easewright.check;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.measure.Cutting;
import easewright.measure.EdgeLength;
import easewright.measure.PieceMeasures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** Protected edges keep their length and shape; where a part of the piece moved as a whole they may lie elsewhere. */
final class ProtectedUnmoved implements ChangeRule {
    /** A tenth of the stitching tolerance: less is rounding. */
    private static final double NOTICED = 0.15;

    /** Places at which two runs of the same edge are compared. */
    private static final int PLACES = 16;

    @Override
    public List<Finding> look(Sight before, Sight after) {
        return changed(before, after, (piece, edge) -> true);
    }

    /** What matters of it once it is kept: what is sewn there in no seam of the pattern. */
    List<Finding> since(Sight drawn, Sight now) {
        return changed(drawn, now, (piece, edge) -> !isSewn(now.pattern(), piece, edge)).stream()
                .filter(f -> f.severity() == Severity.CAUTION)
                .map(f -> new Finding("protected-edge-changed-since", Severity.NOTE, f.piece(), f.values()))
                .toList();
    }

    private static boolean isSewn(Pattern pattern, Piece piece, Edge edge) {
        return pattern.mates().stream()
                .flatMap(mate -> Stream.concat(mate.first().stream(), mate.second().stream()))
                .anyMatch(ref -> ref.piece().equals(piece.id()) && ref.edge().equals(edge.name()));
    }

    /** @param asked which of the protected edges of a piece as it is now are looked at */
    private static List<Finding> changed(Sight before, Sight after, BiPredicate<Piece, Edge> asked) {
        List<Finding> findings = new ArrayList<>();
        for (Sight.Remade remade : before.remade(after)) {
            Piece now = remade.now();
            for (Edge edge : remade.then().edges()) {
                Optional<Edge> same = now.edge(edge.name());
                if (edge.isProtected() && same.isPresent() && asked.test(now, same.get())) {
                    compare(before, after, remade.then(), now, edge, same.get()).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    private static Optional<Finding> compare(Sight before, Sight after, Piece then, Piece now, Edge was, Edge is) {
        Curve old = was.on(then.outline());
        Curve young = is.on(now.outline());
        // A fold that grows or shrinks along its own line is what lengthening does, and nothing is sewn to it.
        boolean fold = was.role() == EdgeRole.FOLD && straight(old) && straight(young);
        if (fold || old.segments().equals(young.segments())) {
            return Optional.empty();
        }
        double longer = sewn(after, now, is.name()) - sewn(before, then, was.name());
        double bent = bent(old, young);
        if (Math.abs(longer) <= NOTICED && bent <= NOTICED) {
            return Optional.empty();
        }
        boolean little = Cutting.same(longer) && Cutting.same(bent);
        Finding finding = little
                ? Finding.of("protected-edge-changed-little", Severity.NOTE, now.name())
                : Finding.of("protected-edge-changed", Severity.CAUTION, now.name());
        return Optional.of(
                finding.with("edge", is.name()).with("longer.signed", longer).with("bent", bent));
    }

    private static boolean straight(Curve run) {
        return Math.abs(run.length() - run.start().distance(run.end())) <= 1e-6;
    }

    private static double sewn(Sight sight, Piece piece, String edge) {
        return sight.measures().piece(piece.id()).flatMap(p -> length(p, edge)).orElse(0.0);
    }

    private static Optional<Double> length(PieceMeasures measures, String edge) {
        return measures.edge(edge).map(EdgeLength::mm);
    }

    /** The largest difference of chords from the start, which a move of the whole edge leaves alone, mm. */
    private static double bent(Curve old, Curve young) {
        double wasLong = old.length();
        double isLong = young.length();
        double most = 0;
        for (int i = 1; i <= PLACES; i++) {
            Point a = old.pointAtLength(wasLong * i / PLACES);
            Point b = young.pointAtLength(isLong * i / PLACES);
            for (double from : new double[] {0, 0.5}) {
                Point a0 = old.pointAtLength(wasLong * from);
                Point b0 = young.pointAtLength(isLong * from);
                most = Math.max(most, Math.abs(a.distance(a0) - b.distance(b0)));
            }
        }
        return most;
    }
}
