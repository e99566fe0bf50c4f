package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a change and a drawing without marks are told about. */
class ChangeSaidTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    private static Run change(Path file, String... options) {
        List<Object> line = new ArrayList<>(List.of("change", file));
        line.addAll(List.of(options));
        return Run.of(line.toArray());
    }

    @ParameterizedTest
    @CsvSource({
        "--at hip --by +2m, 105 cm, 200 cm",
        "--at hip --by 24in, 105 cm, 60.95 cm",
        "--at hip --by -30cm, 105 cm, 30 cm",
        "--method lengthen --at hip --by 1.2m, grow, twice"
    })
    void asksBackWhereAnAmountIsOutOfProportion(String options, String one, String other) {
        Path out = folder.resolve("out.svg");
        List<String> line = new ArrayList<>(List.of(options.split(" ")));
        line.addAll(List.of("-o", out.toString()));
        Run asked = change(SKIRT, line.toArray(String[]::new));
        assertThat(asked.code()).isEqualTo(Commands.REFUSED);
        assertThat(asked.err().replace('\u00a0', ' ')).contains(one, other, "--anyway", "unit");
        assertThat(out).doesNotExist();
        line.add("--anyway");
        Run meant = change(SKIRT, line.toArray(String[]::new));
        assertThat(meant.code()).as(meant.err()).isLessThan(Commands.REFUSED);
        assertThat(out).exists();
        assertThat(meant.out()).contains("Check the amount");
    }

    /** A seam that is sewn on each side since is told with what it was before. */
    @ParameterizedTest
    @ValueSource(strings = {"left", "right"})
    void aSeamOfOneSideIsToldWithWhatItWas(String side) {
        Run run = change(SKIRT, "--at", "hip", "--by", "2cm", "--edge", "Front/side", "--side", side, "--try");
        assertThat(run.out()).containsPattern("side seam " + side + " +0 +0.5 +\\+0.5");
    }

    /** The drawn side and the copied one alike, with the sleeve of that side that fits again. */
    @ParameterizedTest
    @ValueSource(strings = {"left", "right"})
    void whatOneSideBecameIsToldOfEither(String side) {
        Run run = change(
                Path.of("sample-pieces/bodice.svg"),
                List.of("--method edge-length --edge Front/armhole --by 1cm --set how=at-ends --accept --try --side "
                                .concat(side)
                                .split(" "))
                        .toArray(String[]::new));
        assertThat(run.out()).containsPattern("Front " + side + ", armhole +20.78 +21.78 +\\+1");
        assertThat(run.out().replaceAll("[\\s\u00a0]+", " "))
                .contains("The protected edge \"armhole\" of Front " + side + " changed")
                .contains("girth at upper arm " + side + " by +1.3 cm");
    }

    @Test
    void aMisfitIsOneMessageWithTheWayOut() {
        Run run = change(SKIRT, "--method", "edge-length", "--edge", "waistband/seam", "--by", "-30mm", "--try");
        assertThat(run.code()).isEqualTo(Commands.FAULTS);
        String said = run.out().substring(run.out().indexOf("Worth a look"));
        assertThat(said.lines().filter(l -> l.matches("  (FAULT|caution|note) .*")))
                .hasSize(1)
                .allSatisfy(l -> assertThat(l).contains("waistband"));
        String flat = said.replaceAll("[\\s\u00a0]+", " ");
        assertThat(flat)
                .contains("now 3 cm too long on Front and Back", "Back/waist", "by \u22120.75 cm", "hip and waist");
    }

    @Test
    void lengtheningShowsWhatBecameLonger() {
        Run run = change(SKIRT, "--method", "lengthen", "--at", "hip", "--set", "below=10 cm", "--by", "2cm", "--try");
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(run.out())
                .containsPattern("Front, fold +60.00 +62.00 +\\+2")
                .containsPattern("Back, side +61.59 +63.59 +\\+2")
                .doesNotContain("caution", "protected");
    }

    /** Lengths that are told to the tenth of a millimetre differ by what stands beside them. */
    @Test
    void theDifferenceIsToldAsFinelyAsTheLengths() {
        Run run = change(SKIRT, "--at", "hip", "--by", "24.2mm", "--try");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(run.out()).containsPattern("(?i)hip +105 +107.42 +\\+2.42");
        Words words = Words.english(LengthUnit.CM);
        assertThat(words.signedCompared(-24.2)).isEqualTo("\u22122.42");
        assertThat(words.signedCompared(0.02)).isEqualTo("0");
        assertThat(words.signedCompared(-0.02)).isEqualTo("0");
        assertThat(Words.english(LengthUnit.INCH).signedCompared(38.1)).isEqualTo("+1\u00a01/2");
    }

    @Test
    void aDrawingWithoutMarksSaysWhatIsMissing() {
        Path bare = Path.of("docs/first-fit/skirt.svg");
        for (String command : List.of("measure", "ease", "check")) {
            Run run = Run.of(command, bare);
            String said = run.out().replaceAll("[\\s\u00a0]+", " ");
            assertThat(said).contains("No level", "page Marks", "test square for the scale, not as a piece");
            assertThat(said).doesNotContain("5 cm × 5 cm, cut");
        }
        assertThat(Run.of("measure", bare, "--json").json().path("pieces")).hasSize(3);
        assertThat(Run.of("ease", SKIRT).out()).doesNotContain("No level");
    }

    @Test
    void whatWasThereBeforeIsCountedAndNotRepeated() {
        Run nothing = change(SKIRT, "--at", "hip", "--by", "24mm", "--try");
        assertThat(nothing.out()).contains("Nothing to look out for.");
        Path trousers = Path.of("src/test/resources/command/untrue-trousers.svg");
        Run old = change(trousers, "--at", "knee", "--by", "6mm", "--carry", "--try");
        assertThat(old.out()).contains("Nothing new to look out for.").doesNotContain("bends by");
        Run some = change(trousers, "--at", "hip", "--by", "6cm", "--try");
        assertThat(some.out().replaceAll("\\s+", " "))
                .contains("Worth a look", "as before the change")
                .doesNotContain("\"crotch\" bends");
        Run json = change(trousers, "--at", "hip", "--by", "6cm", "--try", "--json");
        assertThat(json.json().path("findings").findValuesAsText("code")).contains("mate-drifted", "joined-line-bends");
    }
}
