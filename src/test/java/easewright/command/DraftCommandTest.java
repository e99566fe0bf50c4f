package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import easewright.draft.Recipe;
import easewright.draft.Samples;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DraftCommandTest {
    private static final Path SAMPLES = Path.of("sample-pieces");

    @TempDir
    Path folder;

    static List<Recipe> recipes() {
        return Recipe.all();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void theSampleIsTheDraftForItsPerson(Recipe recipe) throws IOException {
        Path kept = SAMPLES.resolve(recipe.garment() + ".svg");
        Path drawn = folder.resolve("drawn.svg");
        assertThat(Run.of("draft", recipe.garment(), "-o", drawn).code()).isEqualTo(Commands.DONE);
        assertThat(drawn).hasSameTextualContentAs(kept);
        Path body = SAMPLES.resolve(recipe.garment() + ".body.txt");
        Path measured = folder.resolve("measured.svg");
        Run run = Run.of("draft", recipe.garment().toUpperCase(java.util.Locale.ROOT), "--body", body, "-o", measured);
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(measured).hasSameTextualContentAs(kept);
    }

    /** Two metres where two centimetres were meant. */
    @Test
    void asksBackAboutAWishOutOfAllProportion() {
        Path out = folder.resolve("out.svg");
        List<String> wide = List.of("draft", "skirt", "--ease", "hip=2m", "--ease", "waist=2m", "-o", out.toString());
        Run slip = Run.of(wide.toArray());
        assertThat(slip.code()).isEqualTo(Commands.REFUSED);
        assertThat(slip.err()).contains("waist").contains("+200\u00a0cm").contains("--anyway");
        Run longer = Run.of("draft", "skirt", "--length", "length=6.5m", "-o", out);
        assertThat(longer.err()).contains("650\u00a0cm").contains("60\u00a0cm").contains("--anyway");
        assertThat(out).doesNotExist();
        List<Object> meant = new ArrayList<>(wide);
        meant.add("--anyway");
        assertThat(Run.of(meant.toArray()).code()).isEqualTo(Commands.DONE);
        assertThat(out).exists();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void everyMeasurementIsMissedByName(Recipe recipe) throws IOException {
        List<String> lines = Files.readAllLines(SAMPLES.resolve(recipe.garment() + ".body.txt"));
        for (String measure : recipe.measures()) {
            List<String> fewer = new ArrayList<>(lines);
            assertThat(fewer.removeIf(line -> line.startsWith(measure)))
                    .as(measure)
                    .isTrue();
            Path body = Files.write(folder.resolve("me.txt"), fewer);
            Run run = Run.of("draft", recipe.garment(), "--body", body, "-o", folder.resolve("out.svg"));
            assertThat(run.code()).isEqualTo(Commands.REFUSED);
            assertThat(run.err()).contains("missing: " + measure + ".").doesNotContain("{");
        }
        assertThat(folder.resolve("out.svg")).doesNotExist();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void everyEaseCanBeWished(Recipe recipe) {
        for (Recipe.Wish wish : recipe.ease()) {
            Path out = folder.resolve(wish.name() + ".svg");
            double mm = wish.standard() + 8;
            Run run = Run.of("draft", recipe.garment(), "--ease", wish.name() + "=" + mm + "mm", "-o", out);
            assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
            assertThat(ease(out, wish.name())).as(wish.name()).isCloseTo(mm, within(0.01));
        }
    }

    private static double ease(Path file, String level) {
        for (JsonNode girth : Run.of("ease", file, "--json").json().path("girths")) {
            if (girth.path("level").asText().equals(level)) {
                return girth.path("ease_mm").asDouble();
            }
        }
        throw new AssertionError("No " + level);
    }

    @Test
    void measurementsGoByTheirNameOrLevelWhateverTheCapitals() throws IOException {
        Path body = Files.writeString(folder.resolve("me.txt"), """
                name: Anna
                unit: in
                my waist @Waist: 29
                HIP: 39 1/2
                side waist-to-hip: 8
                """);
        Path out = folder.resolve("out.svg");
        Run run = Run.of(
                "draft",
                "skirt",
                "--body",
                body,
                "--ease",
                "hip=2",
                "--unit",
                "in",
                "-o",
                out,
                "--length",
                "length=24in");
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(ease(out, "hip")).isCloseTo(50.8, within(0.01));
    }

    @Test
    void whatCannotBeDrawnIsRefused() throws IOException {
        Path body = Files.writeString(folder.resolve("me.txt"), "Waist: 119 cm\nHip: 100\nSide waist to hip: 20\n");
        Path out = folder.resolve("out.svg");
        Run run = Run.of("draft", "skirt", "--body", body, "-o", out);
        assertThat(run.code()).isEqualTo(Commands.REFUSED);
        assertThat(run.err()).contains("dart").doesNotContain("{");
        assertThat(Run.of("draft", "cloak", "-o", out).err()).contains("cloak", "knit-top");
        assertThat(Run.of("draft", "skirt", "-o", out, "--ease", "chest=3").err())
                .contains("chest=3", "hip=5");
        assertThat(Run.of("draft", "skirt", "-o", out, "--length", "65cm").err())
                .contains("65cm", "length=60");
        assertThat(Run.of("draft", "skirt").code()).isEqualTo(Commands.USAGE);
        Run onBody = Run.of("draft", "skirt", "--body", body, "-o", body, "--overwrite");
        assertThat(onBody.code()).isEqualTo(Commands.REFUSED);
        assertThat(body).content().startsWith("Waist");
        assertThat(out).doesNotExist();
    }

    @Test
    void theSamplesAreDrawnTogether() throws SvgProblem {
        Path all = folder.resolve("all");
        assertThat(Run.of("draft", "samples", "-o", all).code()).isEqualTo(Commands.DONE);
        assertThat(all.toFile().list())
                .containsExactlyInAnyOrderElementsOf(Samples.files().keySet());
        assertThat(Run.of("draft", "samples", "-o", all).code()).isEqualTo(Commands.REFUSED);
    }
}
