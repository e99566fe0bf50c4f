package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pairs of random pieces sewn together at the side: whatever is found untrue can be put right alone, or is refused with
 * a reason, which is rare. {@code -Dcases=1000} tries more of them, {@code -Dworst=say} tells counts and worst errors.
 */
class TruingPropertiesTest {
    private static final List<Level> LEVELS = List.of(Level.of("mid", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
    private static final int CASES = Integer.getInteger("cases", 6);

    /** Beside a corner the line at an allowance is drawn out, and measured from nowhere. */
    private static final double CORNER = 40;

    static Pattern pair(long seed, LineKind drawn) {
        Piece front = new RandomCut(seed).piece("front");
        Piece back = new RandomCut(seed + 1_000_000).piece("back");
        for (long other = seed + 2_000_000; !names(back).equals(names(front)); other += 1_000_000) {
            back = new RandomCut(other).piece("back");
        }
        return Cloths.pattern(LEVELS, as(front, drawn), as(back, drawn))
                .withMates(List.of(new Mate(
                        "side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0)));
    }

    private static List<String> names(Piece piece) {
        return piece.edges().stream().map(Edge::name).toList();
    }

    /** Drawn by its stitching line a piece has a cutting line beside it, unless a dart is cut out of it. */
    private static Piece as(Piece piece, LineKind drawn) {
        if (drawn == LineKind.CUTTING) {
            return piece;
        }
        Piece stitched = piece.toBuilder().drawn(drawn, 10).build();
        boolean cutOut = piece.darts().stream().anyMatch(d -> SewnCopy.isCutOut(piece, d));
        return cutOut
                ? stitched
                : Around.of(stitched, true)
                        .map(line -> stitched.toBuilder()
                                .riders(List.of(new Rider("cut", Rider.Kind.PARALLEL, line.segments())))
                                .build())
                        .orElse(stitched);
    }

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void whatIsUntrueIsPutRightAndGirthsStay(LineKind drawn) throws Refusal {
        Map<String, Integer> refused = new TreeMap<>();
        Worst girths = new Worst(drawn + " girth");
        Worst ways = new Worst(drawn + " way back");
        int all = 0;
        int done = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            Pattern before = pair(seed, drawn);
            for (Proposal proposal : Truing.proposals(before)) {
                all++;
                Pattern after;
                try {
                    after = proposal.apply(before).pattern();
                } catch (Refusal refusal) {
                    refused.merge(proposal.truing().matter() + " " + refusal.code(), 1, Integer::sum);
                    continue;
                }
                done++;
                assertThat(Truing.proposals(after))
                        .as("seed %d, %s", seed, proposal.truing().target())
                        .noneMatch(p -> p.truing().matter() == proposal.truing().matter()
                                && p.truing().target().equals(proposal.truing().target()));
                for (Level level : LEVELS) {
                    girths.meet(seed, Math.abs(Cloths.girth(after, level.name()) - Cloths.girth(before, level.name())));
                }
                Pattern back = Ways.from(after.changes().get(0))
                        .opposite()
                        .orElseThrow()
                        .apply(after)
                        .pattern();
                for (int i = 0; i < 2; i++) {
                    ways.meet(
                            seed,
                            Worst.apart(
                                    back.pieces().get(i).outline(),
                                    before.pieces().get(i).outline()));
                }
            }
        }
        if ("say".equals(System.getProperty("worst"))) {
            System.out.println(drawn + ": " + done + " of " + all + " made, refused " + refused);
        }
        girths.within(0.01);
        ways.within(1e-6);
        assertThat(done).as("of %d, refused %s", all, refused).isGreaterThan((int) (0.92 * all));
    }

    /** After a truing the cutting line beside a stitching line is as parallel to it as it was drawn. */
    @Test
    void cuttingLineStaysParallelToWhatIsTrued() throws Refusal {
        Worst parallel = new Worst("cutting line beside a trued line");
        for (long seed = 1; seed <= CASES; seed++) {
            Pattern before = pair(seed, LineKind.STITCHING);
            for (Proposal proposal : Truing.proposals(before)) {
                Pattern after;
                try {
                    after = proposal.apply(before).pattern();
                } catch (Refusal refusal) {
                    continue;
                }
                for (Piece piece : after.pieces()) {
                    Piece was = before.piece(piece.id()).orElseThrow();
                    if (piece != was && !piece.riders().isEmpty() && astray(was) < 0.001) {
                        parallel.meet(seed, astray(piece));
                    }
                }
            }
        }
        parallel.within(0.02);
    }

    private static double astray(Piece piece) {
        Outline line = new Outline(piece.riders().get(0).segments());
        double most = 0;
        for (Edge edge : piece.edges()) {
            Curve run = edge.on(piece.outline());
            double length = run.length();
            double allowance = Around.allowance(piece, edge);
            for (double at = CORNER; at < length - CORNER; at += 5) {
                Point p = run.pointAtLength(at);
                boolean inMouth = piece.darts().stream()
                        .anyMatch(d -> d.mouth1().distance(p) < d.intake() + CORNER
                                && d.mouth2().distance(p) < d.intake() + CORNER);
                // In a hollow tighter than the allowance the line is cut off.
                if (!inMouth && bends(run, at) < 0.3 / allowance) {
                    most = Math.max(most, Math.abs(line.nearest(p).distance() - allowance));
                }
            }
        }
        return most;
    }

    /** Curvature, as what three places tell of it, 1/mm. */
    private static double bends(Curve run, double at) {
        Point a = run.pointAtLength(at - CORNER / 2);
        Point b = run.pointAtLength(at);
        Point c = run.pointAtLength(at + CORNER / 2);
        Point in = b.minus(a);
        Point out = c.minus(b);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out))) / (CORNER / 2);
    }

    /** The sewn angles at a joined corner sum to a straight one, whichever line is drawn. */
    @ParameterizedTest
    @EnumSource(LineKind.class)
    void joinedCornersSumToAStraightAngle(LineKind drawn) {
        Worst angles = new Worst(drawn + " joined angle, degrees");
        for (long seed = 1; seed <= CASES; seed++) {
            Pattern before = pair(seed, drawn);
            for (Proposal proposal : Truing.proposals(before)) {
                if (proposal.truing().matter() != Trued.Matter.JOINED_LINE) {
                    continue;
                }
                Pattern after;
                try {
                    after = proposal.apply(before).pattern();
                } catch (Refusal refusal) {
                    continue;
                }
                var measures = Measures.of(after);
                Pattern sewn = SewnCopy.of(after, measures);
                boolean atEnd = proposal.truing().target().get("end").equals("end");
                var joints = JoinTruer.joints(sewn, measures, sewn.mates(), new SewnPieces(sewn, measures)).stream()
                        .filter(j -> j.atEnd() == atEnd)
                        .collect(Collectors.toList());
                assertThat(joints).hasSize(1);
                angles.meet(seed, Math.abs(Math.toDegrees(joints.get(0).missing())));
            }
        }
        angles.within(1);
    }
}
