package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static easewright.alter.Cloths.sewn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SpreadSlashesTest {
    private static final Level MIDDLE = Level.of("middle", LevelKind.OTHER);

    /** Worked examples W6 and W7: a square of 10 in, with a level at half its height. */
    private static Piece square(EdgeRole top, int times, boolean fold) {
        return Cloths.square("square", 10, top, fold ? EdgeRole.FOLD : EdgeRole.CENTRE).toBuilder()
                .cut(times, fold)
                .levels(List.of(LevelMark.through("middle", in(1, 5))))
                .build();
    }

    private static Pattern just(Piece piece) {
        return pattern(List.of(MIDDLE), piece);
    }

    /** By how much a wedge of 1 in at the hem widens the level: closed form of the turned right edge. */
    private static double widening() {
        double angle = 2 * Math.asin(0.05);
        return (5 * Math.cos(angle) - 5 + (5 + 5 * Math.sin(angle)) * Math.tan(angle)) * INCH;
    }

    @Test
    void w6AskedByTheGirthAtTheLevel() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM, 1, false));
        Slash slash = Slash.of("square", in(5, 10), in(5, 0));
        Altered altered = SpreadSlashes.hinged("middle", widening(), slash).apply(before);
        Piece after = altered.pattern().pieces().get(0);
        assertThat(sewn(after, "hem")).isCloseTo(11 * INCH, within(1e-6));
        assertThat(sewn(after, "top")).isCloseTo(10 * INCH, within(1e-9));
        assertThat(girth(altered.pattern(), "middle")).isCloseTo(10 * INCH + widening(), within(1e-6));
        assertThat(altered.findings()).anyMatch(f -> f.code().equals("hinge-corner"));
    }

    @Test
    void everyCutOfThePieceCounts() throws Refusal {
        Slash slash = Slash.of("square", in(5, 10), in(5, 0));
        for (Piece piece : List.of(square(EdgeRole.SEAM, 2, false), square(EdgeRole.SEAM, 1, true))) {
            Altered altered =
                    SpreadSlashes.hinged("middle", 2 * widening(), slash).apply(just(piece));
            assertThat(sewn(altered.pattern().pieces().get(0), "hem")).isCloseTo(11 * INCH, within(1e-6));
        }
    }

    @Test
    void w7ParallelAskedByTheGirth() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM, 2, false));
        SpreadSlashes slash = SpreadSlashes.parallel("middle", 2 * INCH, Slash.of("square", in(5, 0), in(5, 10)));
        Piece after = slash.apply(before).pattern().pieces().get(0);
        assertThat(sewn(after, "top")).isCloseTo(11 * INCH, within(1e-9));
        assertThat(after.outline().signedArea() / (INCH * INCH)).isCloseTo(110, within(1e-9));
        Refusal refusal =
                catchThrowableOfType(Refusal.class, () -> slash.apply(just(square(EdgeRole.SHOULDER, 2, false))));
        assertThat(refusal.code()).isEqualTo("edge-protected");
        assertThat(slash.acceptingProtected()
                        .apply(just(square(EdgeRole.SHOULDER, 2, false)))
                        .pattern()
                        .changes())
                .hasSize(1);
    }

    @Test
    void severalSlashesShareTheTotal() throws Refusal {
        Pattern before = pattern(List.of(MIDDLE), square(EdgeRole.SEAM, 2, false), other());
        Slash near = Slash.of("square", in(3, 10), in(3, 0)).withWeight(1);
        Slash far = Slash.of("square", in(7, 10), in(7, 0)).withWeight(2);
        Slash apart = Slash.of("other", in(25, 10), in(25, 0)).withWeight(1);
        Pattern after = SpreadSlashes.hinged("middle", 30, near, far, apart)
                .apply(before)
                .pattern();
        assertThat(girth(after, "middle") - girth(before, "middle")).isCloseTo(30, within(1e-6));
        // Shares 1 and 2 on a piece that counts twice, 1 on one that counts once: 2, 4 and 1 parts of 7.
        assertThat(width(after, 1) - width(before, 1)).isCloseTo(30 / 7.0, within(1e-6));
        assertThat(width(after, 0) - width(before, 0)).isCloseTo(90 / 7.0, within(1e-6));
        Pattern turned = SpreadSlashes.hinged("middle", 30, apart, far, near)
                .apply(before)
                .pattern();
        assertThat(turned.pieces()).isEqualTo(after.pieces());
        Pattern back = SpreadSlashes.hinged("middle", 30, near, far, apart)
                .opposite()
                .orElseThrow()
                .apply(after)
                .pattern();
        assertThat(Likeness.sameLine(
                        back.pieces().get(0).outline(), before.pieces().get(0).outline()))
                .isTrue();
        assertThat(girth(back, "middle")).isCloseTo(girth(before, "middle"), within(1e-9));
    }

    /** Opened by far, the second slash no longer lies where it was named; it is found and closed all the same. */
    @Test
    void farOpenedSlashesAreTakenBackToo() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM, 1, false));
        Slash[] three = {
            Slash.of("square", in(2, 10), in(3, 0)),
            Slash.of("square", in(5, 10), in(5, 0)),
            Slash.of("square", in(8, 10), in(7, 0))
        };
        for (SpreadSlashes change : List.of(
                SpreadSlashes.hinged("middle", 3 * INCH, three), SpreadSlashes.parallel("middle", 3 * INCH, three))) {
            Pattern after = change.apply(before).pattern();
            Pattern back = change.opposite().orElseThrow().apply(after).pattern();
            assertThat(Likeness.same(back.pieces().get(0), before.pieces().get(0)))
                    .isTrue();
        }
    }

    private static Piece other() {
        Piece piece = square(EdgeRole.SEAM, 1, false);
        easewright.geom.Affine aside = easewright.geom.Affine.translation(in(20, 0));
        return Piece.bare("other", piece.outline().transformed(aside)).toBuilder()
                .edges(piece.edges().stream()
                        .map(e -> e.withEnds(aside.apply(e.from()), aside.apply(e.to())))
                        .toList())
                .levels(List.of(LevelMark.through("middle", in(21, 5))))
                .build();
    }

    private static double width(Pattern pattern, int piece) {
        return Measures.width(pattern.pieces().get(piece), MIDDLE).orElseThrow().net();
    }

    /**
     * Worked example W14: 0.375 in an inch below a fixed underarm would swing the side seam by 20.56°. A slash from the hem
     * to a hinge at the shoulder gives the same girth and leaves armhole and side seam as long as they were.
     */
    @Test
    void w14TheSlashInsteadOfTheSteepSeam() throws Refusal {
        Level bust = Level.of("bust", LevelKind.BUST);
        Piece front = polygon(
                        "front",
                        List.of(in(2.5, 0), in(6, 1.5), in(6.5, 6), in(9, 8), in(9, 16), in(0, 16), in(0, 2.5)),
                        "shoulder SHOULDER, upper armhole ARMHOLE, armhole ARMHOLE, side SEAM, waist WAIST, fold FOLD, neck NECK")
                .toBuilder()
                .cut(1, true)
                .levels(List.of(LevelMark.through("bust", in(1, 9))))
                .build();
        Pattern before = pattern(List.of(bust), front);
        Altered steep =
                SeamChange.at("bust", 0.75 * INCH).withTaper(Taper.STRAIGHT).apply(before);
        assertThat(steep.findings()).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo("taper-steep");
            assertThat((Double) f.values().get("slope.degrees")).isCloseTo(20.56, within(0.005));
        });
        Altered slashed = SpreadSlashes.hinged("bust", 0.75 * INCH, Slash.of("front", in(6, 16), in(5, 1.071428571)))
                .apply(before);
        assertThat(girth(slashed.pattern(), "bust") - girth(before, "bust")).isCloseTo(0.75 * INCH, within(1e-6));
        Piece after = slashed.pattern().pieces().get(0);
        for (String edge : List.of("shoulder", "upper armhole", "armhole", "side", "neck", "fold")) {
            assertThat(sewn(after, edge)).as(edge).isCloseTo(sewn(front, edge), within(1e-9));
        }
        assertThat(slashed.findings()).noneMatch(f -> f.code().startsWith("taper"));
    }

    @Test
    void slashesThatDoNotHelpAreRefused() {
        Pattern before = just(square(EdgeRole.SEAM, 1, false));
        // Opens below the level: the width there stays.
        Slash low = Slash.of("square", in(5, 10), in(0, 8)).moving(in(2, 10));
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> SpreadSlashes.hinged("middle", 5, low).apply(before));
        assertThat(refusal.code()).isEqualTo("slash-not-at-level");
        Slash one = Slash.of("square", in(3, 10), in(3, 0)).moving(in(10, 5));
        Slash two = Slash.of("square", in(7, 10), in(7, 0)).moving(in(0, 5));
        refusal = catchThrowableOfType(
                Refusal.class, () -> SpreadSlashes.hinged("middle", 5, one, two).apply(before));
        assertThat(refusal.code()).isEqualTo("slashes-entangled");
        Slash plain = Slash.of("square", in(5, 10), in(5, 0));
        refusal = catchThrowableOfType(
                Refusal.class,
                () -> SpreadSlashes.hinged("middle", -9 * INCH, plain).apply(before));
        assertThat(refusal.largest().orElseThrow()).isBetween(-9 * INCH, -INCH);
    }

    @Test
    void theWrittenFormIsRead() throws Refusal {
        Pattern before = just(square(EdgeRole.SEAM, 1, false));
        LengthReader<NumberFormatException> mm = text -> Double.parseDouble(text.replace("mm", ""));
        Map<String, List<String>> texts = Map.of(
                "level", List.of("middle"),
                "amount", List.of("12"),
                "slash", List.of("square/hem@40% > square/top@50% = 2; 127,254 > 127,0 > square/right@50%"));
        assertThat(Ways.from(SettingText.read(SpreadSlashes.WAY, texts, before, mm)))
                .isEqualTo(SpreadSlashes.hinged(
                        "middle",
                        12,
                        Slash.of("square", new Point(152.4, 254), new Point(127, 0))
                                .withWeight(2),
                        Slash.of("square", new Point(127, 254), new Point(127, 0))
                                .moving(in(10, 5))));
    }
}
