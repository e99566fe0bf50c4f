package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicSaveTest {
    @TempDir
    private Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void refused(String code, ThrowingCallable job) {
        assertThatThrownBy(job)
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo(code));
    }

    private String[] names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString()).sorted().toArray(String[]::new);
        }
    }

    @Test
    void aNewFileComesAlone() throws Exception {
        AtomicSave.save(folder.resolve("a.svg"), bytes("one"));
        assertThat(folder.resolve("a.svg")).hasContent("one");
        assertThat(names()).containsExactly("a.svg");
    }

    @Test
    void aReplacedFileLeavesOneBackupAndItsPermissions() throws Exception {
        Path file = folder.resolve("a.svg");
        Files.write(file, bytes("one"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        AtomicSave.save(file, bytes("two"));
        AtomicSave.save(file, bytes("three"));
        assertThat(file).hasContent("three");
        assertThat(folder.resolve("a.svg.bak")).hasContent("two");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
        assertThat(names()).containsExactly("a.svg", "a.svg.bak");
    }

    @Test
    void aLinkStaysALink() throws Exception {
        Files.write(folder.resolve("real.svg"), bytes("one"));
        Path link = Files.createSymbolicLink(folder.resolve("link.svg"), Path.of("real.svg"));
        AtomicSave.save(link, bytes("two"));
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(folder.resolve("real.svg")).hasContent("two");
    }

    @Test
    void theInputIsNotReplacedUnasked() throws Exception {
        Path input = folder.resolve("a.svg");
        Files.write(input, bytes("one"));
        Path other = Files.createSymbolicLink(folder.resolve("b.svg"), Path.of("a.svg"));
        refused("save-over-input", () -> AtomicSave.saveElsewhere(input, bytes("two"), input));
        refused("save-over-input", () -> AtomicSave.saveElsewhere(other, bytes("two"), input));
        assertThat(input).hasContent("one");
        AtomicSave.saveElsewhere(folder.resolve("c.svg"), bytes("two"), input);
        assertThat(folder.resolve("c.svg")).hasContent("two");
    }

    @Test
    void whatCannotBeSavedIsRefusedAndLeavesNothing() throws Exception {
        refused("save-no-directory", () -> AtomicSave.save(folder.resolve("no/such/a.svg"), bytes("x")));
        Path directory = Files.createDirectory(folder.resolve("d.svg"));
        refused("save-not-a-file", () -> AtomicSave.save(directory, bytes("x")));
        assertThat(names()).containsExactly("d.svg");
    }
}
