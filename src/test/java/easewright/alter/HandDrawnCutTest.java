package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A cutting line that somebody drew nearly parallel keeps its allowance when the stitching line is made true. */
class HandDrawnCutTest {
    /** All that is untrue, made true until nothing is left. */
    private static Pattern trued(Pattern pattern) throws Refusal {
        Pattern now = pattern;
        for (int i = 0; i < 12; i++) {
            List<Proposal> all = Truing.proposals(now);
            if (all.isEmpty()) {
                return now;
            }
            now = all.get(0).apply(now).pattern();
        }
        throw new AssertionError("Still untrue: " + Truing.proposals(now));
    }

    /** The sharpest bend of the cutting line that is not at a corner of the piece or over the mouth of a dart, degrees. */
    private static double kink(Piece piece) {
        Outline line = HandDrawn.cut(piece);
        double most = 0;
        List<Segment> all = line.segments();
        for (int i = 0; i < all.size(); i++) {
            Point at = all.get(i).start();
            boolean corner = piece.edges().stream().anyMatch(e -> e.from().distance(at) < 60);
            boolean mouth = piece.darts().stream()
                    .anyMatch(d -> d.mouth1().distance(at) < 25 || d.mouth2().distance(at) < 25);
            Point in = all.get((i + all.size() - 1) % all.size()).tangent(1);
            Point out = all.get(i).tangent(0);
            double turn = Math.toDegrees(Math.abs(Math.atan2(in.cross(out), in.dot(out))));
            most = corner || mouth ? most : Math.max(most, turn);
        }
        return most;
    }

    private static double backwards(Piece piece) {
        List<Segment> all = HandDrawn.cut(piece).segments();
        double most = 0;
        for (int i = 0; i < all.size(); i++) {
            Point at = all.get(i).start();
            boolean waist = piece.edge("waist")
                            .orElseThrow()
                            .on(piece.outline())
                            .nearest(at)
                            .distance()
                    < 17;
            boolean corner = piece.edges().stream().anyMatch(e -> e.from().distance(at) < 25);
            Point in = all.get((i + all.size() - 1) % all.size()).tangent(1);
            Point out = all.get(i).tangent(0);
            double turn = Math.toDegrees(Math.abs(Math.atan2(in.cross(out), in.dot(out))));
            most = waist && !corner ? Math.max(most, turn) : most;
        }
        return most;
    }

    @Test
    void allowanceIsKeptByTruingTheWaistAndTheDart() throws Refusal {
        Pattern after = trued(HandDrawn.skirt());
        assertThat(after.changes()).isNotEmpty();
        for (Piece piece : after.pieces()) {
            for (String edge : List.of("waist", "side")) {
                double[] wide = HandDrawn.allowance(piece, edge);
                assertThat(wide[0]).as(piece.name() + " " + edge).isGreaterThan(HandDrawn.ALLOWANCE - 0.2);
                assertThat(wide[1]).as(piece.name() + " " + edge).isLessThan(HandDrawn.ALLOWANCE + 0.2);
            }
            assertThat(kink(piece)).as(piece.name() + " kink").isLessThan(2);
            assertThat(backwards(piece)).as(piece.name() + " at the dart").isLessThan(20);
            assertThat(HandDrawn.cut(piece).segments().size()).as(piece.name()).isLessThan(24);
        }
    }

    /** What strays is said of every piece by the same measure, although the legs of its dart lie deep in it. */
    @Test
    void whatStraysIsSaidOfEveryPiece() throws Refusal {
        Pattern after = trued(HandDrawn.skirt());
        for (Piece piece : List.of(HandDrawn.front(), HandDrawn.back())) {
            Piece left = after.piece(piece.id()).orElseThrow().toBuilder()
                    .riders(piece.riders())
                    .build();
            double[] wide = HandDrawn.allowance(left, "waist");
            assertThat(wide[1] - wide[0]).isGreaterThan(1);
            Proposal found = Panels.only(Cloths.pattern(List.of(), left), "allowance-uneven");
            assertThat(found.finding().piece()).isEqualTo(piece.name());
            assertThat((Double) found.finding().values().get("off"))
                    .isCloseTo(Math.max(wide[1] - HandDrawn.ALLOWANCE, HandDrawn.ALLOWANCE - wide[0]), within(1.0));
            Point at = new Point((Double) found.finding().values().get("x"), (Double)
                    found.finding().values().get("y"));
            assertThat(Math.abs(HandDrawn.cut(left).nearest(at).distance() - HandDrawn.ALLOWANCE))
                    .as("the ring lies where it strays")
                    .isCloseTo((Double) found.finding().values().get("off"), within(0.01));
        }
    }

    @Test
    void cuttingLineDrawnAnewHasFewCurvesAndNoZigzag() throws Refusal {
        for (Piece piece : List.of(HandDrawn.front(), HandDrawn.back())) {
            Pattern done = Trued.cut(piece.id())
                    .apply(Cloths.pattern(List.of(), piece))
                    .pattern();
            Piece after = done.pieces().get(0);
            assertThat(HandDrawn.cut(after).segments().size()).isLessThan(20);
            assertThat(kink(after)).isLessThan(2);
            assertThat(backwards(after)).isLessThan(25);
            double[] wide = HandDrawn.allowance(after, "waist");
            assertThat(wide[0]).isGreaterThan(HandDrawn.ALLOWANCE - 0.2);
            assertThat(wide[1]).isLessThan(HandDrawn.ALLOWANCE + 0.2);
        }
    }
}
