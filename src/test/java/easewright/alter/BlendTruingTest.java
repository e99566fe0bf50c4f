package easewright.alter;

import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.proposals;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Corners that a change left within an edge are found, and rounded without changing its length or its place at a level. */
class BlendTruingTest {
    private static final Piece PLAIN = panel("front", 600);

    private static Outline side(Point... bends) {
        return Outline.polygon(Stream.of(
                        Stream.of(new Point(0, 0), new Point(200, 0)),
                        Stream.of(bends),
                        Stream.of(new Point(200, 600), new Point(0, 600)))
                .flatMap(s -> s)
                .toList());
    }

    private static Piece bent(Outline first, Point... bends) {
        return PLAIN.toBuilder()
                .original(Optional.of(first))
                .outline(side(bends))
                .build();
    }

    private static Point out(double mm, double y) {
        return new Point(200 + mm, y);
    }

    private static Pattern pattern(Piece piece) {
        return Cloths.pattern(List.of(Cloths.HIP), piece);
    }

    private static List<Proposal> corners(Piece piece) {
        return proposals(pattern(piece), "corner-within-edge");
    }

    @ParameterizedTest
    @CsvSource({"0.9, 0", "1.1, 1", "-1.1, 1", "44, 1", "-44, 1", "46, 0"})
    void cornersFromOneDegreeToFortyFive(double turn, int found) {
        Point at = out(300 * Math.tan(Math.toRadians(turn / 2)), 300);
        List<Proposal> corners = corners(bent(PLAIN.outline(), at));
        assertThat(corners).hasSize(found);
        for (Proposal corner : corners) {
            assertThat((Double) corner.finding().values().get("degrees.degrees"))
                    .isCloseTo(Math.abs(turn), within(1e-9));
            assertThat(corner.finding().values())
                    .containsEntry("edge", "side")
                    .containsEntry("x", at.x())
                    .containsEntry("y", at.y());
            assertThat(corner.truing()).isEqualTo(Trued.blend(EdgeRef.of("front", "side"), at));
            assertThat(corner.protectedEdges()).isEmpty();
        }
    }

    @Test
    void cornersThatWereThereAtFirstAreMeant() {
        assertThat(corners(PLAIN.withOutline(side(out(10, 300)))))
                .as("never changed")
                .isEmpty();
        assertThat(corners(bent(side(out(10, 300)), out(10, 300)))).isEmpty();
        assertThat(corners(bent(side(out(10, 300)), out(12, 310))))
                .as("moved a little")
                .isEmpty();
        assertThat(corners(bent(side(out(10, 300)), out(10, 322))))
                .as("another place")
                .hasSize(1);
        assertThat(corners(bent(side(out(10, 300)), out(13, 300))))
                .as("another angle")
                .hasSize(1);
        assertThat(corners(bent(side(out(10, 300)), out(-10, 300))))
                .as("the other way")
                .hasSize(1);
    }

    @Test
    void notchesAndDartsBendTheLineOnPurpose() {
        Piece bent = bent(PLAIN.outline(), out(10, 300));
        for (double off : new double[] {0, 0.9, 1.1}) {
            Piece notched = bent.toBuilder()
                    .notches(List.of(new Notch("n", out(10, 300 + off))))
                    .build();
            assertThat(corners(notched)).as("notch %s off", off).hasSize(off == 0.9 ? 0 : 1);
        }
        for (double off : new double[] {0, 11, 12}) {
            Dart dart = new Dart(
                    "d",
                    out(10, 300 + off - 10),
                    out(10, 300 + off),
                    out(-90, 300),
                    Optional.empty(),
                    Optional.of("side"));
            assertThat(CarriesCorner.at(bent.toBuilder().darts(List.of(dart)).build(), out(10, 300)))
                    .as("dart %s off", off)
                    .isEqualTo(off > 11);
        }
    }

    /** Asks for the corner itself, whatever else there is to be said of a piece with a dart there. */
    private static final class CarriesCorner {
        static boolean at(Piece piece, Point corner) {
            return BlendTruer.corners(List.of(piece)).stream().anyMatch(c -> c.at().equals(corner));
        }
    }

    private static double turns(Piece piece) {
        List<Segment> run = piece.edge("side").orElseThrow().on(piece.outline()).segments();
        return IntStream.range(1, run.size())
                .mapToDouble(i -> {
                    Point in = run.get(i - 1).tangent(1);
                    Point out = run.get(i).tangent(0);
                    return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
                })
                .max()
                .orElse(0);
    }

    private static void assertOnlyWithin(Piece before, Piece after, double from, double to) {
        double most = 0;
        for (Segment s : after.outline().segments()) {
            for (double t = 0; t < 1; t += 0.05) {
                double off = before.outline().nearest(s.at(t)).distance();
                boolean inside =
                        s.at(t).x() > 150 && s.at(t).y() > from && s.at(t).y() < to;
                most = Math.max(most, off);
                assertThat(inside || off < 1e-9).as("%s", s.at(t)).isTrue();
            }
        }
        assertThat(most).isGreaterThan(0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, -10, 25, -40, 100})
    void roundedItKeepsItsLengthAndIsSmooth(double mm) throws Refusal {
        Piece before = bent(PLAIN.outline(), out(mm, 300));
        for (Piece piece : List.of(before, Cloths.reversed(before))) {
            Piece given = piece.toBuilder().original(before.original()).build();
            Pattern pattern = pattern(given);
            Piece after = Trued.blend(EdgeRef.of("front", "side"), out(mm, 300))
                    .apply(pattern)
                    .pattern()
                    .pieces()
                    .get(0);
            assertThat(turns(after)).as("corners left").isLessThan(1e-6);
            assertThat(Cloths.sewn(after, "side")).isCloseTo(Cloths.sewn(given, "side"), within(1e-3));
            assertOnlyWithin(given, after, 260, 340);
            for (String edge : List.of("waist", "hem", "fold")) {
                Segment kept = given.edge(edge)
                        .orElseThrow()
                        .on(given.outline())
                        .segments()
                        .get(0);
                assertThat(after.outline().segments()).contains(kept);
            }
        }
    }

    @Test
    void whereALevelCrossesItTheCornerKeepsItsPlace() throws Refusal {
        Piece piece = atLevel(300);
        Altered done = only(pattern(piece), "corner-within-edge").apply(pattern(piece));
        Piece after = done.pattern().pieces().get(0);
        assertThat(after.outline().nearest(out(10, 300)).distance()).isLessThan(1e-9);
        assertThat(turns(after)).isLessThan(1e-6);
    }

    /** Beside the corner its place and the width at the level cannot both be kept. */
    @ParameterizedTest
    @ValueSource(doubles = {300.8, 299.2})
    void levelBesideTheCornerIsNotRoundedOver(double level) {
        Pattern pattern = pattern(atLevel(level));
        Refusal refusal = Cloths.refusal(only(pattern, "corner-within-edge").truing(), pattern);
        assertThat(refusal.code()).isEqualTo("truing-costs-girth");
        assertThat(refusal.values()).containsEntry("level", "hip");
        assertThat((Double) refusal.values().get("by.signed")).isCloseTo(0.0256, within(1e-4));
    }

    private static Piece atLevel(double level) {
        return bent(PLAIN.outline(), out(10, 300)).toBuilder()
                .levels(List.of(LevelMark.through("hip", new Point(20, level))))
                .build();
    }

    @ParameterizedTest
    @CsvSource({"320, 260, 319.1", "280, 280.9, 340", "330, 260, 329.1"})
    void itIsRoundedUpToALevelOnly(double level, double from, double to) throws Refusal {
        Piece piece = atLevel(level);
        Piece after = only(pattern(piece), "corner-within-edge")
                .apply(pattern(piece))
                .pattern()
                .pieces()
                .get(0);
        assertOnlyWithin(piece, after, from, to);
        assertThat(Cloths.sewn(after, "side")).isCloseTo(Cloths.sewn(piece, "side"), within(1e-3));
    }

    @Test
    void itIsRoundedHalfTheWayToTheNextCorner() throws Refusal {
        Piece piece = bent(PLAIN.outline(), out(10, 300), out(12, 330));
        Trued blend = Trued.blend(EdgeRef.of("front", "side"), out(12, 330));
        assertOnlyWithin(piece, blend.apply(pattern(piece)).pattern().pieces().get(0), 314.9, 370);
        Trued other = Trued.blend(EdgeRef.of("front", "side"), out(10, 300));
        assertThat(turns(Trued.blend(EdgeRef.of("front", "side"), out(10, 300))
                        .apply(blend.apply(pattern(piece)).pattern())
                        .pattern()
                        .pieces()
                        .get(0)))
                .isLessThan(1e-6);
        assertOnlyWithin(piece, other.apply(pattern(piece)).pattern().pieces().get(0), 260, 315.1);
        Piece close = bent(PLAIN.outline(), out(10, 300), out(9.5, 305));
        for (Point corner : List.of(out(10, 300), out(9.5, 305))) {
            Refusal refusal = Cloths.refusal(Trued.blend(EdgeRef.of("front", "side"), corner), pattern(close));
            assertThat(refusal).as("%s", corner).isNotNull();
            assertThat(refusal.code()).isEqualTo("no-room-to-true");
            assertThat(refusal.values()).containsEntry("piece", "front").containsEntry("edge", "side");
        }
    }

    @Test
    void itIsRoundedHalfTheWayToTheEndOfTheEdge() throws Refusal {
        for (double y : new double[] {30, 570}) {
            Piece piece = bent(PLAIN.outline(), out(2, y));
            Piece after = Trued.blend(EdgeRef.of("front", "side"), out(2, y))
                    .apply(pattern(piece))
                    .pattern()
                    .pieces()
                    .get(0);
            assertOnlyWithin(piece, after, y < 300 ? 14.9 : 530, y < 300 ? 70 : 585.1);
        }
    }

    @Test
    void itIsRoundedHalfTheWayToADart() throws Refusal {
        for (double from : new double[] {330, 250}) {
            Piece bent = bent(PLAIN.outline(), out(10, 300));
            Point one =
                    bent.outline().point(bent.outline().nearest(out(8, from)).place());
            Point two = bent.outline()
                    .point(bent.outline().nearest(out(8, from + 20)).place());
            Dart dart = new Dart("d", one, two, new Point(120, from + 10), Optional.empty(), Optional.of("side"));
            Piece piece = bent.toBuilder().darts(List.of(dart)).build();
            Piece after = Trued.blend(EdgeRef.of("front", "side"), out(10, 300))
                    .apply(pattern(piece))
                    .pattern()
                    .pieces()
                    .get(0);
            assertOnlyWithin(piece, after, from < 300 ? 284.9 : 260, from < 300 ? 340 : 315.1);
            assertThat(after.darts()).isEqualTo(piece.darts());
        }
    }
}
