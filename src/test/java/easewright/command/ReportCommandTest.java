package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportCommandTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    @Test
    void theEndingOfItsNameSaysHowItIsSet() throws IOException {
        Path changed = folder.resolve("wider.svg");
        assertThat(Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", changed)
                        .code())
                .isEqualTo(Commands.DONE);
        Path page = folder.resolve("wider.html");
        Path sheets = folder.resolve("wider.PDF");
        assertThat(Run.of("report", changed, "-o", page, "--kind", "nightwear").code())
                .isEqualTo(Commands.DONE);
        assertThat(Run.of("report", changed, "-o", sheets, "--paper", "letter").code())
                .isEqualTo(Commands.DONE);
        assertThat(Files.readString(page)).contains("Ease report: wider").contains("16 CFR 1615");
        assertThat(Files.readString(sheets, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void tellsAProgramWhatTheReportSays() {
        Path changed = folder.resolve("wider.svg");
        Run change = Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", changed);
        assertThat(change.code()).as(change.err()).isEqualTo(Commands.DONE);
        Run run = Run.of("report", changed, "-o", folder.resolve("wider.html"), "--json");
        assertThat(run.json().path("changes").path(0).path("method").asText()).isEqualTo("seam");
        double now = Run.girth(run.json(), "hip");
        double before = Run.girth(run.json().path("before"), "hip");
        assertThat(now - before).isCloseTo(24, within(0.01));
        Run plain = Run.of("report", SKIRT, "-o", folder.resolve("plain.html"), "--json");
        assertThat(plain.json().path("before").isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "out.txt, , , 64, .html",
        "out.html, --paper, a0, 64, a4",
        "out.html, --kind, balloon, 64, balloon",
        "out.html, --cloth-width, 3mm, 2, 20 cm",
        "out.html, --cloth-width, wide, 2, length",
        "no/out.html, , , 2, folder"
    })
    void whatCannotBeReported(String out, String option, String value, int code, String part) {
        Object[] words = option == null
                ? new Object[] {"report", SKIRT, "-o", folder.resolve(out)}
                : new Object[] {"report", SKIRT, "-o", folder.resolve(out), option, value};
        Run run = Run.of(words);
        assertThat(run.code()).as(run.err()).isEqualTo(code);
        assertThat(run.err()).contains(part).doesNotContain("Exception").doesNotContain("{");
        assertThat(folder.resolve(out)).doesNotExist();
    }

    @Test
    void ofANestOnlyTheSizesAskedForAreTold() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        Path out = folder.resolve("two.html");
        Run run = Run.of("report", nest, "-o", out, "--sizes", "14,10");
        assertThat(run.code()).as(run.err()).isLessThan(2);
        assertThat(Files.readString(out)).contains("size 10", "size 14").doesNotContain("size 12", "Front 12");
        Run all = Run.of("report", nest, "-o", out, "--sizes", "all", "--overwrite");
        String every = Files.readString(out);
        assertThat(all.code()).isLessThan(2);
        Run.of("report", nest, "-o", out, "--overwrite");
        assertThat(Files.readString(out)).isEqualTo(every).contains("size 12");
        assertThat(Run.of("report", nest, "-o", out, "--sizes", "16", "--overwrite")
                        .err())
                .contains("16", "10, 12, 14");
        Run both = Run.of("report", nest, "-o", out, "--sizes", "12", "--size", "12", "--overwrite");
        assertThat(both.code()).isEqualTo(64);
        assertThat(both.err()).contains("--size", "--sizes");
    }
}
