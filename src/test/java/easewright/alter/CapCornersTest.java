package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A cutting line over a dart has its peak, and beside it no corner where the stitching line has none. */
class CapCornersTest {
    private static final double ALLOWANCE = 15;

    /** A half whose waist goes smoothly on over the folded dart, but lies aslant on its legs. */
    private record Aslant(double halfAngle, double slant, double leg) {
        static Aslant random(Random random, double most) {
            double halfAngle = 0.06 + 0.08 * random.nextDouble();
            double leg = 90 + 40 * random.nextDouble();
            double slant = (random.nextBoolean() ? 1 : -1) * most * random.nextDouble() / mouth(halfAngle, leg);
            return new Aslant(halfAngle, Math.copySign(Math.min(Math.abs(slant), 0.9 * halfAngle), slant), leg);
        }

        static double mouth(double halfAngle, double leg) {
            return 2 * leg * Math.sin(halfAngle);
        }

        double mouth() {
            return mouth(halfAngle, leg);
        }

        private static Point way(double angle) {
            return new Point(Math.cos(angle), Math.sin(angle));
        }

        Point tip() {
            return new Point(100, 120);
        }

        Point mouth1() {
            return tip().plus(new Point(-Math.sin(halfAngle), -Math.cos(halfAngle)).times(leg));
        }

        Point mouth2() {
            return tip().plus(new Point(Math.sin(halfAngle), -Math.cos(halfAngle)).times(leg));
        }

        Point in() {
            return way(-(halfAngle + slant));
        }

        Point out() {
            return way(halfAngle - slant);
        }

        Piece piece() {
            Point one = mouth1();
            Point two = mouth2();
            Point centre = one.plus(new Point(-90, 12));
            Point side = two.plus(new Point(110, -10));
            Point corner = new Point(side.x() + 20, 600);
            Point foot = new Point(centre.x(), 600);
            Outline outline = new Outline(List.of(
                    new Cubic(centre, centre.plus(new Point(30, 0)), one.minus(in().times(30)), one),
                    new Line(one, tip()),
                    new Line(tip(), two),
                    new Cubic(two, two.plus(out().times(36)), side.minus(new Point(36, -4)), side),
                    new Line(side, corner),
                    new Line(corner, foot),
                    new Line(foot, centre)));
            return Piece.bare("front", outline).toBuilder()
                    .drawn(LineKind.STITCHING, ALLOWANCE)
                    .edges(List.of(
                            Edge.of("waist", EdgeRole.WAIST, centre, side),
                            Edge.of("side", EdgeRole.SEAM, side, corner),
                            Edge.of("hem", EdgeRole.HEM, corner, foot),
                            Edge.of("centre", EdgeRole.CENTRE, foot, centre)))
                    .darts(List.of(new Dart("d", one, two, tip(), Optional.empty(), Optional.of("waist"))))
                    .build();
        }

        boolean isOver(Point place) {
            return place.x() > mouth1().x() - ALLOWANCE && place.x() < mouth2().x() + ALLOWANCE;
        }
    }

    private static double turn(Segment before, Segment after) {
        Point in = before.tangent(1);
        Point out = after.tangent(0);
        return Math.abs(Math.toDegrees(Math.atan2(in.cross(out), in.dot(out))));
    }

    @Test
    void besideItsPeakTheCuttingLineHasNoSmallCorner() {
        Random random = new Random(81);
        Worst most = new Worst("turn beside a cap, degrees");
        int aslant = 0;
        for (int i = 0; i < 200; i++) {
            Aslant drawn = Aslant.random(random, 2.5);
            Piece piece = drawn.piece();
            Outline line = CutTruer.around(piece, piece.outline()).orElseThrow();
            List<Segment> all = line.segments();
            int peaks = 0;
            for (int k = 0; k < all.size(); k++) {
                double turn = turn(all.get((k + all.size() - 1) % all.size()), all.get(k));
                Point at = all.get(k).start();
                if (turn > 20 || at.y() > 100) {
                    continue;
                }
                boolean peak = Math.abs(turn - Math.toDegrees(2 * drawn.halfAngle())) < 0.5 && drawn.isOver(at);
                peaks += peak ? 1 : 0;
                if (!peak) {
                    most.meet(i, turn);
                }
            }
            assertThat(peaks).as("cap %d of %s", i, drawn).isEqualTo(1);
            aslant += Math.abs(drawn.slant()) > Math.toRadians(1) ? 1 : 0;
        }
        assertThat(aslant).as("seams aslant on their legs").isGreaterThan(60);
        most.within(0.05);
    }

    /** Pressed to that side to which the seam falls, the cap reaches up to the seam. */
    @Test
    void pressedToOneSideTheCapReachesTheSeam() {
        Random random = new Random(82);
        for (int i = 0; i < 200; i++) {
            Aslant drawn = Aslant.random(random, 2.5);
            DartCap cap = cap(drawn);
            Point peak = cap.trued();
            Outline over = Outline.polygon(List.of(drawn.mouth1(), peak, drawn.mouth2()));
            double nearest = cap.pressed().subList(0, 2).stream()
                    .mapToDouble(p -> over.nearest(p).distance())
                    .min()
                    .orElseThrow();
            assertThat(nearest).as("%s", drawn).isLessThan(1e-9);
        }
    }

    private static DartCap cap(Aslant drawn) {
        try {
            Piece piece = drawn.piece();
            DartMouth mouth = DartMouth.of(piece, piece.darts().get(0));
            return new DartCap(mouth, drawn.tip(), mouth.before(), mouth.after());
        } catch (Refusal offOutline) {
            throw new AssertionError(offOutline);
        }
    }

    /** Where it matters to which side a wide dart is pressed, neither side is taken for granted. */
    @Test
    void ofAWideDartAslantBothSidesAreHeeded() {
        Aslant wide = new Aslant(0.25, 0.15, 110);
        assertThat(wide.mouth() * wide.slant()).isGreaterThan(6);
        DartCap cap = cap(wide);
        List<Point> pressed = cap.pressed();
        Point mean = pressed.get(0).towards(pressed.get(1), 0.5);
        assertThat(cap.trued().distance(mean)).isCloseTo(0, within(1e-9));
    }
}
