package easewright.alter;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.skirtHalf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a change ends when the user names no place: docs/decisions/0011. */
class DefaultStopsTest {
    private static final Level HIGH_HIP = Level.of("high hip", LevelKind.OTHER);

    /** Half a skirt, 4 edges' worth as 2: waist to hip 8 in, with a high hip in between. */
    private static Pattern skirt(double highHip) {
        Piece front = skirtHalf("front", 9.75, 9.75, 8, 22);
        return pattern(
                List.of(WAIST, HIGH_HIP, HIP),
                front.withLevels(List.of(
                        LevelMark.along("waist", "waist"),
                        LevelMark.through("high hip", in(1, highHip)),
                        LevelMark.through("hip", in(1, 8)))));
    }

    private static double gain(Pattern before, Pattern after, String level) {
        return girth(after, level) - girth(before, level);
    }

    @Test
    void aLevelFarEnoughOffIsLeftAlone() throws Refusal {
        Pattern before = skirt(4);
        Altered altered = SeamChange.at("hip", 20).apply(before);
        assertThat(gain(before, altered.pattern(), "hip")).isCloseTo(20, within(1e-9));
        assertThat(gain(before, altered.pattern(), "high hip")).isEqualTo(0);
        assertThat(altered.findings()).noneMatch(f -> f.code().startsWith("taper"));
    }

    /** 4 in = 101.6 mm is room for 10.16 mm to the edge at 1:10: 20.32 mm in all, and not a hair more. */
    @Test
    void aLevelTooNearIsPassedAndSaidSo() throws Refusal {
        Pattern before = skirt(4);
        assertThat(gain(before, SeamChange.at("hip", 20.32).apply(before).pattern(), "high hip"))
                .isEqualTo(0);
        Altered altered = SeamChange.at("hip", 20.4).apply(before);
        assertThat(gain(before, altered.pattern(), "high hip")).isGreaterThan(1);
        assertThat(gain(before, altered.pattern(), "waist")).isEqualTo(0);
        Finding passed = altered.findings().stream()
                .filter(f -> f.code().equals("taper-passes-level"))
                .findFirst()
                .orElseThrow();
        assertThat(passed.values()).containsEntry("level", "high hip");
        assertThat((Double) passed.values().get("needed")).isCloseTo(102, within(1e-9));
        Pattern kept =
                SeamChange.at("hip", 20.4).keeping("high hip").apply(before).pattern();
        assertThat(gain(before, kept, "high hip")).isEqualTo(0);
    }

    @Test
    void aNotchStopsUnlessItIsTooSteepForAnyone() throws Refusal {
        Piece plain = skirt(4).pieces().get(0).withLevels(List.of(LevelMark.through("hip", in(1, 8))));
        Piece notched =
                plain.toBuilder().notches(List.of(new Notch("n", in(9.75, 6)))).build();
        Pattern before = pattern(List.of(HIP), notched);
        // 50.8 mm to the notch: room for 10.16 mm to the edge at 1:5.
        for (double amount : new double[] {20.3, 20.4}) {
            Pattern after = SeamChange.at("hip", amount).apply(before).pattern();
            Point notch = after.pieces().get(0).notches().get(0).at();
            assertThat(notch.equals(in(9.75, 6))).isEqualTo(amount < 20.32);
        }
    }

    @Test
    void levelsBelowAreLeftAloneToo() throws Refusal {
        Pattern before = skirt(4);
        Pattern after = SeamChange.at("waist", -15).apply(before).pattern();
        assertThat(gain(before, after, "waist")).isCloseTo(-15, within(1e-9));
        assertThat(gain(before, after, "high hip")).isEqualTo(0);
        Pattern large = SeamChange.at("waist", -24).apply(before).pattern();
        assertThat(gain(before, large, "high hip")).isLessThan(-1);
        assertThat(gain(before, large, "hip")).isEqualTo(0);
    }

    @Test
    void aLevelThatDoesNotCountOnThePieceIsNoPlaceToStop() throws Refusal {
        Piece front = skirt(4).pieces().get(0);
        Piece uncounted = front.withLevels(List.of(
                front.levels().get(0),
                front.levels().get(1).notCounted(),
                front.levels().get(2)));
        Pattern after = SeamChange.at("hip", 10)
                .apply(pattern(List.of(WAIST, HIGH_HIP, HIP), uncounted))
                .pattern();
        double mid = after.pieces()
                .get(0)
                .outline()
                .crossings(in(1, 4), new Point(1, 0))
                .get(1)
                .along();
        assertThat(mid).isGreaterThan(in(8.75, 0).x() + 1);
    }

    /** On every sample, a change of 24 mm out or 15 mm in at any level leaves every other level exactly as it was. */
    @ParameterizedTest
    @ValueSource(strings = {"skirt", "trousers", "bodice", "knit-top"})
    void samplesChangeAtTheLevelAskedForOnly(String sample) throws Exception {
        Pattern before = SvgFile.read(Path.of("sample-pieces", sample + ".svg")).pattern();
        GarmentMeasures was = Measures.of(before);
        int tried = 0;
        for (Level level : before.levels()) {
            for (double amount : new double[] {24, -15}) {
                Pattern after =
                        SeamChange.at(level.name(), amount).apply(before).pattern();
                for (Girth girth : Measures.of(after).girths()) {
                    double gain = girth.finished()
                            - was.girth(girth.level().name()).orElseThrow().finished();
                    assertThat(gain)
                            .as(
                                    "%s %+.0f mm: %s",
                                    level.name(), amount, girth.level().name())
                            .isCloseTo(girth.level().equals(level) ? amount : 0, within(1e-9));
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThanOrEqualTo(8);
    }
}
