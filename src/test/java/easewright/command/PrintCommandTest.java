package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintCommandTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    @Test
    void writesAPdfAndSaysWhatCanBeMeasuredOnIt() throws IOException {
        Path out = folder.resolve("skirt.pdf");
        Run run = Run.of("print", SKIRT, "-o", out, "--pieces", "Waistband, Front", "--paper", "letter", "--json");
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(Files.readString(out, java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        assertThat(run.json().path("pieces").size()).isEqualTo(2);
        assertThat(run.json().path("pages").asInt())
                .isEqualTo(run.json().path("sheets_at").size() + 1);
        assertThat(run.json().path("control_lines_mm").path(1).asDouble()).isGreaterThan(500);
        assertThat(run.err()).contains("skirt.pdf").contains("100\u00a0%");

        assertThat(Run.of("print", SKIRT, "-o", out).code()).isEqualTo(Commands.REFUSED);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--margin 70mm | 2 | Margins of 7\u00a0cm",
                "--margin wide | 2 | not a length",
                "--overlap 20cm | 2 | overlap",
                "--pieces Sleeve | 2 | Sleeve",
                "--pieces , | 2 | No piece",
                "--size 38 | 2 | size marked",
                "--paper a7 | 64 | a7",
                "--kind balloon | 64 | balloon",
                "--paper | 64 | paper"
            })
    void whatCannotBePrinted(String options, int code, String part) {
        Path out = folder.resolve("no.pdf");
        Object[] words = ("print " + SKIRT + " -o " + out + " " + options).split(" ");
        Run run = Run.of(words);
        assertThat(run.code()).as(run.err()).isEqualTo(code);
        assertThat(run.err()).contains(part).doesNotContain("Exception").doesNotContain("{");
        assertThat(run.out()).isEmpty();
        assertThat(out).doesNotExist();
    }

    @Test
    void anUnprovedScaleIsNotPrintedUntilALineProvesIt() {
        Path file = Path.of("src/test/resources/bad/no-scale.svg");
        Path out = folder.resolve("out.pdf");
        Run refused = Run.of("print", file, "-o", out);
        assertThat(refused.code()).isEqualTo(Commands.REFUSED);
        assertThat(refused.err()).contains("full scale").contains("--scale");
        assertThat(out).doesNotExist();
        assertThat(Run.of("print", file, "-o", out, "--scale", "1mm").code()).isLessThan(Commands.REFUSED);
        assertThat(out).exists();
    }

    @Test
    void targetsThatCannotBeWritten() {
        assertThat(Run.of("print", SKIRT, "-o", folder.resolve("no/such/a.pdf")).err())
                .contains("folder");
        assertThat(Run.of("print", SKIRT, "-o", folder).code()).isEqualTo(Commands.REFUSED);
        Run otherName = Run.of("print", SKIRT, "-o", folder.resolve("pages.txt"));
        assertThat(otherName.code()).isEqualTo(64);
        assertThat(otherName.err()).contains("pages.txt").contains(".pdf");
        assertThat(folder.resolve("pages.txt")).doesNotExist();
        assertThat(Run.of("print", SKIRT).code()).isEqualTo(Commands.USAGE);
        assertThat(Run.of("print", SKIRT, "-o", SKIRT, "--overwrite").code()).isEqualTo(Commands.REFUSED);
    }
}
