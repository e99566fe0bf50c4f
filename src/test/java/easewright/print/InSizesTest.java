package easewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class InSizesTest {
    private static final Words WORDS = Words.english(LengthUnit.CM);

    /** Fronts and backs in sizes, and a pocket of none. */
    private static Pattern nest(String... sizes) {
        Outline square =
                Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));
        List<Piece> pieces = new ArrayList<>(List.of(Piece.bare("pocket", square)));
        for (String size : sizes) {
            for (String name : List.of("Front", "Back")) {
                pieces.add(Piece.bare(name + size, square).toBuilder()
                        .name(name + " " + size)
                        .size(Optional.of(size))
                        .build());
            }
        }
        return Pattern.bare(pieces, new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE));
    }

    private static Finding moved(String piece, double by) {
        return Finding.of("edge-past-practice", Severity.CAUTION, piece)
                .with("edge", "side")
                .with("amount.signed", by)
                .with("limit", 25.0);
    }

    private static Finding small(String level, double by) {
        return Finding.of("garment-smaller-than-body", Severity.FAULT, "")
                .with("level", level)
                .with("short", by);
    }

    private static List<String> told(Pattern pattern, Finding... findings) {
        return InSizes.of(List.of(findings), pattern).stream()
                .map(each -> each.sentence(WORDS).replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void figuresThatDifferAreToldFromTheLeastToTheGreatest() {
        assertThat(told(nest("10", "12", "14"), small("hip (10)", 70), small("hip (12)", 76), small("hip (14)", 72)))
                .singleElement()
                .asString()
                .startsWith("In all sizes: At hip the garment is 7 cm to 7.6 cm smaller");
        assertThat(told(
                        nest("10", "12", "14"),
                        small("hip (12)", 70),
                        small("waist (12)", 5),
                        small("hip (10)", 70.001)))
                .satisfiesExactly(
                        hip -> assertThat(hip).startsWith("In sizes 10 and 12: At hip the garment is 7 cm smaller"),
                        waist -> assertThat(waist).startsWith("At waist (12) the garment"));
    }

    @Test
    void aNameThatIsPartOfAnotherIsNotTakenForIt() {
        assertThat(told(nest("1", "12"), moved("Front 12", 30)))
                .singleElement()
                .asString()
                .contains("Front 12")
                .doesNotContain("In ");
        assertThat(told(nest("1", "12"), moved("Front 12", 30), moved("Front 1", 30)))
                .singleElement()
                .asString()
                .startsWith("In all sizes: Edge \u201cside\u201d of Front moves by");
    }

    /** A seam of a piece to itself, or a name that first stands in a longer word. */
    @Test
    void theSizeIsLeftOutWhereverANameStandsInAText() {
        assertThat(told(
                        nest("10", "12"),
                        small("Front 10 to Front 10", 70),
                        small("Front 12 to Front 12", 76),
                        small("Front 102 by Front 10", 80),
                        small("Front 102 by Front 12", 82)))
                .satisfiesExactly(
                        itself ->
                                assertThat(itself).startsWith("In all sizes: At Front to Front the garment is 7 cm to"),
                        other -> assertThat(other)
                                .startsWith("In all sizes: At Front 102 by Front the garment is 8 cm to"));
    }

    @Test
    void aSeamOfOneSizeIsToldWithIt() {
        Finding seam = Finding.of("mate-mismatch", Severity.FAULT, "")
                .with("mate", "side seam")
                .with("one", List.of("Front"))
                .with("other", List.of("Back"))
                .with("first", 620.0)
                .with("second", 610.0)
                .with("ease.signed", 0.0)
                .with("drift.signed", 10.0);
        assertThat(told(nest("10", "12"), seam.with("size", "12")))
                .singleElement()
                .asString()
                .startsWith("In size 12: Seam \u201cside seam\u201d");
        assertThat(told(nest("10", "12"), seam)).singleElement().asString().startsWith("Seam");
    }

    /** Whatever is found where, and in whatever order: told once for each thing, and every size that has it is named. */
    @Test
    void nothingIsLostAndNothingToldTwice() {
        Random random = new Random(53);
        List<String> sizes = List.of("8", "10", "12", "14");
        Pattern pattern = nest(sizes.toArray(String[]::new));
        for (int i = 0; i < 200; i++) {
            List<Finding> findings = new ArrayList<>();
            for (String piece : List.of("Front", "Back")) {
                for (String size : sizes) {
                    for (int k = random.nextInt(3); k > 0; k--) {
                        findings.add(moved(piece + " " + size, 25 + 10 * random.nextDouble()));
                    }
                }
            }
            findings.add(moved("pocket", 40));
            Collections.shuffle(findings, random);
            List<InSizes> told = InSizes.of(findings, pattern);
            assertThat(told.stream().flatMap(t -> t.findings().stream())).containsExactlyInAnyOrderElementsOf(findings);
            for (InSizes each : told) {
                assertThat(each.sizes()).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(4);
                for (int k = 0; k < each.sizes().size(); k++) {
                    String size = each.sizes().get(k);
                    assertThat(each.findings()).anyMatch(f -> f.piece().endsWith(" " + size));
                }
            }
            for (String piece : List.of("Front", "Back")) {
                long most = sizes.stream()
                        .mapToLong(s -> findings.stream()
                                .filter(f -> f.piece().equals(piece + " " + s))
                                .count())
                        .max()
                        .orElseThrow();
                assertThat(told.stream().filter(t -> t.plain().piece().equals(piece)))
                        .as("%s: as many as a size has at most", piece)
                        .hasSize((int) most);
            }
        }
    }
}
