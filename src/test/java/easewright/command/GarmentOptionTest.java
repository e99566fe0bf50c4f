package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the garment is said to be, by option and in the file. */
class GarmentOptionTest {
    private static final Path BODICE = Path.of("sample-pieces/bodice.svg");

    @TempDir
    private Path folder;

    @Test
    void aFileThatIsWrittenKeepsWhatTheGarmentIsSaidToBe() throws Exception {
        Path out = folder.resolve("jacket.svg");
        Run run = Run.of("change", BODICE, "--at", "bust", "--by", "+20mm", "--garment", "Jacket", "-o", out);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(out)).containsOnlyOnce("<garment kind=\"jacket\"/>");
        Run ease = Run.of("ease", out);
        assertThat(ease.out()).contains("jacket, as the file says").contains("(jacket)");
        assertThat(Run.of("measure", out).out()).contains("Garment: jacket");
        assertThat(Run.of("measure", BODICE).out()).doesNotContain("Garment:");
        assertThat(Run.of("ease", out, "--json").json().get("garment").get(0).asText())
                .isEqualTo("jacket");
        // The command says otherwise for once; the file is not touched.
        assertThat(Run.of("ease", out, "--garment", "coat").out())
                .contains("coat, as you say")
                .doesNotContain("(jacket)");
        // Nothing said: the marks tell, whatever is in the file.
        assertThat(Run.of("ease", out, "--garment", "").out())
                .contains("dress")
                .doesNotContain("as you say")
                .doesNotContain("as the file says");
        assertThat(Run.of("ease", out, "--garment", "any garment").out()).doesNotContain("publishers");
    }

    @Test
    void aWordThatNoTableHasIsKeptWithANote() throws Exception {
        Path kilt = folder.resolve("kilt.svg");
        String drawn = Files.readString(Path.of("sample-pieces/skirt.svg"));
        Files.writeString(kilt, drawn.replaceFirst("<level ", "<garment kind=\"kilt\"/><level "));
        Run run = Run.of("ease", kilt);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("no ease table for \"kilt\"")
                .contains("jacket")
                .doesNotContain("publishers");
        Path out = folder.resolve("wider.svg");
        Run.of("change", kilt, "--at", "hip", "--by", "+20mm", "-o", out);
        assertThat(Files.readString(out)).contains("<garment kind=\"kilt\"/>");
        Path table = Files.writeString(folder.resolve("mine.txt"), """
                id: kilts
                garment: kilt
                level: hip
                unit: cm
                source: my notebook
                standing: common practice
                band: mine | 2 | 8
                """);
        assertThat(Run.of("ease", kilt, "--table", table).out())
                .contains("mine (kilt)")
                .doesNotContain("no ease table");
    }

    /** Ranges of a source are told in one style: the unit once, as in the notes beside them. */
    @Test
    void aRangeHasItsUnitOnce() {
        assertThat(Run.of("ease", "sample-pieces/skirt.svg", "--unit", "in")
                        .out()
                        .replace('\u00a0', ' '))
                .contains("least for wearing: 1/2 to 3/4 in")
                .contains("3/4 to 1 in");
    }
}
