package easewright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.svg.SvgProblem;
import easewright.text.BodyFile;
import easewright.text.Unreadable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The files in sample-pieces are what the drafts give. To draw them anew:
 * {@code mvn test -Dtest=SamplesTest -Dsamples=write}.
 */
class SamplesTest {
    private static final Path DIRECTORY = Path.of("sample-pieces");

    @Test
    void bodyFilesSayTheBodyInFull() throws Unreadable {
        for (Draft draft : Samples.drafts()) {
            assertThat(BodyFile.parse(Samples.bodyText(draft.body()), "me.txt")).isEqualTo(draft.body());
        }
    }

    @Test
    void sampleFilesAreWhatTheDraftsGive() throws IOException, SvgProblem {
        Map<String, String> files = Samples.files();
        if ("write".equals(System.getProperty("samples"))) {
            Files.createDirectories(DIRECTORY);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(DIRECTORY.resolve(file.getKey()), file.getValue());
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertThat(DIRECTORY.resolve(file.getKey()))
                    .content()
                    .as(file.getKey())
                    .isEqualTo(file.getValue());
        }
        try (var listed = Files.list(DIRECTORY)) {
            assertThat(listed.map(p -> p.getFileName().toString()).filter(n -> !n.startsWith(".")))
                    .containsExactlyInAnyOrderElementsOf(files.keySet());
        }
    }
}
