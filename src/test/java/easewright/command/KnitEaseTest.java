package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code ease} says of a knit. */
class KnitEaseTest {
    private static final Path TOP = Path.of("sample-pieces/knit-top.svg");

    @TempDir
    private Path folder;

    private Path stretching(String percent) throws Exception {
        String drawn = Files.readString(TOP);
        assertThat(drawn).contains("across=\"50\"");
        return Files.writeString(folder.resolve("top.svg"), drawn.replace("across=\"50\"", percent));
    }

    /** A line of the terminal may end anywhere. */
    private static String flowing(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    /** The sample stretches 50 %: Armstrong's "stretchy" (from memory, docs/sources.md 1.3). */
    @Test
    void theClassOfTheClothIsToldWithItsSource() throws Exception {
        Run run = Run.of("ease", TOP);
        assertThat(flowing(run))
                .contains("stretches 50\u00a0% across")
                .contains("it is called \"stretchy\", as cloth is from 50\u00a0% on; from 100\u00a0% on it is"
                        + " \"super-stretch or rib\" [1]")
                .contains("10\u00a0cm of it can be pulled to 15\u00a0cm")
                .contains("10\u00a0cm of it become 10.4\u00a0cm")
                .contains("[1] H. J. Armstrong")
                .contains("between \"very stretchy\" (3\u00a0%) and \"super-stretch\" (5\u00a0%) [2]")
                .contains("[2] K. Richardson")
                .contains("below an ease of −17.4\u00a0cm");
        assertThat(Run.of("ease", TOP, "--json").json().get("cloth_said").get(0).asText())
                .contains("stretchy")
                .contains("from memory");
        assertThat(flowing(Run.of("ease", stretching("across=\"10\"")))).contains("stretches less than \"stable\"");
        assertThat(Run.of("ease", stretching("")).out()).doesNotContain("Armstrong");
        assertThat(Run.of("ease", "sample-pieces/skirt.svg").out()).doesNotContain("Armstrong");
    }

    @Test
    void aTableOfOnesOwnMaySayHowMuchSmaller() throws Exception {
        Path mine = Files.writeString(
                folder.resolve("mine.txt"),
                "source: my notebook\nstanding: common practice\nknit-class: my jersey | 40 | 4\n");
        assertThat(flowing(Run.of("ease", TOP, "--table", mine)))
                .contains(
                        "is called \"my jersey\", as cloth is from 40\u00a0% on; garments of it are cut 4\u00a0% narrower than"
                                + " the body");
    }

    /** What presses on a limb stays a caution. */
    @Test
    void compressionIsStillWarnedOf() throws Exception {
        Path thin = folder.resolve("body.txt");
        Files.writeString(thin, "Upper-arm girth @upper arm: 40 cm\n");
        assertThat(flowing(Run.of("ease", TOP, "--body", thin))).contains("not for medical compression");
    }

    /** What was wished for in per cent stays so, on whatever body, in a file as on the command line. */
    @Test
    void aWishMayBeAPartOfTheBody() throws Exception {
        Run run = Run.of("ease", TOP, "--wish", "bust=-8%", "--wish", "hip=-2cm");
        assertThat(flowing(run)).contains("\u22126.95 \u22128\u00a0%: 3.95\u00a0cm too much");
        var girths = Run.of("ease", TOP, "--wish", "bust=-8 %", "--json").json().get("girths");
        assertThat(girths.get(0).get("wished_ease_percent").asDouble()).isEqualTo(-8);
        assertThat(girths.get(0).get("wished_ease_mm").asDouble()).isCloseTo(-0.08 * 870, within(1e-9));
        assertThat(girths.get(1).has("wished_ease_percent")).isFalse();

        Path out = folder.resolve("out.svg");
        assertThat(Run.of("change", TOP, "--wish", "bust=-8%", "--at", "bust", "--by", "5mm", "-o", out)
                        .code())
                .isZero();
        assertThat(Files.readString(out)).contains("<wish level=\"bust\" ease=\"-69.6\" percent=\"-8\"/>");
        Path body = Files.writeString(folder.resolve("b.txt"), "Name: Ann\nBust girth @bust: 100 cm\n");
        Run other = Run.of("ease", out, "--body", body);
        assertThat(flowing(other)).contains("\u22128.0 \u22128\u00a0%: ");
    }

    @Test
    void aWishThatIsNotUnderstoodIsRefusedWithTheWayOut() throws Exception {
        assertThat(Run.of("ease", TOP, "--wish", "knee=3cm").err()).contains("Levels marked here: bust, waist, hip");
        Path bare = Files.writeString(
                folder.resolve("bare.svg"), Files.readString(TOP).replaceAll("(?s)<body name.*?</body>", ""));
        assertThat(Run.of("ease", bare, "--wish", "bust=-8%").err()).contains("Give it with --body");
        assertThat(Run.of("ease", bare, "--wish", "bust=-3cm").err()).isEmpty();
    }
}
