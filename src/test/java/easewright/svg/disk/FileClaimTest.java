package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileClaimTest {
    @TempDir
    private Path folder;

    @Test
    void aSecondWindowOnTheSameFileIsTold() throws Exception {
        Path file = Files.writeString(folder.resolve("a.svg"), "one");
        Path link = Files.createSymbolicLink(folder.resolve("link.svg"), Path.of("a.svg"));
        Path other = folder.resolve("not-saved-yet.svg");
        try (FileClaim first = FileClaim.take(file, folder).orElseThrow()) {
            assertThat(FileClaim.take(file, folder)).isEmpty();
            assertThat(FileClaim.take(link, folder)).isEmpty();
            Optional<FileClaim> another = FileClaim.take(other, folder);
            assertThat(another).isPresent();
            another.get().close();
            assertThat(first).isNotNull();
        }
        assertThat(FileClaim.take(link, folder)).isPresent();
    }

    /** Another program, which is then killed without warning. */
    @Test
    void aClaimLastsAsLongAsTheProgramThatMadeIt() throws Exception {
        Path file = Files.writeString(folder.resolve("a.svg"), "one");
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-XX:TieredStopAtLevel=1",
                        Holder.class.getName(),
                        file.toString(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("taken");
            assertThat(FileClaim.take(file, folder)).isEmpty();
            try (Recovery here = new Recovery(folder)) {
                assertThat(here.leftBehind()).isEmpty();
            }
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertThat(FileClaim.take(file, folder)).isPresent();
        try (Recovery here = new Recovery(folder)) {
            assertThat(here.leftBehind())
                    .singleElement()
                    .satisfies(work -> assertThat(work.original()).isEqualTo(file));
        }
    }

    /** Opens a file, keeps work on it, and waits to be killed. */
    static final class Holder {
        private Holder() {}

        public static void main(String[] args) throws Exception {
            Path file = Path.of(args[0]);
            if (FileClaim.take(file, Path.of(args[1])).isEmpty()) {
                throw new IllegalStateException("somebody else has it");
            }
            new Recovery(Path.of(args[1]))
                    .keep(file, Optional.empty(), "two".getBytes(StandardCharsets.UTF_8), "", EarlierStates.NONE);
            System.out.println("taken");
            System.in.read();
        }
    }
}
