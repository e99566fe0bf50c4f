package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangeCommandTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void name() {
        out = folder.resolve("out.svg");
    }

    private static JsonNode named(JsonNode array, String key, String name) {
        for (JsonNode node : array) {
            if (node.path(key).asText().equals(name)) {
                return node;
            }
        }
        throw new AssertionError("No " + name + " in " + array);
    }

    @Test
    void addsExactlyWhatWasAskedAndNothingElsewhere() throws IOException {
        byte[] input = Files.readAllBytes(SKIRT);
        Run run = Run.of("change", SKIRT, "--at", "hip", "--by", "+24mm", "-o", out, "--json");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        JsonNode before = run.json().path("before");
        JsonNode after = run.json().path("after");
        assertThat(Run.girth(after, "hip") - Run.girth(before, "hip")).isCloseTo(24, within(0.01));
        assertThat(Run.girth(after, "waist")).isCloseTo(Run.girth(before, "waist"), within(1e-9));
        assertThat(run.json().path("mates").path(0).has("drift_mm")).isTrue();
        assertThat(Files.readAllBytes(SKIRT)).isEqualTo(input);
        JsonNode again = Run.of("measure", out, "--json").json();
        assertThat(Run.girth(again, "hip")).isCloseTo(Run.girth(after, "hip"), within(0.01));
    }

    /** The ending of the output says whether it is packed; the drawing is the same. */
    @Test
    void writesPackedWhatIsNamedSo() throws IOException {
        Path packed = folder.resolve("out.svgz");
        for (Path output : new Path[] {out, packed}) {
            Run run = Run.of("change", SKIRT, "--at", "hip", "--by", "+24mm", "-o", output);
            assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        }
        assertThat(Files.readAllBytes(packed)).startsWith(0x1F, 0x8B);
        try (var plain = new java.util.zip.GZIPInputStream(Files.newInputStream(packed))) {
            assertThat(plain.readAllBytes()).isEqualTo(Files.readAllBytes(out));
        }
        Path back = folder.resolve("back.svg");
        assertThat(Run.of("change", packed, "--at", "hip", "--by", "+1mm", "-o", back)
                        .code())
                .isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(Files.readString(back)).contains("<svg");
    }

    @Test
    void keepsTheKeysThatScriptsReadBy() {
        JsonNode root = Run.of("measure", SKIRT, "--json").json();
        JsonNode piece = root.path("pieces").path(0);
        assertThat(piece.fieldNames()).toIterable().contains("name", "count", "edges");
        assertThat(piece.path("edges").path(0).fieldNames()).toIterable().contains("name", "role", "length_mm");
        JsonNode hip = named(root.path("girths"), "level", "hip");
        assertThat(hip.fieldNames())
                .toIterable()
                .contains("level", "finished_mm", "body_mm", "ease_mm", "ease_percent", "parts");
        assertThat(hip.path("parts").path(0).fieldNames()).toIterable().contains("piece", "width_mm", "count");
        double sum = 0;
        for (JsonNode part : hip.path("parts")) {
            sum += part.path("width_mm").asDouble() * part.path("count").asInt();
        }
        assertThat(sum).isCloseTo(hip.path("finished_mm").asDouble(), within(1e-6));
        assertThat(root.path("mates").path(0).fieldNames())
                .toIterable()
                .contains("name", "first_mm", "second_mm", "declared_ease_mm", "drift_mm");
        for (JsonNode finding : root.path("findings")) {
            assertThat(finding.fieldNames()).toIterable().contains("code", "severity", "piece", "message");
            assertThat(finding.path("message").asText()).doesNotContain("{").doesNotStartWith("finding.");
        }
    }

    @Test
    void addingNothingWritesTheSameBytes() throws IOException {
        assertThat(Run.of("change", SKIRT, "--at", "hip", "--by", "0mm", "-o", out)
                        .code())
                .isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(Files.readAllBytes(out)).isEqualTo(Files.readAllBytes(SKIRT));
    }

    @Test
    void sharesGoWhereTheyWereSent() {
        Run run = Run.of(
                "change",
                SKIRT,
                "--at",
                "HIP",
                "--by",
                "1 in",
                "--edge",
                "skirt-front/side=1",
                "--edge",
                "back/side=3",
                "--taper",
                "straight",
                "--try",
                "--json");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(width(run, "after", "Back") - width(run, "before", "Back")).isCloseTo(25.4 * 3 / 4, within(0.01));
        assertThat(width(run, "after", "Front") - width(run, "before", "Front")).isCloseTo(25.4 / 4, within(0.01));
    }

    private static double width(Run run, String when, String piece) {
        JsonNode part = named(
                named(run.json().path(when).path("girths"), "level", "hip").path("parts"), "piece", piece);
        return part.path("width_mm").asDouble() * part.path("count").asInt();
    }

    @Test
    void makesAListOfChangesInOrder() throws IOException {
        Path list = Files.writeString(folder.resolve("list.json"), """
                [{"at": "hip", "by": "+10mm", "carry": true},
                 {"at": "hip", "by": "-1cm", "carry": true, "edges": ["skirt-front/side", "skirt-back/side"]}]
                """);
        Run run = Run.of("change", SKIRT, "--list", list, "-o", out, "--json");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(run.json().path("changes")).hasSize(2);
        assertThat(Run.girth(run.json().path("after"), "hip"))
                .isCloseTo(Run.girth(run.json().path("before"), "hip"), within(0.01));
    }

    @Test
    void replacesFilesOnlyWhenTold() throws IOException {
        Files.writeString(out, "precious");
        Run refused = Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", out);
        assertThat(refused.code()).isEqualTo(Commands.REFUSED);
        assertThat(refused.err()).contains("exists").contains("--overwrite");
        assertThat(out).hasContent("precious");
        assertThat(Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", out, "--overwrite")
                        .code())
                .isLessThanOrEqualTo(Commands.FAULTS);

        Path own = Files.copy(SKIRT, folder.resolve("own.svg"));
        byte[] input = Files.readAllBytes(own);
        Run onItself = Run.of("change", own, "--at", "hip", "--by", "24mm", "-o", own, "--overwrite");
        assertThat(onItself.code()).isEqualTo(Commands.REFUSED);
        assertThat(onItself.err()).contains("--in-place");
        assertThat(Files.readAllBytes(own)).isEqualTo(input);
        assertThat(Run.of("change", own, "--at", "hip", "--by", "24mm", "--in-place")
                        .code())
                .isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(Files.readAllBytes(own)).isNotEqualTo(input);
    }

    @Test
    void tryingSavesNothing() throws IOException {
        Path own = Files.copy(SKIRT, folder.resolve("own.svg"));
        byte[] input = Files.readAllBytes(own);
        Run run = Run.of("change", own, "--at", "hip", "--by", "24mm", "--try");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(run.out()).contains("hip").contains("+2.4");
        assertThat(Files.readAllBytes(own)).isEqualTo(input);
        assertThat(folder.toFile().list()).containsExactly("own.svg");
    }

    @Test
    void reportShowsBeforeAndAfterAndEscapesNames() throws IOException {
        Path changed = folder.resolve("a<b>&\"c.svg");
        Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", changed);
        Path page = folder.resolve("report.html");
        Run run = Run.of("report", changed, "-o", page);
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        String html = Files.readString(page);
        assertThat(html)
                .contains("a&lt;b&gt;&amp;&quot;c")
                .doesNotContain("a<b>")
                .contains("hip: +2.4\u00a0cm")
                .contains("Misfit before", "Misfit now")
                .contains("<path")
                .doesNotContain("report.")
                .doesNotContain("<script");
    }

    @Test
    void bodyFileReplacesTheBodyOfThePattern() throws IOException {
        Path body = Files.writeString(folder.resolve("me.txt"), "Hip girth @HIP: 90 cm\n");
        JsonNode hip =
                named(Run.of("ease", SKIRT, "--body", body, "--json").json().path("girths"), "level", "hip");
        assertThat(hip.path("body_mm").asDouble()).isEqualTo(900);
        assertThat(hip.path("ease_mm").asDouble())
                .isCloseTo(hip.path("finished_mm").asDouble() - 900, within(1e-9));
    }
}
