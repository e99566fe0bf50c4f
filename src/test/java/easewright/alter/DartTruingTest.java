package easewright.alter;

import static easewright.alter.Panels.only;
import static easewright.alter.Panels.proposals;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dart folded as it is sewn: the seam goes straight on over it and its cap lies on the seam (docs/sources.md 4.5, W8). */
class DartTruingTest {
    private static final Point ONE = new Point(90, 0);
    private static final Point TWO = new Point(110, 0);
    private static final Point POINT = new Point(100, 90);

    /** The dart's angle at its point, degrees. */
    private static final double ANGLE = 2 * Math.toDegrees(Math.atan(10.0 / 90));

    /** Where the cap of a seam square to the closed legs has its peak. */
    private static final double PEAK = -10 * Math.tan(Math.toRadians(ANGLE / 2));

    /** A front whose waist bends by so many degrees when the dart is closed, drawn over it as told. */
    private static Piece front(double bends, Point... over) {
        double low = 90 * Math.tan(Math.toRadians((ANGLE - bends) / 2));
        List<Point> corners = new ArrayList<>(List.of(new Point(0, low), ONE));
        corners.addAll(List.of(over));
        corners.addAll(List.of(TWO, new Point(200, low), new Point(200, 600), new Point(0, 600)));
        Outline outline = Outline.polygon(corners);
        return Piece.bare("front", outline).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, corners.get(0), new Point(200, low)),
                        Edge.of("side", EdgeRole.SEAM, new Point(200, low), new Point(200, 600)),
                        Edge.of("hem", EdgeRole.HEM, new Point(200, 600), new Point(0, 600)),
                        Edge.of("centre", EdgeRole.CENTRE, new Point(0, 600), corners.get(0))))
                .darts(List.of(new Dart("d", ONE, TWO, POINT, Optional.empty(), Optional.of("waist"))))
                .build();
    }

    private static Pattern pattern(Piece piece) {
        return Cloths.pattern(List.of(), piece);
    }

    @ParameterizedTest
    @CsvSource({"0.9, 0", "-0.9, 0", "1.1, 1", "-1.1, 1", "19.5, 1", "-19.5, 1", "20.5, 0", "-20.5, 0"})
    void seamBendsFromOneDegreeToTwenty(double bends, int found) {
        Pattern cutOut = pattern(front(bends, POINT));
        assertThat(proposals(cutOut, "dart-seam-bends")).hasSize(found);
        assertThat(proposals(cutOut, "dart-cap-off")).as("it has no cap").isEmpty();
        for (Proposal proposal : proposals(cutOut, "dart-seam-bends")) {
            assertThat((Double) proposal.finding().values().get("degrees.degrees"))
                    .isCloseTo(Math.abs(bends), within(1e-9));
            assertThat(proposal.finding().values())
                    .containsEntry("dart", "d")
                    .containsEntry("x", 100.0)
                    .containsEntry("y", 0.0);
            assertThat(proposal.truing()).isEqualTo(Trued.cap("front", "d"));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.29, 0", "-0.29, 0", "0.32, 1", "-0.32, 1"})
    void capIsOffFromAThirdOfAMillimetre(double off, int found) {
        assertThat(proposals(pattern(front(0, new Point(100, PEAK - off))), "dart-cap-off"))
                .hasSize(found);
    }

    @Test
    void protectedSeamIsNamed() {
        Piece kept = Panels.kept(front(5, POINT), "waist");
        assertThat(only(pattern(kept), "dart-seam-bends").protectedEdges()).containsExactly("front/waist");
    }

    private static double angle(Point one, Point other) {
        return Math.toDegrees(Math.abs(Math.atan2(one.cross(other), one.dot(other))));
    }

    private static Point mirrored(Point p, Point on, Point way) {
        Point off = p.minus(on);
        return on.plus(way.times(2 * off.dot(way)).minus(off));
    }

    @ParameterizedTest
    @CsvSource({"3", "-3", "8", "-8", "12.5", "15", "-19"})
    void foldedTheSeamGoesStraightOnAndTheCapLiesOnIt(double bends) throws Refusal {
        for (Piece piece : List.of(
                front(bends, POINT),
                front(bends),
                front(bends, new Point(100, PEAK)),
                front(bends, new Point(100, -4)),
                Cloths.reversed(front(bends, new Point(100, -2))),
                Cloths.reversed(front(bends, POINT)))) {
            Pattern before = pattern(piece);
            Altered altered = Trued.cap("front", "d").apply(before);
            Piece after = altered.pattern().pieces().get(0);
            Dart dart = after.darts().get(0);
            DartMouth mouth = DartMouth.of(after, dart);
            Point leg1 = mouth.first().minus(POINT).unit();
            Point leg2 = mouth.second().minus(POINT).unit();
            Point in = mouth.before().tangent(1);
            Point out = mouth.after().tangent(0);
            assertThat(angle(in, leg1) + angle(out.times(-1), leg2))
                    .as("the seam over the closed legs")
                    .isCloseTo(180, within(1e-4));
            assertThat(dart.point()).isEqualTo(POINT);
            assertThat(mouth.first().distance(POINT)).isCloseTo(mouth.second().distance(POINT), within(1e-6));
            assertThat(Cloths.sewn(after, "waist")).isCloseTo(Cloths.sewn(piece, "waist"), within(1e-3));
            if (mouth.kind() != DartMouth.Kind.CUT_OUT) {
                Point peak = mouth.inner().get(0).end();
                Point folded = mirrored(peak, POINT, leg1).minus(mouth.first()).unit();
                assertThat(Math.abs(folded.cross(in))).as("the cap folded back").isLessThan(1e-6);
                Point other = mirrored(peak, POINT, leg2).minus(mouth.second()).unit();
                assertThat(Math.abs(other.cross(out))).isLessThan(1e-6);
            } else {
                assertThat(after.outline().nearest(POINT).distance()).isLessThan(1e-9);
            }
            assertSmoothBeside(after, mouth);
            assertRestStays(piece, after);
            assertThat(proposals(altered.pattern(), "dart-seam-bends")).isEmpty();
            assertThat(proposals(altered.pattern(), "dart-cap-off")).isEmpty();
            assertThat(Trued.cap("front", "d")
                            .apply(altered.pattern())
                            .pattern()
                            .pieces()
                            .get(0)
                            .outline())
                    .as("again it changes nothing that can be seen")
                    .satisfies(
                            o -> assertThat(o.nearest(mouth.first()).distance()).isLessThan(1e-4));
        }
    }

    /** But for the mouth, what lies within it, and the ends of edges. */
    private static void assertSmoothBeside(Piece after, DartMouth mouth) {
        List<Point> corners = new ArrayList<>();
        mouth.inner().forEach(s -> corners.addAll(List.of(s.start(), s.end())));
        after.edges().forEach(e -> corners.add(e.from()));
        after.edges().forEach(e -> corners.add(e.to()));
        List<Segment> all = after.outline().segments();
        for (int i = 0; i < all.size(); i++) {
            Point node = all.get(i).start();
            if (corners.stream().allMatch(c -> c.distance(node) > 0.02)) {
                Point in = all.get((i + all.size() - 1) % all.size()).tangent(1);
                assertThat(angle(in, all.get(i).tangent(0))).as("at %s", node).isLessThan(1e-4);
            }
        }
    }

    /** But the waist nothing moves, and that as little as a hand that draws it in one curve moves it. */
    private static void assertRestStays(Piece before, Piece after) {
        for (Segment s : before.outline().segments()) {
            boolean waist = before.edge("waist")
                    .orElseThrow()
                    .on(before.outline())
                    .segments()
                    .contains(s);
            if (!waist) {
                assertThat(after.outline().segments()).anyMatch(a -> a == s);
            }
        }
        for (Segment s : after.outline().segments()) {
            for (double t = 0; t < 1; t += 0.1) {
                Point p = s.at(t);
                if (Math.abs(p.x() - 100) > 10 + 1) {
                    assertThat(before.outline().nearest(p).distance()).isLessThan(OneCurve.NEAR);
                }
            }
        }
    }

    /** An allowance that leans on the leg keeps the seam straight for longer; the bend dies away beyond it. */
    @Test
    void besideAnotherDartTheSeamBendsOnlyUpToIt() throws Refusal {
        Piece piece = front(8, POINT);
        Dart near = new Dart(
                "e", new Point(125, 3), new Point(130, 5), new Point(130, 80), Optional.empty(), Optional.of("waist"));
        double slope = Math.tan(Math.toRadians((ANGLE - 8) / 2));
        Point mouth1 = new Point(130, 20 * slope);
        Point mouth2 = new Point(136, 26 * slope);
        near = new Dart("e", mouth1, mouth2, near.point(), Optional.empty(), near.edge());
        Piece two = piece.toBuilder().darts(List.of(piece.darts().get(0), near)).build();
        Piece after =
                Trued.cap("front", "d").apply(pattern(two)).pattern().pieces().get(0);
        assertThat(after.darts().get(1)).isEqualTo(near);
        double to = 110 + (20 / Math.cos(Math.atan(slope))) / 3 + 0.5;
        for (Segment s : after.outline().segments()) {
            for (double t = 0; t < 1; t += 0.1) {
                if (s.at(t).x() > to) {
                    assertThat(piece.outline().nearest(s.at(t)).distance()).isLessThan(1e-9);
                }
            }
        }
        Point close = new Point(115, 5 * slope);
        Dart tooNear = new Dart("e", close, mouth2, near.point(), Optional.empty(), near.edge());
        Refusal refusal = Cloths.refusal(
                Trued.cap("front", "d"),
                pattern(piece.toBuilder()
                        .darts(List.of(piece.darts().get(0), tooNear))
                        .build()));
        assertThat(refusal.code()).isEqualTo("no-room-to-true");
        assertThat(refusal.values()).containsEntry("edge", "waist").containsEntry("piece", "front");
    }
}
