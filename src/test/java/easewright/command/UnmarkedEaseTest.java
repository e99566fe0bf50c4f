package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ease} on a drawing in which no level is marked. */
class UnmarkedEaseTest {
    private static final String DRAWING = "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='700mm'"
            + " viewBox='0 0 600 700'><path id='front' d='M20 20H260V620H20Z'/>%s</svg>";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void draw() throws Exception {
        file = Files.writeString(folder.resolve("bare.svg"), String.format(DRAWING, ""));
    }

    @Test
    void saysWhatIsMissingAndHowToGoOn() {
        Run run = Run.of("ease", file);
        assertThat(run.code()).isEqualTo(Commands.DONE);
        assertThat(run.out())
                .containsOnlyOnce("No level")
                .contains("one piece: front")
                .contains("page Marks")
                .containsPattern("(?m)^  easewright .*bare\\.svg$")
                .contains("Worth a look");
    }

    @Test
    void namesAllThatItRead() throws Exception {
        Files.writeString(file, String.format(DRAWING, "<path id='back' d='M320 20H560V620H320Z'/>"));
        assertThat(Run.of("ease", file).out().replaceAll("\\s+", " ")).contains("2 pieces: front, back.");
        assertThat(Run.of("ease", file, "--json").out()).contains("levels-not-marked");
    }
}
