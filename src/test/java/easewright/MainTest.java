package easewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program started as users start it, in a process of its own and without a display. */
class MainTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg").toAbsolutePath();
    private static final Path KNIT_TOP = Path.of("sample-pieces/knit-top.svg").toAbsolutePath();

    @TempDir
    Path folder;

    private record Ended(int code, String out, String err) {}

    private Ended start(List<String> options, String... arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.addAll(options);
        line.add("-cp");
        line.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
        line.add("easewright.Main");
        line.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(line)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("DISPLAY");
        builder.environment().put("LC_ALL", "C");
        Process process = builder.start();
        try {
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        return new Ended(process.exitValue(), Files.readString(out), Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void withoutADisplayTheSampleJobRunsAndOneLineSaysWhy() throws Exception {
        Ended ended = start(List.of());
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(ended.err().lines().findFirst().orElseThrow())
                .startsWith("No window can be opened here")
                .contains("libgtk-3-0");
        assertThat(ended.err()).doesNotContain("\tat ").doesNotContain("WARNING");
        assertThat(ended.out()).containsPattern("hip +100\\.0 +105 +\\+5\\.0").contains("+2.4");
        assertThat(folder.resolve("target/skirt-hip-24mm-more.svg")).isNotEmptyFile();
        assertThat(folder.resolve("target/skirt-hip-24mm-more.html")).isNotEmptyFile();
    }

    @Test
    void aDrawingAloneAsksForTheWindow() throws Exception {
        Ended ended = start(List.of(), SKIRT.toString());
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "Measure, \u00d7, measure FILE",
        "Ease, hip, ease FILE",
        "Change, bust, change FILE --at bust --by 2cm -o changed.svg"
    })
    void commandsLoadNoWindowClassCompareNoRecordsAndSpeakWholeSigns(String command, String said, String line)
            throws Exception {
        Ended ended = start(
                List.of("-Xlog:class+load:file=classes.txt"),
                line.replace("FILE", KNIT_TOP.toString()).split(" "));
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(ended.out()).contains(said);
        assertThat(Files.readString(folder.resolve("classes.txt")))
                .contains("easewright.command." + command + "Command")
                .doesNotContain("javafx.")
                // What Java makes to compare records takes a tenth of a short run.
                .doesNotContain("java.lang.runtime.ObjectMethods");
    }
}
