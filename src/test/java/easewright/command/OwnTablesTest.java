package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnTablesTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");
    private static final String MINE = """
            \uFEFF# what I wear
            id: mine
            garment: skirt, kilt
            level: hip
            unit: cm
            source: my notebook
            standing: common practice
            band: as I like it | 4 | 6
            band: swinging | 6 | -
            """;

    @TempDir
    private Path folder;

    private Path table(String text) throws Exception {
        return Files.writeString(folder.resolve("mine.txt"), text);
    }

    /** The sample skirt has 5 cm at the hip. */
    @Test
    void isShownBesideTheOthersWithItsSource() throws Exception {
        Run run = Run.of("ease", SKIRT, "--table", table(MINE));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("as I like it")
                .contains("My notebook; common practice")
                .contains("publishers");
        assertThat(Run.of("ease", SKIRT).out()).doesNotContain("My notebook; common practice");
        assertThat(Run.of("ease", SKIRT, "--table", table(MINE), "--garment", "kilt")
                        .out())
                .contains("as I like it")
                .doesNotContain("publishers");
    }

    @Test
    void isRefusedWithTheReason() throws Exception {
        Run level = Run.of("ease", SKIRT, "--table", table(MINE.replace("hip", "elbow")));
        assertThat(level.code()).isEqualTo(Commands.REFUSED);
        assertThat(level.err()).contains("Line 4").contains("\"elbow\"").contains("high hip");
        Run unit = Run.of("ease", SKIRT, "--table", table(MINE.replace("unit: cm", "unit: inches")));
        assertThat(unit.err()).contains("Line 5").contains("\"inches\"").contains("in, percent");
        Run cloth = Run.of("ease", SKIRT, "--table", table(MINE.replace("unit: cm", "cloth: jersey")));
        assertThat(cloth.err()).contains("\"jersey\"").contains("woven, knit");
        Run standing = Run.of("ease", SKIRT, "--table", table(MINE.replace("common practice", "certain")));
        assertThat(standing.err()).contains("\"certain\"").contains("from memory");
        Path latin = Files.write(folder.resolve("latin.txt"), "source: Müller".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Run.of("ease", SKIRT, "--table", latin).err()).contains("UTF-8");
        assertThat(Run.of("ease", SKIRT, "--table", table("#".repeat(1 << 20) + "\n" + MINE))
                        .err())
                .contains("1 MB");
        assertThat(Run.of("ease", SKIRT, "--table", folder.resolve("none.txt")).err())
                .contains("There is no file");
    }
}
