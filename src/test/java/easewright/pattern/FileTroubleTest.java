package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Each trouble with a real file as far as this machine can make it, the others by what systems say of them. */
class FileTroubleTest {
    @TempDir
    private Path folder;

    private static FileTrouble reading(Path file) {
        IOException why = catchThrowableOfType(IOException.class, () -> Files.readAllBytes(file));
        return FileTrouble.of(file, why);
    }

    private static FileTrouble writing(Path file) {
        IOException why = catchThrowableOfType(IOException.class, () -> Files.writeString(file, "x"));
        return FileTrouble.of(file, why);
    }

    @Test
    void whatIsNotThere() throws IOException {
        assertThat(reading(folder.resolve("no.svg"))).isEqualTo(FileTrouble.MISSING);
        assertThat(writing(folder.resolve("no/such/a.svg"))).isEqualTo(FileTrouble.MISSING);
        Path file = Files.writeString(folder.resolve("a.svg"), "x");
        assertThat(reading(file.resolve("b.svg"))).isEqualTo(FileTrouble.MISSING);
        assertThat(writing(file.resolve("b/c.svg"))).isEqualTo(FileTrouble.MISSING);
        Path astray = Files.createSymbolicLink(folder.resolve("astray.svg"), Path.of("nowhere.svg"));
        assertThat(reading(astray)).isEqualTo(FileTrouble.MISSING);
    }

    @Test
    void aFolder() {
        assertThat(reading(folder)).isEqualTo(FileTrouble.FOLDER);
        assertThat(writing(folder)).isEqualTo(FileTrouble.FOLDER);
    }

    @Test
    void namesThatAreTooLong() {
        Path name = folder.resolve("\u00e4".repeat(128) + ".svg");
        assertThat(reading(name)).isEqualTo(FileTrouble.NAME_TOO_LONG);
        assertThat(writing(name)).isEqualTo(FileTrouble.NAME_TOO_LONG);
        Path way = folder;
        for (int i = 0; i < 50; i++) {
            way = way.resolve("a".repeat(100));
        }
        assertThat(reading(way)).isEqualTo(FileTrouble.NAME_TOO_LONG);
    }

    @Test
    void aLinkThatLeadsBackToItself() throws IOException {
        Path one = folder.resolve("one.svg");
        Path two = Files.createSymbolicLink(folder.resolve("two.svg"), one);
        Files.createSymbolicLink(one, two);
        assertThat(reading(one)).isEqualTo(FileTrouble.CIRCLE);
        assertThat(writing(one)).isEqualTo(FileTrouble.CIRCLE);
    }

    @Test
    void whatThisPersonMayNot() throws IOException {
        Path file = Files.writeString(folder.resolve("a.svg"), "x");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(file), "the machine's administrator may read anything");
        assertThat(reading(file)).isEqualTo(FileTrouble.DENIED);
        assertThat(writing(file)).isEqualTo(FileTrouble.DENIED);
        Path shut = Files.createDirectory(folder.resolve("shut"));
        Path inside = Files.writeString(shut.resolve("a.svg"), "x");
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("r--r--r--"));
        assertThat(reading(inside)).isEqualTo(FileTrouble.DENIED);
        assertThat(writing(inside)).isEqualTo(FileTrouble.DENIED);
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("rwx------"));
    }

    /** As Linux, macOS and Windows put it (from memory). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "No space left on device | FULL",
                "There is not enough space on the disk | FULL",
                "Disk quota exceeded | FULL",
                "Read-only file system | READ_ONLY",
                "The media is write protected | READ_ONLY",
                "Operation not permitted | DENIED",
                "Permission denied | DENIED",
                "Input/output error | AWAY",
                "Stale file handle | AWAY",
                "Stale NFS file handle | AWAY",
                "Transport endpoint is not connected | AWAY",
                "Host is down | AWAY",
                "Connection timed out | AWAY",
                "The network path was not found | AWAY",
                "The specified network name is no longer available | AWAY",
                "The device is not ready | AWAY",
                "The process cannot access the file because it is being used by another process | IN_USE",
                "Device or resource busy | IN_USE",
                "File name too long | NAME_TOO_LONG",
                "Too many levels of symbolic links | CIRCLE",
                "Is a directory | FOLDER",
                "Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar | UNKNOWN"
            })
    void whatSystemsSay(String message, FileTrouble trouble) {
        Path file = folder.resolve("a.svg");
        assertThat(FileTrouble.of(file, new IOException(message))).isEqualTo(trouble);
        assertThat(FileTrouble.of(file, new FileSystemException(file.toString(), null, message)))
                .isEqualTo(trouble);
    }

    /** A name of 130 letters and 260 bytes, as macOS takes it: it counts only where the system says nothing that is known. */
    @Test
    void aLongNameIsNoReasonWhereTheSystemGivesAnother() {
        Path file = folder.resolve("\u00e4".repeat(130));
        assertThat(FileTrouble.of(file, new IOException("No space left on device")))
                .isEqualTo(FileTrouble.FULL);
        assertThat(FileTrouble.of(file, new FileSystemException(file.toString(), null, "Read-only file system")))
                .isEqualTo(FileTrouble.READ_ONLY);
        assertThat(FileTrouble.of(file, new IOException("Something new"))).isEqualTo(FileTrouble.NAME_TOO_LONG);
    }

    /** The name of a file says nothing of what is wrong with it. */
    @Test
    void aNameIsNoReason() {
        Path file = folder.resolve("network quota too long.svg");
        assertThat(FileTrouble.of(file, new FileSystemException(file.toString(), null, "Something new")))
                .isEqualTo(FileTrouble.UNKNOWN);
        assertThat(FileTrouble.of(file, new IOException((String) null))).isEqualTo(FileTrouble.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource(FileTrouble.class)
    void everyOneHasACodeForBothWays(FileTrouble trouble) {
        assertThat(trouble.unread()).startsWith("file-");
        assertThat(trouble.unsaved()).matches("(save|file)-[a-z-]+");
    }
}
