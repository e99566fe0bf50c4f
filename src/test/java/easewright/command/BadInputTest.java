package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be done is refused with a plain line, the right exit code, and every file as it was. */
class BadInputTest {
    private static final Path BAD = Path.of("src/test/resources/bad");
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    private Path out;
    private final Map<Path, byte[]> inputs = new HashMap<>();

    @BeforeEach
    void rememberInputs() throws IOException {
        out = folder.resolve("out.svg");
        try (Stream<Path> files = Stream.concat(Files.list(BAD), Stream.of(SKIRT))) {
            for (Path file : files.toList()) {
                inputs.put(file, Files.readAllBytes(file));
            }
        }
    }

    @AfterEach
    void inputsAreUntouchedAndNothingIsWritten() throws IOException {
        for (Map.Entry<Path, byte[]> input : inputs.entrySet()) {
            assertThat(Files.readAllBytes(input.getKey())).isEqualTo(input.getValue());
        }
        assertThat(out).doesNotExist();
    }

    private static void refused(Run run, String... parts) {
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(parts)
                .doesNotContain("Exception")
                .doesNotContain("\tat ")
                .doesNotContain("problem.")
                .doesNotContain("{");
    }

    @ParameterizedTest
    @ValueSource(strings = {"measure", "ease", "check"})
    void missingFile(String command) {
        refused(Run.of(command, BAD.resolve("nowhere.svg")), "nowhere.svg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"not-svg.svg", "letter.svg", "page.svg", "cut-off.svg", "no-outlines.svg"})
    void nothingToMeasure(String file) {
        refused(Run.of("measure", BAD.resolve(file), "--json"), file);
        refused(Run.of("change", BAD.resolve(file), "--at", "hip", "--by", "24mm", "-o", out), file);
    }

    @Test
    void aLayerOfADrawingWithoutAny() {
        refused(Run.of("measure", SKIRT, "--layer", "Size 38"), "no layers", "Leave out --layer");
    }

    /** What a line lacks is told in the same quotes as the rest. */
    @Test
    void whatAnotherSentenceTellsHasTheQuotesOfATerminal() throws IOException {
        Path body = Files.writeString(folder.resolve("me.txt"), "hip: wide");
        refused(
                Run.of("ease", SKIRT, "--body", body),
                "Line 1 of the body file",
                "me.txt",
                "\"wide\" is not a length.");
    }

    @Test
    void aFolderIsNoDrawing() {
        refused(Run.of("measure", BAD), BAD.toString());
    }

    @Test
    void openOutlineSaysWhereTheGapIs() {
        refused(Run.of("measure", BAD.resolve("open-outline.svg")), "front", "2\u00a0cm");
    }

    @Test
    void withoutScaleNothingIsChangedAndMeasuresCarryAWarning() {
        Path file = BAD.resolve("no-scale.svg");
        Run measured = Run.of("measure", file);
        assertThat(measured.code()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(measured.out()).contains("NOT PROVED").contains("--scale");
        refused(Run.of("change", file, "--at", "hip", "--by", "24mm", "-o", out), "scale", "--scale");
    }

    @ParameterizedTest
    @CsvSource({"test-line=100mm, 1", "2mm, 2", "test-line=5cm, 0.5"})
    void aKnownLineProvesTheScale(String scale, double mmPerUnit) {
        Run run = Run.of("measure", BAD.resolve("no-scale.svg"), "--scale", scale, "--json");
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(run.json().path("scale").path("mm_per_unit_x").asDouble())
                .isCloseTo(mmPerUnit, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(run.json().path("scale").path("proof").asText()).isEqualTo("known_line");
    }

    @ParameterizedTest
    @ValueSource(strings = {"wide", "nothing=10cm", "0mm", "-1mm", "test-line=", "1000000mm"})
    void aScaleThatCannotBe(String scale) {
        refused(Run.of("measure", BAD.resolve("no-scale.svg"), "--scale=" + scale), "drawn line");
    }

    @Test
    void unknownLevelNamesTheKnownOnes() {
        refused(Run.of("change", SKIRT, "--at", "chest", "--by", "24mm", "-o", out), "chest", "waist", "hip");
    }

    @Test
    void unknownEdgeAndPieceNameTheKnownOnes() {
        refused(
                Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "--edge", "skirt-front/middle", "-o", out),
                "middle",
                "side");
        refused(
                Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "--edge", "sleeve/side", "-o", out),
                "sleeve",
                "Front");
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "--edge", "side", "-o", out), "piece/edge");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1200mm", "-99 m"})
    void amountTooLargeForThePiece(String amount) {
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", amount, "-o", out), "Piece", "hip", "largest");
    }

    @Test
    void missingMateIsAFaultThatNamesTheSeam() {
        Run run = Run.of("check", BAD.resolve("mate-missing.svg"), "--json");
        assertThat(run.code()).isEqualTo(Commands.FAULTS);
        assertThat(run.json().path("findings").path(0).path("severity").asText())
                .isEqualTo("fault");
        assertThat(run.json().path("findings").path(0).path("message").asText())
                .contains("side seam", "back", "side", "Name the edges");
    }

    @ParameterizedTest
    @CsvSource({"24 parsec, parsec", "wide, wide", "'1,234', comma"})
    void amountThatIsNoLength(String amount, String part) {
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", amount, "-o", out), part);
    }

    @Test
    void wrongWordsForTheWay() {
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", "1cm", "--taper", "wavy", "-o", out), "smooth");
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", "1cm", "--method", "magic", "-o", out), "seam");
        refused(Run.of("change", SKIRT, "--at", "hip", "--by", "1cm", "--keep", "moon", "-o", out), "moon", "waist");
        refused(
                Run.of("change", SKIRT, "--at", "hip", "--by", "1cm", "--edge", "skirt-front/side=x", "-o", out),
                "share");
    }

    @Test
    void listsThatCannotBeRead() throws IOException {
        Path list = folder.resolve("list.json");
        refused(Run.of("change", SKIRT, "--list", list, "-o", out), "list.json");
        Map<String, String> texts = Map.of(
                "[{", "JSON",
                "[]", "is empty",
                "[{\"at\": \"hip\"}]", "\"by\"",
                "[{\"at\": \"hip\", \"by\": \"1cm\", \"colour\": 1}]", "colour");
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Files.writeString(list, text.getKey());
            Run run = Run.of("change", SKIRT, "--list", list, "-o", out);
            assertThat(run.code()).isEqualTo(Commands.REFUSED);
            assertThat(run.err()).contains(text.getValue()).doesNotContain("Exception");
        }
    }

    @Test
    void bodyFileThatCannotBeRead() throws IOException {
        Path body = Files.writeString(folder.resolve("me.txt"), "hip 98\n");
        refused(Run.of("ease", SKIRT, "--body", body), "Line 1", "Hip girth @hip");
        refused(Run.of("ease", SKIRT, "--body", folder.resolve("none.txt")), "none.txt");
        refused(Run.of("ease", SKIRT, "--body", SKIRT), "is a drawing or a page", "one measurement a line");
    }

    @Test
    void outputWithoutAFolder() {
        refused(
                Run.of("change", SKIRT, "--at", "hip", "--by", "1cm", "-o", folder.resolve("no/such/out.svg")),
                "folder");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "dance",
                "measure",
                "measure a.svg --colour",
                "change a.svg",
                "change a.svg --at hip",
                "change a.svg --at hip --by 1cm",
                "report a.svg",
                "measure a.svg --unit ell",
                "change a.svg --at hip --by 1cm --list b.json -o c.svg",
                "change a.svg --at hip --by 1cm -o c.svg --try"
            })
    void wrongUsage(String line) {
        Run run = Run.of((Object[]) (line.isEmpty() ? new String[0] : line.split(" ")));
        assertThat(run.code()).isEqualTo(Commands.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotEmpty().doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "measure", "ease", "change", "methods", "check", "print", "report", "draft"})
    void everyCommandHasHelp(String command) {
        Run run = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");
        assertThat(run.code()).isEqualTo(Commands.DONE);
        assertThat(run.out()).contains("Usage:").doesNotContain("option.").doesNotContain("usage.description");
    }
}
