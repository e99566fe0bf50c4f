package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every way of changing a pattern can be asked for, by options and in a list, and is described. */
class ChangeWaysTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    /** One change of the sample skirt by each method: its options, and the growth of the hip that must come of it. */
    private static final Map<String, List<String>> LINES = Map.of(
            "seam", List.of("--at", "hip", "--by", "12mm"),
            "centre", List.of("--at", "hip", "--by", "12mm", "--edge", "back/centre back", "--accept"),
            "slash", List.of("--at", "hip", "--by", "12mm", "--slash", "back/hem@50% > back/waist@50%"),
            "hinged-slash",
                    List.of(
                            "--piece",
                            "back",
                            "--by",
                            "5mm",
                            "--set",
                            "hinge=back/side@hip",
                            "--set",
                            "opening=back/hem@30%",
                            "--set",
                            "turning=back/side/end"),
            "parallel-slash",
                    List.of(
                            "--piece",
                            "back",
                            "--by",
                            "6mm",
                            "--set",
                            "one=back/waist@90%",
                            "--set",
                            "other=back/hem@10%",
                            "--set",
                            "beyond=back/side/start"),
            "dart", List.of("--at", "waist", "--by", "12mm"),
            "dart-to-seam", List.of("--at", "waist", "--by", "12mm"),
            "edge-length", List.of("--edge", "waistband/seam", "--by", "4mm"),
            "sleeve", List.of("--at", "upper arm", "--by", "12mm"),
            "lengthen", List.of("--at", "hip", "--by", "20mm", "--set", "below=10cm"));

    @TempDir
    Path folder;

    private static Run change(List<String> options) {
        Path sample = options.contains("sleeve") ? Path.of("sample-pieces/bodice.svg") : SKIRT;
        List<Object> line = new ArrayList<>(List.of("change", sample, "--try", "--json"));
        line.addAll(options);
        return Run.of(line.toArray());
    }

    static List<Way> ways() {
        return Ways.all();
    }

    @ParameterizedTest
    @MethodSource("ways")
    void canBeAskedFor(Way way) {
        assertThat(LINES).as("a line that tries the way").containsKey(way.method());
        List<String> options = new ArrayList<>(LINES.get(way.method()));
        options.addAll(List.of("--method", way.method()));
        Run run = change(options);
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        JsonNode made = run.json().path("changes").path(0);
        assertThat(made.path("method").asText()).isEqualTo(way.method());
        String level = options.contains("--at") ? options.get(options.indexOf("--at") + 1) : "hip";
        double grown = Run.girth(run.json().path("after"), level)
                - Run.girth(run.json().path("before"), level);
        if (way.aim() == Way.Aim.GIRTH) {
            assertThat(grown).isCloseTo(12, within(0.01));
        } else if (way.method().equals("parallel-slash")) {
            assertThat(grown).isCloseTo(2 * 6, within(0.01));
        }
    }

    @ParameterizedTest
    @MethodSource("ways")
    void missesWhatIsNeeded(Way way) {
        Run run = change(List.of("--method", way.method()));
        assertThat(run.code()).isEqualTo(Commands.USAGE);
        assertThat(run.err()).contains(way.method(), "--").doesNotContain("way." + way.method(), "{");
    }

    @ParameterizedTest
    @MethodSource("ways")
    void isDescribedWithAllItsSettings(Way way) {
        String text = Run.of("methods").out();
        String alone = Run.of("methods", way.method()).out();
        assertThat(text).contains(alone.substring(0, alone.indexOf("\n\n")));
        assertThat(alone).contains("--method " + way.method());
        assertThat(text).contains("--method " + way.method()).doesNotContain("way." + way.method(), "methods.", "{");
        JsonNode node = null;
        for (JsonNode each : Run.of("methods", "--json").json().path("methods")) {
            node = each.path("method").asText().equals(way.method()) ? each : node;
        }
        assertThat(node).isNotNull();
        List<String> keys = new ArrayList<>();
        node.path("settings").forEach(s -> keys.add(s.path("key").asText()));
        assertThat(keys).isEqualTo(way.settings().stream().map(Setting::key).toList());
    }

    @Test
    void aListTakesTheSame() throws IOException {
        Path list = Files.writeString(folder.resolve("list.json"), """
                [{"method": "lengthen", "at": "hip", "by": "2 cm", "below": "10 cm", "piece": ["front", "back"]},
                 {"at": "hip", "by": "12mm", "taper": "straight", "keep": ["waist", "front/side/end"], "carry": false},
                 {"method": "slash", "at": "hip", "by": "-6mm", "slashes": "back/hem@50% > back/waist@50%"}]
                """);
        Run run = Run.of("change", SKIRT, "--list", list, "--try", "--json");
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(run.json().path("changes").findValuesAsText("method")).containsExactly("lengthen", "seam", "slash");
        assertThat(Run.girth(run.json().path("after"), "hip")
                        - Run.girth(run.json().path("before"), "hip"))
                .isCloseTo(6, within(0.01));
    }

    @Test
    void anyOptionIsAlsoASetting() {
        Run options = change(List.of("--at", "hip", "--by", "1cm", "--carry", "--edge", "back/side=2"));
        Run settings = change(
                List.of("--set", "at=hip", "--set", "by=1cm", "--set", "carry=yes", "--set", "edge=back/side=2"));
        assertThat(change(List.of("--set", "at=hip", "--set", "by=1cm", "--set", "keep=waist"))
                        .json())
                .isEqualTo(change(List.of("--at", "hip", "--by", "1cm", "--keep", "waist"))
                        .json());
        assertThat(settings.json()).isEqualTo(options.json());
        Run wedge = change(
                List.of("--at", "hip", "--by", "1cm", "--method", "wedge", "--edge", "back/centre back", "--accept"));
        assertThat(wedge.json().path("changes").path(0).path("wedge").asText())
                .as(wedge.err())
                .isEqualTo("yes");
    }

    @Test
    void theMethodsListEachNameOnce() {
        for (Way way : Ways.all()) {
            String text = Run.of("methods").out();
            String own = text.substring(text.indexOf("--method " + way.method()));
            own = own.substring(0, Math.max(0, own.indexOf("\n\n")));
            List<String> names = own.lines()
                    .skip(1)
                    .map(String::strip)
                    .filter(l -> l.startsWith("--"))
                    .map(l -> l.split("[ =]")[0].equals("--set") ? l.split("[ =]")[1] : l.split(" ")[0])
                    .toList();
            assertThat(names).as(way.method()).isNotEmpty().doesNotHaveDuplicates();
        }
    }

    @Test
    void aListWithSlipsNamesWhatWasMeant() throws IOException {
        Path list = Files.writeString(folder.resolve("slip.json"), "[{\"at\": \"hip\", \"byy\": \"2 cm\"}]");
        Run run = Run.of("change", SKIRT, "--list", list, "--try");
        assertThat(run.err()).contains("\"byy\"", "at, by, edge", "Did you mean by?");
        Files.writeString(list, "[{\"at\": \"hip\"}]");
        assertThat(Run.of("change", SKIRT, "--list", list, "--try").err()).contains("\"by\"");
    }

    @Test
    void settingsThatAreNoneSayWhatIsKnown() {
        Run unknown = change(List.of("--at", "hip", "--by", "1cm", "--set", "colour=red"));
        assertThat(unknown.code()).isEqualTo(Commands.REFUSED);
        assertThat(unknown.err())
                .contains("colour", "taper", "at, by, edge")
                .doesNotContain("amount", "level", "carry-to-hem");
        Run malformed = change(List.of("--at", "hip", "--by", "1cm", "--set", "colour"));
        assertThat(malformed.code()).isEqualTo(Commands.USAGE);
        assertThat(malformed.err()).contains("KEY=VALUE");
        Run twice = change(List.of("--at", "hip", "--by", "1cm", "--set", "at=waist"));
        assertThat(twice.code()).isEqualTo(Commands.REFUSED);
        assertThat(twice.err()).contains("\"at\"", "once").doesNotContain("level");
    }
}
