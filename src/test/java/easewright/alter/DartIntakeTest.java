package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DartIntakeTest {
    private static final Level WAIST = Cloths.WAIST;
    private static final Level MIDDLE = Level.of("middle", LevelKind.HIGH_HIP);

    /** A straight waist of 200 mm with a dart of 24 mm, 100 mm deep, drawn in one of three manners or inside the cloth. */
    private static Piece cloth(String manner) {
        Point one = new Point(80, 0);
        Point two = new Point(104, 0);
        Point tip = new Point(92, 100);
        List<Point> corners = new ArrayList<>(List.of(new Point(0, 0)));
        double half = Math.atan(0.12);
        switch (manner) {
            case "cut out" -> corners.addAll(List.of(one, tip, two));
            // Pressed to either side: the straight waist mirrored in the leg meets the middle line here.
            case "capped" -> corners.addAll(List.of(one, new Point(92, -12 * Math.tan(2 * half)), two));
            default -> {}
        }
        corners.addAll(List.of(new Point(200, 0), new Point(220, 500), new Point(0, 500)));
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            segments.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        boolean inside = manner.equals("inside");
        Dart dart = inside
                ? new Dart(
                        "d",
                        new Point(80, 100),
                        new Point(104, 100),
                        new Point(92, 180),
                        Optional.of(new Point(92, 20)),
                        Optional.empty())
                : new Dart("d", one, two, tip, Optional.empty(), Optional.of("waist"));
        return Piece.bare("p", new Outline(segments)).toBuilder()
                .cut(1, true)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(0, 0), new Point(200, 0)),
                        Edge.of("side", EdgeRole.SEAM, new Point(200, 0), new Point(220, 500)),
                        Edge.of("hem", EdgeRole.HEM, new Point(220, 500), new Point(0, 500)),
                        Edge.of("fold", EdgeRole.FOLD, new Point(0, 500), new Point(0, 0))))
                .levels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("middle", new Point(20, 25))))
                .darts(List.of(dart))
                .riders(List.of(new Rider("leg", Rider.Kind.INNER, List.of(new Line(dart.mouth1(), dart.point())))))
                .build();
    }

    private static Pattern just(Piece piece) {
        return pattern(List.of(WAIST, MIDDLE), piece);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cut out", "capped", "flat"})
    void theWaistChangesByTheAmountAndTheLegsStayAlike(String manner) throws Refusal {
        Pattern before = just(cloth(manner));
        for (double amount : new double[] {20, -30, 0.001}) {
            DartIntake change = DartIntake.at("waist", amount);
            Altered altered = change.apply(before);
            Piece after = altered.pattern().pieces().get(0);
            assertThat(girth(altered.pattern(), "waist") - girth(before, "waist"))
                    .isCloseTo(amount, within(1e-8));
            Dart dart = after.darts().get(0);
            assertThat(DartFold.of(dart).difference()).isCloseTo(0, within(1e-9));
            assertThat(dart.point()).isEqualTo(new Point(92, 100));
            assertThat(after.riders().get(0).segments().get(0).start()).isEqualTo(dart.mouth1());
            assertThat(after.edges()).isEqualTo(before.pieces().get(0).edges());
            Pattern back =
                    change.opposite().orElseThrow().apply(altered.pattern()).pattern();
            Piece restored = back.pieces().get(0);
            assertThat(Worst.apart(restored.outline(), before.pieces().get(0).outline()))
                    .isLessThan(1e-7);
            assertThat(restored.darts().get(0).mouth1().distance(new Point(80, 0)))
                    .isLessThan(1e-7);
        }
        assertThat(DartIntake.at("waist", 0).apply(before).pattern()).isSameAs(before);
    }

    /** Only the seam next to the dart follows; all else is the same object. A flat dart leaves the whole outline. */
    @Test
    void onlyTheSeamBesideFollows() throws Refusal {
        for (String manner : List.of("cut out", "capped")) {
            Piece piece = cloth(manner);
            List<Segment> after = DartIntake.at("waist", 12)
                    .apply(just(piece))
                    .pattern()
                    .pieces()
                    .get(0)
                    .outline()
                    .segments();
            for (int i = 4; i < 7; i++) {
                assertThat(after.get(i)).isSameAs(piece.outline().segments().get(i));
            }
        }
        Piece flat = cloth("flat");
        assertThat(DartIntake.at("waist", 12)
                        .apply(just(flat))
                        .pattern()
                        .pieces()
                        .get(0)
                        .outline())
                .isSameAs(flat.outline());
    }

    /** Worked example W8: at distance y from the seam the intake is w(1 − y/L), here y = 25 of L = 100. */
    @Test
    void w8AskedWithinTheDart() throws Refusal {
        Pattern before = just(cloth("flat"));
        Pattern after = DartIntake.at("middle", 9).apply(before).pattern();
        assertThat(girth(after, "middle") - girth(before, "middle")).isCloseTo(9, within(1e-8));
        assertThat(girth(after, "waist") - girth(before, "waist")).isCloseTo(9 / 0.75, within(1e-7));
    }

    /** Worked example W8: the cap's tip lies L·tan(α/2)·sin(α/2) beyond the mouth where the seam is square to the legs. */
    @Test
    void w8TheCapFollowsTheIntake() throws Refusal {
        double half = Math.asin(0.5 / 3.5);
        Point tip = new Point(0, 3.5);
        Point one = new Point(-3.5 * Math.sin(half), 3.5 - 3.5 * Math.cos(half));
        Point two = new Point(-one.x(), one.y());
        Point peak = new Point(0, 3.5 - 3.5 / Math.cos(half));
        // The seam on either side is square to its leg.
        Point left = one.plus(new Point(-Math.cos(half), Math.sin(half)).times(4));
        Point right = new Point(-left.x(), left.y());
        List<Point> corners = List.of(left, one, peak, two, right, new Point(6, 12), new Point(-6, 12));
        List<Point> mm = corners.stream().map(p -> p.times(25.4)).toList();
        Piece piece = Piece.bare("p", Outline.polygon(mm)).toBuilder()
                .edges(List.of(Edge.of("waist", EdgeRole.WAIST, mm.get(0), mm.get(4))))
                .levels(List.of(LevelMark.along("waist", "waist")))
                .darts(List.of(
                        new Dart("d", mm.get(1), mm.get(3), tip.times(25.4), Optional.empty(), Optional.of("waist"))))
                .build();
        Dart was = piece.darts().get(0);
        assertThat(DartFold.of(was).peak().distance(mm.get(2))).isLessThan(1e-9);
        Pattern before = pattern(List.of(WAIST), piece);
        // A little narrower: the legs turn, the seam beside turns with them hardly at all.
        Piece after =
                DartIntake.at("waist", 0.1).apply(before).pattern().pieces().get(0);
        Point drawn = after.outline().segments().get(1).end();
        DartFold fold = DartFold.of(after.darts().get(0));
        assertThat(drawn.x()).isCloseTo(0, within(1e-9));
        assertThat(drawn.distance(fold.peak())).isLessThan(0.02);
    }

    @Test
    void aDartInsideTheClothIsMoreOrLessToo() throws Refusal {
        Piece piece = cloth("inside").toBuilder()
                .levels(List.of(LevelMark.through("middle", new Point(20, 100)), LevelMark.along("waist", "waist")))
                .build();
        Pattern before = just(piece);
        Pattern after = DartIntake.at("middle", 10).apply(before).pattern();
        assertThat(girth(after, "middle") - girth(before, "middle")).isCloseTo(10, within(1e-8));
        Dart dart = after.pieces().get(0).darts().get(0);
        assertThat(dart.mouth1().x()).isCloseTo(82.5, within(1e-8));
        assertThat(dart.mouth2().x()).isCloseTo(101.5, within(1e-8));
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> DartIntake.at("waist", 10).apply(before));
        assertThat(refusal.code()).isEqualTo("no-dart-at-level");
    }

    @Test
    void notMoreThanTheDartTakesIn() {
        for (String manner : List.of("cut out", "capped", "flat")) {
            Refusal refusal = catchThrowableOfType(
                    Refusal.class, () -> DartIntake.at("waist", 60).apply(just(cloth(manner))));
            assertThat(refusal.code()).as(manner).isEqualTo("dart-used-up");
            assertThat(refusal.largest().orElseThrow()).as(manner).isBetween(45.0, 48.5);
        }
        Refusal unknown = catchThrowableOfType(
                Refusal.class,
                () -> DartIntake.at("waist", 5, DartShare.of("p", "e")).apply(just(cloth("flat"))));
        assertThat(unknown.code()).isEqualTo("dart-unknown");
    }

    @Test
    void onTheSampleSkirt() throws Refusal {
        Pattern skirt = new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
        DartIntake change = new DartIntake(
                "waist",
                15,
                List.of(
                        new DartShare("skirt-back", "back dart 1", 2),
                        DartShare.of("skirt-back", "back dart 2"),
                        DartShare.of("skirt-front", "front dart")),
                false);
        Pattern after = change.apply(skirt).pattern();
        assertThat(girth(after, "waist") - girth(skirt, "waist")).isCloseTo(15, within(1e-8));
        assertThat(girth(after, "hip")).isEqualTo(girth(skirt, "hip"));
        for (Piece piece : after.pieces()) {
            for (Dart dart : piece.darts()) {
                assertThat(DartFold.of(dart).difference()).isLessThan(1e-3);
            }
        }
        // What the waist gained its band lacks now, and the walk says so.
        double drift = Measures.of(after).mates().get(1).drift()
                - Measures.of(skirt).mates().get(1).drift();
        assertThat(drift).isCloseTo(15, within(1e-8));
        Pattern back = change.opposite().orElseThrow().apply(after).pattern();
        for (int i = 0; i < skirt.pieces().size(); i++) {
            assertThat(Likeness.same(back.pieces().get(i), skirt.pieces().get(i)))
                    .isTrue();
        }
        assertThat(Ways.from(change.note())).isEqualTo(change);
    }

    @Test
    void betweenDartsAndSeamsTheGirthStays() throws Refusal {
        Pattern skirt = new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
        DartToSeam change = DartToSeam.at("waist", 16);
        Altered altered = change.apply(skirt);
        Pattern after = altered.pattern();
        assertThat(girth(after, "waist")).isCloseTo(girth(skirt, "waist"), within(1e-6));
        for (int i = 0; i < 2; i++) {
            Piece was = skirt.pieces().get(i);
            Piece is = after.pieces().get(i);
            double width = Measures.width(is, WAIST).orElseThrow().net();
            assertThat(width).isCloseTo(Measures.width(was, WAIST).orElseThrow().net(), within(1e-6));
            double side = was.edge("side")
                    .orElseThrow()
                    .from()
                    .distance(is.edge("side").orElseThrow().from());
            assertThat(side).isBetween(1.0, 8.0);
        }
        assertThat(after.changes()).containsExactly(change.note());
        assertThat(Measures.of(after).mates().get(1).drift())
                .isCloseTo(Measures.of(skirt).mates().get(1).drift(), within(1e-6));
        Pattern back = change.opposite().orElseThrow().apply(after).pattern();
        for (int i = 0; i < 2; i++) {
            assertThat(Worst.apart(
                            back.pieces().get(i).outline(),
                            skirt.pieces().get(i).outline()))
                    .isLessThan(1e-6);
        }
        assertThat(Ways.from(change.note())).isEqualTo(change);
        assertThat(change.withAmount(0).apply(skirt).pattern()).isSameAs(skirt);
    }

    @Test
    void theWrittenFormIsRead() throws Refusal {
        LengthReader<NumberFormatException> mm = Double::parseDouble;
        Map<String, List<String>> texts =
                Map.of("level", List.of("waist"), "amount", List.of("5"), "dart", List.of("P/D = 2", "p/d"));
        assertThat(Ways.from(SettingText.read(DartIntake.WAY, texts, just(cloth("flat")), mm)))
                .isEqualTo(DartIntake.at("waist", 5, new DartShare("p", "d", 2), DartShare.of("p", "d")));
    }
}
