package easewright.ease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EaseSheetTest {
    private static final double INCH = 25.4;
    private static final EaseTables TABLES = EaseTables.standard();

    /** A tube of the given girth: a front and a back, each on the fold. */
    private static Pattern tube(LevelKind kind, double girth, double body, Cloth cloth) {
        Outline half = Outline.polygon(
                List.of(new Point(0, 0), new Point(girth / 4, 0), new Point(girth / 4, 300), new Point(0, 300)));
        Piece front =
                Piece.bare("front", half).withLevels(List.of(LevelMark.through("L", new Point(10, 100)))).toBuilder()
                        .cut(1, true)
                        .build();
        Piece back = Piece.bare("back", half).withLevels(front.levels()).toBuilder()
                .cut(1, true)
                .build();
        return Pattern.bare(List.of(front, back), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(new Level("L", kind, false)))
                .withBody(new Body("test", List.of(new BodyMeasure("Girth", "L", body, ""))))
                .withCloth(cloth);
    }

    private static EaseSheet sheet(Pattern pattern) {
        return EaseSheet.of(pattern, Measures.of(pattern), TABLES);
    }

    private static String word(EaseLine line, String table) {
        return classed(line, table).orElseThrow().word();
    }

    private static Optional<Classed> classed(EaseLine line, String table) {
        return line.classes().stream().filter(c -> c.table().id().equals(table)).findFirst();
    }

    private static List<String> codes(EaseSheet sheet) {
        return sheet.findings().stream().map(Finding::code).toList();
    }

    /** Trade-facts W1: body 36, garment 40 in; C-228's own example: 36 + 2.5 = 38.5. */
    @Test
    void w1EaseAndItsClasses() {
        EaseLine line = sheet(tube(LevelKind.BUST, 40 * INCH, 36 * INCH, Cloth.WOVEN))
                .lines()
                .get(0);
        assertThat(line.finished()).isCloseTo(40 * INCH, within(1e-9));
        assertThat(line.ease().getAsDouble()).isCloseTo(4 * INCH, within(1e-9));
        assertThat(line.percent().getAsDouble()).isCloseTo(11.11, within(0.005));
        assertThat(word(line, "us-publishers-dress-bust")).isEqualTo("fitted");
        assertThat(word(line, "us-publishers-jacket-bust")).isEqualTo("fitted");
        assertThat(classed(line, "us-publishers-coat-bust").orElseThrow().where())
                .isEqualTo(Classed.Where.BELOW);
        EaseLine footnote = sheet(tube(LevelKind.BUST, 38.5 * INCH, 36 * INCH, Cloth.WOVEN))
                .lines()
                .get(0);
        assertThat(footnote.ease().getAsDouble() / INCH).isCloseTo(2.5, within(1e-9));
        assertThat(word(footnote, "us-publishers-dress-bust")).isEqualTo("close-fitting");
    }

    /** Trade-facts 1.1: holes of 1/8 in belong to the upper band, tops to the lower. */
    @ParameterizedTest
    @CsvSource({
        "2.875, close-fitting",
        "2.9, fitted",
        "4, fitted",
        "4.0625, semi-fitted",
        "5, semi-fitted",
        "5.05, loose-fitting",
        "8, loose-fitting",
        "8.01, very loose-fitting",
        "30, very loose-fitting"
    })
    void holesBelongToTheUpperBand(double inches, String expected) {
        EaseLine line = sheet(tube(LevelKind.BUST, (36 + inches) * INCH, 36 * INCH, Cloth.WOVEN))
                .lines()
                .get(0);
        assertThat(word(line, "us-publishers-dress-bust")).isEqualTo(expected);
    }

    /** The same word means other numbers elsewhere: Studio Calicot calls 7 cm semi-fitted, the US publishers fitted. */
    @Test
    void disagreeingSourcesAreAllShown() {
        EaseLine line =
                sheet(tube(LevelKind.HIP, 1070, 1000, Cloth.WOVEN)).lines().get(0);
        assertThat(word(line, "us-publishers-skirt-hip")).isEqualTo("fitted");
        assertThat(word(line, "studio-calicot-hip")).isEqualTo("semi-fitted");
    }

    /** Trade-facts W15: body 90, garment 81 cm on a cloth of 50 % by the hand test. */
    @Test
    void w15NegativeEase() {
        EaseSheet ok = sheet(tube(LevelKind.BUST, 810, 900, Cloth.knit(50)));
        EaseLine line = ok.lines().get(0);
        assertThat(line.ease().getAsDouble()).isCloseTo(-90, within(1e-9));
        assertThat(line.percent().getAsDouble()).isCloseTo(-10, within(1e-9));
        assertThat(line.stretchNeeded().getAsDouble()).isCloseTo(11.11, within(0.005));
        assertThat(codes(ok)).doesNotContain("stretch-little-left", "stretch-too-little");
        EaseSheet tight = sheet(tube(LevelKind.BUST, 630, 900, Cloth.knit(50)));
        assertThat(tight.lines().get(0).stretchNeeded().getAsDouble()).isCloseTo(42.86, within(0.005));
        assertThat(codes(tight)).contains("stretch-little-left");
        EaseSheet tooTight = sheet(tube(LevelKind.BUST, 590, 900, Cloth.knit(50)));
        assertThat(codes(tooTight)).contains("stretch-too-little");
    }

    /** Trade-facts 1.3: demand d = r / (1 − r). */
    @ParameterizedTest
    @CsvSource({
        "2, 2.04",
        "3, 3.09",
        "5, 5.26",
        "8, 8.70",
        "10, 11.11",
        "15, 17.65",
        "20, 25.00",
        "25, 33.33",
        "30, 42.86"
    })
    void stretchDemand(double reduction, double demand) {
        EaseLine line = sheet(tube(LevelKind.HIP, 1000 - 10 * reduction, 1000, Cloth.knit(100)))
                .lines()
                .get(0);
        assertThat(line.stretchNeeded().getAsDouble()).isCloseTo(demand, within(0.005));
    }

    @Test
    void wovenTablesDoNotApplyToKnits() {
        EaseSheet sheet = sheet(tube(LevelKind.HIP, 1000, 960, Cloth.knit(40)));
        assertThat(sheet.lines().get(0).classes())
                .extracting(c -> c.table().knit())
                .containsOnly(true);
        assertThat(sheet.lines().get(0).minimums()).isEmpty();
        assertThat(codes(sheet)).contains("woven-tables-left-out");
    }

    @Test
    void belowTheLeastWearingEase() {
        // Lowest at the hip: 1 1/2 in (Central Washington, trousers seat); highest low end: 2 in.
        assertThat(codes(sheet(tube(LevelKind.HIP, 1000 + 1.4 * INCH, 1000, Cloth.WOVEN))))
                .contains("ease-below-minimum");
        assertThat(codes(sheet(tube(LevelKind.HIP, 1000 + 1.6 * INCH, 1000, Cloth.WOVEN))))
                .containsExactly("ease-below-some-minimum");
        assertThat(codes(sheet(tube(LevelKind.HIP, 1000 + 2 * INCH, 1000, Cloth.WOVEN))))
                .isEmpty();
    }

    @Test
    void wovenSmallerThanTheBodyIsAFault() {
        assertThat(codes(sheet(tube(LevelKind.HIP, 980, 1000, Cloth.WOVEN))))
                .containsExactly("garment-smaller-than-body");
        assertThat(codes(sheet(tube(
                        LevelKind.HIP,
                        980,
                        1000,
                        new Cloth(
                                false,
                                OptionalDouble.of(15),
                                Cloth.WOVEN.along(),
                                Cloth.WOVEN.recovery(),
                                Cloth.WOVEN.shrinkage())))))
                .as("a woven that stretches")
                .isEmpty();
        assertThat(codes(sheet(tube(
                        LevelKind.HIP,
                        980,
                        1000,
                        new Cloth(
                                true,
                                Cloth.WOVEN.across(),
                                Cloth.WOVEN.along(),
                                Cloth.WOVEN.recovery(),
                                Cloth.WOVEN.shrinkage())))))
                .contains("stretch-unknown");
    }

    @Test
    void wishAndWhatIsMissing() {
        Pattern pattern = tube(LevelKind.HIP, 39 * INCH, 38 * INCH, Cloth.WOVEN).withWish("L", 3 * INCH);
        EaseLine line = sheet(pattern).lines().get(0);
        assertThat(line.missing().getAsDouble()).as("worked example W3").isCloseTo(2 * INCH, within(1e-9));
    }

    @Test
    void unknownBodyLeavesTheGirthAlone() {
        EaseSheet sheet = sheet(tube(LevelKind.HIP, 1000, 960, Cloth.WOVEN).withBody(Body.UNKNOWN));
        assertThat(sheet.lines().get(0).finished()).isCloseTo(1000, within(1e-9));
        assertThat(sheet.lines().get(0).ease()).isEmpty();
        assertThat(codes(sheet)).containsExactly("body-missing");
    }

    /**
     * ASTM D5585-11e1, bust of Misses sizes 00 to 20 in inches (docs/sources.md 2.2), each in a bodice that the table of
     * the US publishers calls fitted: the percentage falls as the body grows.
     */
    @Test
    void sameEaseIsLessInProportionOnLargerBodies() {
        double[] bust = {31.125, 31.75, 33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125, 44, 46};
        double last = Double.POSITIVE_INFINITY;
        for (double inches : bust) {
            EaseLine line = sheet(tube(LevelKind.BUST, (inches + 3.5) * INCH, inches * INCH, Cloth.WOVEN))
                    .lines()
                    .get(0);
            assertThat(word(line, "us-publishers-dress-bust")).isEqualTo("fitted");
            assertThat(line.percent().getAsDouble())
                    .isCloseTo(350 / inches, within(1e-9))
                    .isLessThan(last);
            last = line.percent().getAsDouble();
        }
    }

    @Test
    void tightLimbIsNotCompression() {
        EaseSheet sheet = sheet(
                tube(LevelKind.THIGH, 480, 600, Cloth.knit(100)).withLevels(List.of(Level.of("L", LevelKind.THIGH))));
        assertThat(codes(sheet)).contains("not-for-compression");
        assertThat(codes(sheet(tube(LevelKind.HIP, 780, 1000, Cloth.knit(100)))))
                .doesNotContain("not-for-compression");
    }

    @Test
    void lineWithoutReachingPieceHasNoEase() {
        Pattern pattern = tube(LevelKind.HIP, 1000, 960, Cloth.WOVEN);
        Pattern bare = pattern.withPieces(
                pattern.pieces().stream().map(p -> p.withLevels(List.of())).toList());
        assertThat(sheet(bare).lines().get(0).ease()).isEmpty();
    }
}
