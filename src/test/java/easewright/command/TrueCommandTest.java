package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is untrue is listed with what would move, and put right by name, by number, or all of it. */
class TrueCommandTest {
    @TempDir
    Path folder;

    /** A skirt made wider at the hip by a steep straight taper is untrue at waist, hem and side. */
    private Path untrue;

    @BeforeEach
    void change() {
        untrue = folder.resolve("untrue.svg");
        Run run = Run.of(
                "change",
                "sample-pieces/skirt.svg",
                "--at",
                "hip",
                "--by",
                "+120mm",
                "--taper",
                "straight",
                "--overwrite",
                "-o",
                untrue);
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
    }

    private static List<String> places(JsonNode document) {
        List<String> places = new ArrayList<>();
        document.get("truings").forEach(t -> places.add(t.get("place").asText()));
        return places;
    }

    @Test
    void listSaysWhereAndHowMuchWouldMoveInTheUnitAskedFor() throws Exception {
        Run text = Run.of("true", untrue, "--unit", "mm");
        assertThat(text.code()).isEqualTo(Commands.DONE);
        assertThat(text.out().replace('\u00a0', ' '))
                .contains("side seam/start")
                .containsPattern("[0-9] mm\\s+over ")
                .contains("--place");
        JsonNode json = Run.of("true", untrue, "--json").json();
        JsonNode first = json.get("truings").get(0);
        assertThat(first.get("place").asText()).isEqualTo("side seam/start");
        assertThat(first.get("possible").asBoolean()).isTrue();
        assertThat(first.get("moves").get(0).get("most_mm").asDouble()).isBetween(0.01, 10.0);
        assertThat(Files.list(folder)).containsExactly(untrue);
    }

    @Test
    void onePlaceIsPutRightByItsNameOrItsNumber() {
        Path byName = folder.resolve("name.svg");
        Path byNumber = folder.resolve("number.svg");
        assertThat(Run.of("true", untrue, "--place", "Side seam/start", "-o", byName)
                        .code())
                .isEqualTo(Commands.DONE);
        assertThat(Run.of("true", untrue, "--place", "1", "-o", byNumber).code())
                .isEqualTo(Commands.DONE);
        assertThat(byName).hasSameBinaryContentAs(byNumber);
        List<String> left = places(Run.of("true", byName, "--json").json());
        List<String> were = places(Run.of("true", untrue, "--json").json());
        were.remove("side seam/start");
        assertThat(left).isEqualTo(were);
    }

    @Test
    void allPlacesArePutRightAndThenEverythingIsTrue() throws Exception {
        byte[] input = Files.readAllBytes(untrue);
        Path out = folder.resolve("all.svg");
        Run run = Run.of("true", untrue, "--all", "--accept", "-o", out, "--json");
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(run.json().get("truings")).allMatch(t -> t.get("possible").asBoolean());
        assertThat(Run.of("true", out).out()).startsWith("Everything is true");
        assertThat(SvgFile.read(out).pattern().changes())
                .hasSize(1 + run.json().get("truings").size());
        assertThat(untrue).hasBinaryContent(input);
    }

    @Test
    void protectedEdgesNeedLeaveAndNothingIsOverwritten() {
        Path bodice = Path.of("src/test/resources/command/untrue-bodice.svg");
        Path out = folder.resolve("out.svg");
        Run refused = Run.of("true", bodice, "--place", "side seam/start", "-o", out);
        assertThat(refused.code()).isEqualTo(Commands.REFUSED);
        assertThat(refused.err()).contains("armhole").contains("--accept");
        assertThat(out).doesNotExist();
        assertThat(Run.of("true", bodice, "--place", "side seam/start", "--accept", "-o", out)
                        .code())
                .isEqualTo(Commands.DONE);
        Run again = Run.of("true", bodice, "--all", "-o", out);
        assertThat(again.code()).isEqualTo(Commands.REFUSED);
        assertThat(again.err()).contains("--overwrite");
    }

    @Test
    void wrongCommandLinesAreToldApart() {
        assertThat(Run.of("true", untrue, "-o", folder.resolve("x.svg")).code()).isEqualTo(Commands.USAGE);
        assertThat(Run.of("true", untrue, "--all").code()).isEqualTo(Commands.USAGE);
        assertThat(Run.of("true", untrue, "--all", "--place", "1", "--try").code())
                .isEqualTo(Commands.USAGE);
        Run unknown = Run.of("true", untrue, "--place", "nowhere", "--try");
        assertThat(unknown.code()).isEqualTo(Commands.REFUSED);
        assertThat(unknown.err()).contains("side seam/start");
    }
}
