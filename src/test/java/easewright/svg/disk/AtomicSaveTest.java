package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserDefinedFileAttributeView;
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
    void whatCannotBeSavedIsRefusedAndLeavesNothing() throws Exception {
        refused("save-no-directory", () -> AtomicSave.save(folder.resolve("no/such/a.svg"), bytes("x")));
        Path directory = Files.createDirectory(folder.resolve("d.svg"));
        refused("save-not-a-file", () -> AtomicSave.save(directory, bytes("x")));
        refused("save-name-too-long", () -> AtomicSave.save(folder.resolve("a".repeat(300)), bytes("x")));
        // Together with what the copy beside it is called for a moment.
        refused("save-name-too-long", () -> AtomicSave.save(folder.resolve("a".repeat(250)), bytes("x")));
        assertThat(names()).containsExactly("d.svg");
    }

    @Test
    void inAFolderThatMayNotBeWrittenNothingIsSaved() throws Exception {
        Path shut = Files.createDirectory(folder.resolve("shut"));
        Path file = Files.write(shut.resolve("a.svg"), bytes("one"));
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(shut), "the machine's administrator may write anywhere");
        refused("save-denied", () -> AtomicSave.save(file, bytes("two")));
        refused("save-denied", () -> AtomicSave.save(shut.resolve("b.svg"), bytes("two")));
        assertThat(file).hasContent("one");
    }

    @Test
    void aFileChangedByAnotherProgramIsNotReplaced() throws Exception {
        Path file = folder.resolve("a.svg");
        Fingerprint first = AtomicSave.save(file, bytes("one")).fingerprint();
        Files.write(file, bytes("two"));
        refused("save-changed-meanwhile", () -> AtomicSave.save(file, bytes("mine"), first));
        assertThat(file).hasContent("two");
        assertThat(names()).containsExactly("a.svg");
        Fingerprint seen = Fingerprint.of(bytes("two"));
        AtomicSave.Saved saved = AtomicSave.save(file, bytes("mine"), seen);
        assertThat(saved.findings()).isEmpty();
        AtomicSave.save(file, bytes("mine too"), saved.fingerprint());
        assertThat(file).hasContent("mine too");
        Files.delete(file);
        AtomicSave.save(file, bytes("again"), saved.fingerprint());
        assertThat(file).hasContent("again");
    }

    @Test
    void aWriteProtectedFileAndOneOfTwoNamesAreLeftAlone() throws Exception {
        Path file = folder.resolve("a.svg");
        Files.write(file, bytes("one"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        refused("save-write-protected", () -> AtomicSave.save(file, bytes("two")));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        Files.createLink(folder.resolve("b.svg"), file);
        refused("save-hard-link", () -> AtomicSave.save(file, bytes("two")));
        assertThat(file).hasContent("one");
        assertThat(names()).containsExactly("a.svg", "b.svg");
    }

    @Test
    void ownerGroupAndExtendedAttributesAreKept() throws Exception {
        Path file = folder.resolve("a.svg");
        Files.write(file, bytes("one"));
        UserDefinedFileAttributeView extra = Files.getFileAttributeView(file, UserDefinedFileAttributeView.class);
        boolean extended = Files.getFileStore(file).supportsFileAttributeView("user");
        if (extended) {
            extra.write("note", ByteBuffer.wrap(bytes("mine")));
        }
        Integer owner = (Integer) Files.getAttribute(file, "unix:uid");
        boolean given = owner == 0;
        if (given) {
            Files.setAttribute(file, "unix:uid", 65534);
            Files.setAttribute(file, "unix:gid", 65534);
        }
        AtomicSave.save(file, bytes("two"));
        for (String name : names()) {
            Path one = folder.resolve(name);
            assertThat(Files.getAttribute(one, "unix:uid")).isEqualTo(given ? 65534 : owner);
            if (extended) {
                assertThat(Files.getFileAttributeView(one, UserDefinedFileAttributeView.class)
                                .list())
                        .containsExactly("note");
            }
        }
    }
}
