package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be read or written, each with what a person can do about it and without the words of the system. */
class FileTroublesSaidTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    @TempDir
    Path folder;

    /** Each file of this machine that cannot be read, and what is said of it. */
    private Map<Path, String> unreadable() throws IOException {
        Map<Path, String> files = new LinkedHashMap<>();
        files.put(folder.resolve("no such.svg"), "There is no file");
        files.put(Files.createDirectories(folder.resolve("sub")), "is a folder");
        files.put(folder.resolve("\u00e4".repeat(200)), "too long");
        Path file = Files.writeString(folder.resolve("a.txt"), "x");
        files.put(file.resolve("b.svg"), "There is no file");
        Path circle = folder.resolve("circle.svg");
        if (!Files.isSymbolicLink(circle)) {
            Files.createSymbolicLink(circle, circle);
        }
        files.put(circle, "leads back to itself");
        return files;
    }

    private static void saidPlainly(Run run, Path file, String said) {
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip().lines()).as(run.err()).hasSize(1);
        assertThat(run.err())
                .contains(file.toString())
                .contains(said)
                .doesNotContain(
                        "Exception", "java", "null", "Is a directory", "File name", "Not a directory", "Details");
    }

    @Test
    void whatCannotBeReadIsSaidTheSameOfEveryKindOfFile() throws IOException {
        for (Map.Entry<Path, String> each : unreadable().entrySet()) {
            Path file = each.getKey();
            saidPlainly(Run.of("measure", file), file, each.getValue());
            saidPlainly(Run.of("ease", SKIRT, "--body", file), file, each.getValue());
            saidPlainly(Run.of("ease", SKIRT, "--table", file), file, each.getValue());
            saidPlainly(Run.of("change", SKIRT, "--list", file, "--try"), file, each.getValue());
        }
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws IOException {
        Path name = folder.resolve("a".repeat(300) + ".svg");
        saidPlainly(Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", name), name, "too long for this disk");
        Path inside = Files.writeString(folder.resolve("a.txt"), "x").resolve("b.svg");
        saidPlainly(Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", inside), inside, "folder");
        Path sub = Files.createDirectory(folder.resolve("sub"));
        saidPlainly(Run.of("print", SKIRT, "-o", sub, "--overwrite"), sub, "it is a folder");
        Path taken = folder.resolve("a.txt");
        saidPlainly(Run.of("draft", "samples", "-o", taken), taken, "is a file, where a folder is needed");
    }

    @Test
    void whatThisPersonMayNotIsSaid() throws IOException {
        Path shut = Files.createDirectory(folder.resolve("shut"));
        Path file = Files.copy(SKIRT, folder.resolve("mine.svg"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("-w-------"));
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isReadable(file), "the machine's administrator may read and write anything");
        saidPlainly(Run.of("measure", file), file, "no permission to read");
        Path out = shut.resolve("wider.svg");
        saidPlainly(
                Run.of("change", SKIRT, "--at", "hip", "--by", "24mm", "-o", out), out, "may not write in the folder");
        Path samples = shut.resolve("samples");
        saidPlainly(Run.of("draft", "samples", "-o", samples), samples, "may not write in the folder");
    }
}
