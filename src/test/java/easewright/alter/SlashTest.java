package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.sewn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlashTest {
    private static final double FIFTH_DIGIT = 5.1e-6 * INCH;

    /** Worked examples W6 and W7: a square of 10 in, its top a seam of the given role. */
    private static Piece square(EdgeRole top) {
        return Cloths.square("square", 10, top, EdgeRole.SEAM);
    }

    private static Pattern just(Piece piece) {
        return pattern(List.of(Level.of("middle", LevelKind.OTHER)), piece);
    }

    private static HingedSlash hinged(double gap) {
        return new HingedSlash("square", in(5, 0), in(5, 10), gap, in(10, 5), false);
    }

    @Test
    void w6OpensByTheChordAndTurnsTheRightHalf() throws Refusal {
        Piece with = square(EdgeRole.SEAM).toBuilder()
                .notches(List.of(new Notch("n", in(10, 5)), new Notch("stay", in(0, 5))))
                .riders(List.of(new Rider("inner", Rider.Kind.INNER, List.of(new Line(in(8, 5), in(10, 5))))))
                .build();
        Pattern before = just(with);
        Altered altered = hinged(INCH).apply(before);
        Piece after = altered.pattern().pieces().get(0);
        List<Point> wanted = List.of(
                in(9.97500, -0.49937), in(10.97375, 9.45063), in(5.99875, 9.95000), in(5, 10), in(0, 10), in(0, 0));
        for (Point p : wanted) {
            assertThat(after.outline().segments())
                    .anySatisfy(s -> assertThat(s.start().distance(p)).isLessThan(2 * FIFTH_DIGIT));
        }
        assertThat(after.notches().get(0).at().distance(in(10.47437, 4.47563))).isLessThan(2 * FIFTH_DIGIT);
        assertThat(after.notches().get(1).at()).isEqualTo(in(0, 5));
        assertThat(after.riders().get(0).segments().get(0).end().distance(in(10.47437, 4.47563)))
                .isLessThan(2 * FIFTH_DIGIT);
        assertThat(altered.findings()).extracting("code").contains("hinge-corner");
        assertThat(after.outline().segments())
                .contains(with.outline().segments().get(3));
    }

    @Test
    void eitherPartMayTurnOnAnOutlineDrawnEitherWay() throws Refusal {
        Piece forward = square(EdgeRole.SEAM);
        Piece backward = forward.withOutline(forward.outline().reversed()).withEdges(List.of());
        for (Piece piece : List.of(forward.withEdges(List.of()), backward)) {
            for (Point turning : List.of(in(10, 5), in(0, 5))) {
                Pattern after = new HingedSlash("square", in(5, 0), in(5, 10), INCH, turning, false)
                        .apply(just(piece))
                        .pattern();
                double area = Math.abs(after.pieces().get(0).outline().signedArea()) / (INCH * INCH);
                assertThat(area).isCloseTo(104.993746, within(5e-7));
            }
        }
    }

    @Test
    void openingAndClosingAgainRestoresTheSquare() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM));
        Pattern open = hinged(INCH).apply(before).pattern();
        Pattern closed = hinged(-INCH).apply(open).pattern();
        for (Segment s : closed.pieces().get(0).outline().segments()) {
            assertThat(before.pieces().get(0).outline().nearest(s.at(0.5)).distance())
                    .isLessThan(1e-9);
        }
        assertThat(closed.pieces().get(0).outline().signedArea())
                .isCloseTo(before.pieces().get(0).outline().signedArea(), within(1e-6));
        assertThat(hinged(0).apply(before).pattern()).isSameAs(before);
    }

    @Test
    void lappingTakesAWedgeAway() throws Refusal {
        Pattern after = hinged(-INCH).apply(just(square(EdgeRole.SEAM))).pattern();
        double area = after.pieces().get(0).outline().signedArea() / (INCH * INCH);
        // The wedge between the legs, its staying leg cut off by the hem: 1/2 · 10 · 10/cos θ · sin θ = 50 tan θ.
        assertThat(area).isCloseTo(100 - 50 * Math.tan(2 * Math.asin(0.05)), within(1e-9));
    }

    @Test
    void wideGapIsRefused() {
        Refusal refusal =
                catchThrowableOfType(Refusal.class, () -> hinged(25 * INCH).apply(just(square(EdgeRole.SEAM))));
        assertThat(refusal.code()).isIn("gap-too-wide", "outline-crosses-itself");
        assertThat(refusal.largest().orElseThrow()).isGreaterThan(10 * INCH);
    }

    @Test
    void dartUnderTheSlashIsRefusedAndDartBesideItTurns() throws Refusal {
        Dart across = new Dart("d", in(4.5, 10), in(5.5, 10), in(5, 7), Optional.empty(), Optional.of("hem"));
        Piece bad = square(EdgeRole.SEAM).toBuilder().darts(List.of(across)).build();
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> hinged(INCH).apply(just(bad)));
        assertThat(refusal.code()).isEqualTo("slash-crosses-dart");
        Dart beside = new Dart("d", in(7, 10), in(8, 10), in(7.5, 7), Optional.empty(), Optional.of("hem"));
        Piece good = square(EdgeRole.SEAM).toBuilder().darts(List.of(beside)).build();
        Dart turned =
                hinged(INCH).apply(just(good)).pattern().pieces().get(0).darts().get(0);
        assertThat(turned.intake()).isCloseTo(INCH, within(1e-9));
        assertThat(turned.point()).isNotEqualTo(beside.point());
    }

    @Test
    void aParallelSlashIsTakenBackAndRefusedAtAShoulder() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM));
        ParallelSlash slash = new ParallelSlash("square", in(5, 0), in(5, 10), INCH, in(10, 5), false);
        Piece back = new ParallelSlash("square", in(5, 0), in(5, 10), -INCH, in(10, 5), false)
                .apply(slash.apply(before).pattern())
                .pattern()
                .pieces()
                .get(0);
        assertThat(back.outline().signedArea() / (INCH * INCH)).isCloseTo(100, within(1e-9));
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> slash.apply(just(square(EdgeRole.SHOULDER))));
        assertThat(refusal.code()).isEqualTo("edge-protected");
        assertThat(slash.withAmount(0).apply(before).pattern()).isSameAs(before);
    }

    @Test
    void lengtheningMovesWhatLiesBelow() throws Refusal {
        List<Level> levels = List.of(Level.of("bust", LevelKind.BUST), Level.of("hip", LevelKind.HIP));
        Piece body = Cloths.body(
                        8.5,
                        LevelMark.through("bust", in(3, 9)).withReference(in(0, 0)),
                        LevelMark.through("hip", in(3, 23)).withReference(in(0, 16)))
                .toBuilder()
                .notches(List.of(new Notch("low", in(11 - 2.5 * 4 / 8, 20))))
                .build();
        Pattern before = pattern(levels, body);
        Pattern after = Lengthen.below("bust", 3 * INCH, INCH).apply(before).pattern();
        Piece longer = after.pieces().get(0);
        assertThat(longer.level("hip").orElseThrow().through().orElseThrow()).isEqualTo(in(3, 24));
        assertThat(longer.level("hip").orElseThrow().reference().orElseThrow().y())
                .isCloseTo(17 * INCH, within(1e-9));
        assertThat(longer.level("bust")).isEqualTo(body.level("bust"));
        assertThat(longer.notches().get(0).at().y()).isCloseTo(21 * INCH, within(1e-9));
        assertThat(sewn(longer, "lower side")).isCloseTo(sewn(body, "lower side"), within(1e-9));
        Pattern back = Lengthen.below("bust", 3 * INCH, -INCH).apply(after).pattern();
        assertThat(back.pieces().get(0).outline().signedArea())
                .isCloseTo(body.outline().signedArea(), within(1e-6));
        assertThat(back.pieces().get(0).levels()).isEqualTo(body.levels());
    }

    @Test
    void lengthAfterWidthIsRemarkedOn() throws Refusal {
        Pattern skirt = pattern(List.of(Cloths.WAIST, Cloths.HIP), Cloths.curvedSkirt("front"));
        Lengthen longer = Lengthen.below("hip", 50, 10);
        Slash slash = Slash.of("front", new Point(120, 603), new Point(60, 7));
        for (Alteration width : List.of(SeamChange.at("hip", 20), SpreadSlashes.hinged("hip", 8, slash))) {
            Altered altered = longer.apply(width.apply(skirt).pattern());
            assertThat(altered.findings()).extracting("code").containsExactly("length-after-width");
        }
        assertThat(longer.apply(skirt).findings()).isEmpty();
        assertThat(longer.apply(longer.apply(skirt).pattern()).findings()).isEmpty();
    }

    @Test
    void aCentreMovedParallelCutsTheNeckAndAWedgeLeavesIt() throws Refusal {
        Level bust = Level.of("bust", LevelKind.BUST);
        Piece back = Cloths.back();
        Pattern before = pattern(List.of(bust, Cloths.WAIST), back);
        easewright.pattern.EdgeRef fold = easewright.pattern.EdgeRef.of("back", "fold");
        CentreChange parallel = CentreChange.parallel("bust", INCH, fold);
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> parallel.apply(before));
        assertThat(refusal.code()).isEqualTo("edge-protected");
        Altered swung = CentreChange.wedge("bust", 0.5 * INCH, fold).apply(before);
        assertThat(sewn(swung.pattern().pieces().get(0), "neck")).isEqualTo(sewn(back, "neck"));
        assertThat(swung.findings()).extracting("code").containsExactly("centre-off-fold");
        CentreChange undo = CentreChange.wedge("bust", -0.5 * INCH, fold);
        Outline restored = undo.apply(swung.pattern()).pattern().pieces().get(0).outline();
        for (Segment s : restored.segments()) {
            assertThat(back.outline().nearest(s.start()).distance()).isLessThan(1e-9);
        }
    }

    @Test
    void notesMakeTheSameChangesAgain() throws Refusal {
        List<Alteration> all = List.of(
                hinged(1e-9),
                new ParallelSlash("a b", new Point(1, 2), new Point(3e-8, 4), -7.25, new Point(5, 6), true),
                new Lengthen("hip", -3.5, 25.4, List.of("front", "back"), true),
                Lengthen.below("waist", 0, 1),
                CentreChange.parallel("hip", 3, easewright.pattern.EdgeRef.of("front", "fold")),
                CentreChange.wedge("hip", 3, easewright.pattern.EdgeRef.of("front", "fold"))
                        .keeping("neck")
                        .acceptingProtected());
        for (Alteration each : all) {
            assertThat(Ways.from(each.note())).isEqualTo(each);
        }
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> Ways.from(new easewright.pattern.ChangeNote("melt", java.util.Map.of())));
        assertThat(refusal.code()).isEqualTo("change-unknown");
    }

    /** The cutting line round a square is lengthened with it and stays one closed line at its distance. */
    @ParameterizedTest
    @CsvSource({"30", "-30"})
    void aParallelLineIsCutAndJoinedWithTheOutline(double mm) throws Refusal {
        List<Segment> line = Outline.polygon(
                        List.of(new Point(-10, -10), new Point(264, -10), new Point(264, 264), new Point(-10, 264)))
                .segments();
        Piece marked = square(EdgeRole.SEAM).toBuilder()
                .levels(List.of(LevelMark.through("middle", in(5, 5))))
                .riders(List.of(new Rider("cutting", Rider.Kind.PARALLEL, line)))
                .build();
        Piece done = Lengthen.below("middle", 20, mm)
                .apply(just(marked))
                .pattern()
                .pieces()
                .get(0);
        List<Segment> after = done.riders().get(0).segments();
        assertThat(after)
                .isEqualTo(Outline.polygon(List.of(
                                new Point(-10, -10),
                                new Point(264, -10),
                                new Point(264, 264 + mm),
                                new Point(-10, 264 + mm)))
                        .segments());
    }

    @Test
    void aParallelCurveIsCutAndJoinedWhereTheSlashIs() {
        Cubic curve = new Cubic(new Point(0, 0), new Point(20, 40), new Point(20, 80), new Point(0, 120));
        Affine down = Affine.translation(new Point(0, 25));
        List<Segment> spread = new CutRider(p -> p.y() > 60, down).parted(List.of(curve));
        assertThat(spread).hasSize(3);
        assertThat(spread.get(1).start().distance(new Point(15, 60))).isLessThan(1e-9);
        assertThat(spread.get(1).end().distance(new Point(15, 85))).isLessThan(1e-9);
        assertThat(spread.get(2).end()).isEqualTo(new Point(0, 145));
        List<Segment> tucked =
                new CutRider(p -> p.y() > 60, Affine.translation(new Point(0, -25))).parted(List.of(curve));
        assertThat(tucked)
                .containsExactly(new Cubic(new Point(0, 0), new Point(20, 40), new Point(20, 55), new Point(0, 95)));
        // Cut at its very start or end there is nothing on the other side that could be drawn.
        Affine up = Affine.translation(new Point(0, -25));
        assertThat(new CutRider(p -> p.y() <= 0, up).parted(List.of(curve)))
                .satisfies(s -> assertThat(s.get(0))
                        .isEqualTo(new Line(new Point(0, -25), s.get(1).start())))
                .hasSize(2);
        List<Segment> atTheEnd = new CutRider(p -> p.y() >= 120, down).parted(List.of(curve));
        assertThat(atTheEnd).hasSize(2);
        assertThat(atTheEnd.get(1)).isEqualTo(new Line(atTheEnd.get(0).end(), new Point(0, 145)));
        List<Segment> still = List.of(curve);
        assertThat(new CutRider(p -> false, down).parted(still)).isSameAs(still);
    }
}
