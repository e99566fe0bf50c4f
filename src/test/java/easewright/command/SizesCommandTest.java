package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several sizes in one file, by the command line. */
class SizesCommandTest {
    private static final Path NEST = Path.of("sample-pieces/skirt-sizes.svg");
    private static final double INCH = 25.4;

    @TempDir
    Path folder;

    private static JsonNode girth(JsonNode document, String level, String size) {
        for (JsonNode girth : document.get("girths")) {
            if (girth.get("level").asText().equals(level)
                    && girth.path("size").asText().equals(size)) {
                return girth;
            }
        }
        throw new AssertionError(level + " " + size);
    }

    private static List<Double> changes(Run run) {
        List<Double> by = new ArrayList<>();
        for (String size : List.of("10", "12", "14")) {
            JsonNode document = run.json();
            by.add(girth(document.get("after"), "hip", size).get("finished_mm").asDouble()
                    - girth(document.get("before"), "hip", size)
                            .get("finished_mm")
                            .asDouble());
        }
        return by;
    }

    /** 24 cm where 24 mm were meant, as on a pattern of one size. */
    @Test
    void refusesWhatIsOutOfProportionInOneOfTheSizes() {
        Run slip = Run.of("change", NEST, "--at", "hip", "--by", "24cm", "--sizes", "10", "--try");
        assertThat(slip.code()).isEqualTo(Commands.REFUSED);
        assertThat(slip.err()).contains("hip (10)").contains("--anyway");
    }

    @Test
    void changesTheSizesNamedAndTellsTheOutcomeOfEach() {
        Run two = Run.of(
                "change",
                NEST,
                "--at",
                "hip",
                "--by",
                "24mm",
                "--sizes",
                "10,14",
                "--edge",
                "front/side",
                "--edge",
                "back/side",
                "--try",
                "--json");
        assertThat(changes(two)).satisfiesExactly(near(24), near(0), near(24));
        Run all = Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--sizes", "all", "--try", "--json");
        assertThat(changes(all)).satisfiesExactly(near(24), near(24), near(24));
        Run told = Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--sizes", "all", "--try");
        assertThat(told.out()).contains("hip, size 10").contains("hip, size 12").contains("hip, size 14");
        assertThat(told.code()).isZero();
    }

    private static java.util.function.Consumer<Double> near(double mm) {
        return by -> assertThat(by).isCloseTo(mm, within(0.01));
    }

    /** What is asked for in one go is recorded as one change, and reported in one line. */
    @Test
    void sizesChangedInOneGoAreOneChange() throws Exception {
        Path out = folder.resolve("out.svg");
        Run run = Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--sizes", "10,14", "-o", out, "--json");
        assertThat(run.json().get("changes")).hasSize(2);
        assertThat(Files.readString(out)).containsOnlyOnce("<set name=\"as-in-size\" value=\"10\"/>");
        Path page = folder.resolve("report.html");
        Run.of("report", out, "-o", page);
        assertThat(Files.readString(page)).containsOnlyOnce("In sizes 10 and 14: ");
        Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--sizes", "14", "-o", out, "--overwrite");
        assertThat(Files.readString(out)).doesNotContain("as-in-size");
    }

    @Test
    void oneSizeRefusesAndNoneIsChanged() throws Exception {
        Path list = folder.resolve("list.json");
        Files.writeString(list, """
                [{"at": "hip", "by": "24mm", "sizes": "10"},
                 {"at": "hip", "by": "-90cm", "sizes": ["12"]}]""");
        Path out = folder.resolve("out.svg");
        Run run = Run.of("change", NEST, "--list", list, "-o", out);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("In size 12:").contains("No size was changed");
        assertThat(out).doesNotExist();
    }

    @Test
    void aSizeHasToBeNamed() {
        Run run = Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--try");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--sizes");
        assertThat(Run.of("ease", NEST, "--size", "16").err()).contains("10, 12, 14");
        Run unsized = Run.of("ease", "sample-pieces/skirt.svg", "--size", "12");
        assertThat(unsized.code()).isEqualTo(Commands.REFUSED);
        assertThat(unsized.err()).startsWith("No piece of this pattern has a size marked");
        Run none =
                Run.of("change", "sample-pieces/skirt.svg", "--at", "hip", "--by", "24mm", "--sizes", "all", "--try");
        assertThat(none.code()).isEqualTo(2);
    }

    @Test
    void aWishIsToldToBeForAllSizes() {
        assertThat(Run.of("ease", NEST).out()).contains("A wish counts for all sizes, each on its own body.");
        assertThat(Run.of("ease", NEST, "--size", "12").out()).doesNotContain("for all sizes");
        assertThat(Run.of("ease", "sample-pieces/skirt.svg").out()).doesNotContain("for all sizes");
    }

    @Test
    void theEaseOfOneSizeOnWhomeverIsAsked() throws Exception {
        JsonNode own = Run.of("ease", NEST, "--size", "12", "--json").json();
        assertThat(own.get("girths")).hasSize(2);
        assertThat(own.get("girths").get(1).get("body_mm").asDouble()).isCloseTo(40 * INCH, within(1e-6));
        Run table = Run.of("ease", NEST, "--size", "12", "--body", "home-pattern:14", "--json");
        assertThat(table.json().get("girths").get(1).get("body_mm").asDouble()).isCloseTo(38 * INCH, within(1e-6));
        assertThat(table.out()).contains("from memory");
        JsonNode each = Run.of("ease", NEST, "--body", "astm-1995", "--json").json();
        assertThat(girth(each, "hip", "10").get("ease_mm").asDouble()).isCloseTo(50, within(0.01));
        assertThat(girth(each, "hip", "14").get("ease_mm").asDouble()).isCloseTo(50, within(0.01));
        Path file = folder.resolve("body.txt");
        Files.writeString(file, "size: 10\nhip: 95\nsize: 14\nhip: 100\n");
        JsonNode mine = Run.of("ease", NEST, "--body", file, "--json").json();
        assertThat(girth(mine, "hip", "10").get("body_mm").asDouble()).isEqualTo(950);
        assertThat(girth(mine, "hip", "12").get("body_mm").isNull()).isTrue();
        assertThat(girth(mine, "hip", "14").get("body_mm").asDouble()).isEqualTo(1000);
        assertThat(Run.of("ease", "sample-pieces/skirt.svg", "--body", "astm-1995")
                        .code())
                .isEqualTo(2);
        assertThat(Run.of("ease", "sample-pieces/skirt.svg", "--body", "astm-1995:99")
                        .err())
                .contains("99");
    }

    /** What a change is compared with is the wearer given, not the one in the file. */
    @Test
    void aChangeIsJudgedOnTheWearerGiven() throws Exception {
        Path file = folder.resolve("body.txt");
        Files.writeString(file, "hip: 90\nwaist: 60\n");
        Run own = Run.of("change", "sample-pieces/skirt.svg", "--at", "hip", "--by", "-30mm", "--try");
        Run given =
                Run.of("change", "sample-pieces/skirt.svg", "--at", "hip", "--by", "-30mm", "--body", file, "--try");
        assertThat(own.out()).contains("The ease at hip is");
        assertThat(given.out()).doesNotContain("The ease at hip is");
    }

    @Test
    void theReportComparesEachSizeWithItself() throws IOException {
        Path changed = folder.resolve("wider.svg");
        Run change = Run.of("change", NEST, "--at", "hip", "--by", "24mm", "--sizes", "all", "-o", changed);
        assertThat(change.code()).as(change.err()).isLessThan(Commands.REFUSED);
        Path page = folder.resolve("report.html");
        assertThat(Run.of("report", changed, "-o", page).code()).isLessThan(Commands.REFUSED);
        String said = Files.readString(page)
                .replace('\u00a0', ' ')
                .replaceAll("<[^>]*>|\\s", " ")
                .replaceAll(" +", " ");
        // The hips of the sample are 102.79, 106.6 and 110.41 cm, each 2.4 cm more now.
        assertThat(said)
                .contains(
                        "hip, size 10 97.8 cm 102.8 cm 105.2 cm",
                        "hip, size 12 101.6 cm 106.6 cm 109 cm",
                        "hip, size 14 105.4 cm 110.4 cm 112.8 cm")
                .contains("side seam, size 14");
    }

    @Test
    void theEaseSheetTellsSizesApartAndTablesOnce() {
        String said = Run.of("ease", NEST).out();
        assertThat(said).contains("waist, size 10 ", "hip, size 14 ");
        assertThat(said.lines().filter(l -> l.contains("semi-fitted"))).hasSize(1);
    }
}
