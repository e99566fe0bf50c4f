package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.reversed;
import static easewright.alter.Cloths.sewn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A slash hinged at the seam of a piece that is drawn by its cutting line: cut to the stitching line, clipped from
 * outside, and turned about the stitch. A square of 100 sewn, 120 cut, slashed up its middle from the hem.
 */
class HingeTest {
    private static final double GAP = 11;

    /** The stitch at the hinge lies 110 from the cut hem. */
    private static final double TURN = 2 * Math.asin(GAP / 2 / 110);

    private static final Point HINGE = new Point(60, 0);
    private static final Point FOOT = new Point(60, 120);
    private static final String LINE = "0,0 120,0 120,120 0,120";
    private static final String CURVE = "0,0 (40,0 80,0) 120,0 120,120 0,120";

    private static Piece square(String outline) {
        Point b = new Point(120, 0);
        Point c = new Point(120, 120);
        Point d = new Point(0, 120);
        return Piece.bare("p", Sketch.outline(outline)).toBuilder()
                .edges(List.of(
                        Edge.of("top", EdgeRole.SEAM, new Point(0, 0), b),
                        Edge.of("right", EdgeRole.SEAM, b, c),
                        Edge.of("hem", EdgeRole.HEM, c, d),
                        Edge.of("left", EdgeRole.SEAM, d, new Point(0, 0))))
                .drawn(LineKind.CUTTING, 10)
                .build();
    }

    private static Piece turned(Piece piece, Point hinge, double gap, Point turning) throws Refusal {
        Pattern before = pattern(List.of(), piece);
        HingedSlash slash = new HingedSlash("p", hinge, FOOT, gap, turning, false);
        Pattern after = slash.apply(before).pattern();
        if (gap > 0) {
            // What a fold takes is gone; what an opening gave is taken back exactly.
            Pattern back = slash.opposite().orElseThrow().apply(after).pattern();
            assertThat(Likeness.sameLine(back.pieces().get(0).outline(), piece.outline(), 1e-6))
                    .isTrue();
        }
        return after.pieces().get(0);
    }

    /** The seam keeps its length, the hem gains of the gap what lies within the allowance; whichever part turns. */
    @Test
    void theSeamKeepsItsLengthAndTheHemIsWider() throws Refusal {
        for (Piece piece : List.of(square(LINE), square(CURVE), reversed(square(LINE)), reversed(square(CURVE)))) {
            for (Point turning : List.of(new Point(120, 60), new Point(0, 60))) {
                Piece open = turned(piece, HINGE, GAP, turning);
                assertThat(sewn(open, "top")).isCloseTo(100, within(2e-3));
                assertThat(sewn(open, "hem")).isCloseTo(100 + GAP * 100 / 110, within(2e-2));
                double out = turning.x() > 60 ? -10 * Math.tan(TURN / 2) : 10 * Math.tan(TURN / 2);
                assertThat(corner(open).distance(new Point(60 + out, 0))).isLessThan(1e-6);
                Piece lapped = turned(piece, HINGE, -GAP, turning);
                assertThat(sewn(lapped, "top")).isCloseTo(100, within(2e-3));
                assertThat(corner(lapped).distance(new Point(60 - out, 0))).isLessThan(1e-6);
            }
        }
    }

    /** The end of segments nearest to where the slash ends. */
    private static Point corner(Piece piece) {
        Point best = new Point(1e9, 0);
        for (Segment s : piece.outline().segments()) {
            best = s.start().distance(HINGE) < best.distance(HINGE) ? s.start() : best;
        }
        return best;
    }

    /** Only the last 10 mm of a curve are led; what is marked at the hinge goes with its corner. */
    @Test
    void aCurveIsLedForItsLastCentimetre() throws Refusal {
        Piece piece = square(CURVE).toBuilder()
                .notches(List.of(new Notch("hinge", HINGE), new Notch("top", new Point(45, 0))))
                .build();
        Piece open = turned(piece, HINGE, GAP, new Point(120, 60));
        assertThat(open.notches().get(0).at()).isEqualTo(corner(open));
        assertThat(open.notches().get(1)).isEqualTo(piece.notches().get(1));
        Curve top = open.edge("top").orElseThrow().on(open.outline());
        assertThat(top.segments()).hasSize(4);
        assertThat(top.segments().get(0).length()).isCloseTo(50, within(1e-9));
        assertThat(top.segments().get(3).length()).isCloseTo(50, within(1e-9));
        assertThat(top.segments().get(1).tangent(1)).isEqualTo(new Point(1, 0));
        Piece straight = turned(square(LINE), HINGE, GAP, new Point(120, 60));
        assertThat(straight.edge("top").orElseThrow().on(straight.outline()).segments())
                .hasSize(2);
    }

    /** Both halves of a bowed seam keep their direction at the hinge and are led to where they meet if drawn on straight. */
    @Test
    void aBowedSeamIsLedStraightOn() throws Refusal {
        for (Point turning : List.of(new Point(120, 60), new Point(0, 60))) {
            Piece bowed = square("0,0 (40,-12 80,-12) 120,0 120,120 0,120");
            Piece open = turned(bowed, new Point(60, -9), GAP, turning);
            double turn = 2 * Math.asin(GAP / 2 / 119);
            List<Segment> top =
                    open.edge("top").orElseThrow().on(open.outline()).segments();
            double left =
                    Math.atan2(top.get(1).tangent(1).y(), top.get(1).tangent(1).x());
            double right =
                    Math.atan2(top.get(2).tangent(0).y(), top.get(2).tangent(0).x());
            assertThat(Math.abs(left - right)).isCloseTo(turn, within(1e-9));
            assertThat(Math.min(Math.abs(left), Math.abs(right))).isCloseTo(0, within(1e-9));
            assertThat(top.get(1).end().distance(new Point(60, -9))).isCloseTo(10 * Math.tan(turn / 2), within(1e-6));
            assertThat(sewn(open, "top")).isCloseTo(sewn(bowed, "top"), within(0.02));
        }
    }

    /** At a corner the hinge is the corner of the stitching, and both seams there keep their lengths. */
    @Test
    void atACornerBothSeamsKeepTheirLengths() throws Refusal {
        Piece open = turned(square(LINE), new Point(0, 0), 8, new Point(120, 60));
        for (String edge : List.of("top", "right", "left")) {
            assertThat(sewn(open, edge)).as(edge).isCloseTo(100, within(2e-3));
        }
        assertThat(open.edge("top").orElseThrow().from())
                .isEqualTo(open.edge("left").orElseThrow().to());
    }

    /** Where the drawn line is sewn there is nothing to lead: the corner stays the very point. */
    @Test
    void onAStitchingLineTheHingeStays() throws Refusal {
        Piece sewn = square(LINE).toBuilder().drawn(LineKind.STITCHING, 0).build();
        Piece open = turned(sewn, HINGE, GAP, new Point(120, 60));
        assertThat(corner(open)).isEqualTo(HINGE);
        Refusal near = catchThrowableOfType(
                Refusal.class,
                () -> new HingedSlash("p", HINGE, new Point(60.9, 0), 3, FOOT, false).apply(pattern(List.of(), sewn)));
        assertThat(near.code()).isEqualTo("slash-without-length");
    }
}
