package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Saving on a disk of 1 MB that is full or can only be read. A disk can be mounted by the machine's administrator on
 * Linux only; elsewhere these are skipped, and {@link SaveFaultsTest} makes the same steps fail.
 */
class SmallDiskTest {
    @TempDir
    private Path folder;

    private Path disk;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                ran("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk.toString()), "no disk can be mounted here");
    }

    @AfterEach
    void unmount() throws Exception {
        // At once, though the claims stay open until the program ends.
        ran("umount", "-l", disk.toString());
    }

    private static boolean ran(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }

    private static byte[] content(int seed, int size) {
        byte[] bytes = new byte[size];
        new Random(seed).nextBytes(bytes);
        return bytes;
    }

    private static void refused(String code, Path file, byte[] content) {
        assertThatThrownBy(() -> AtomicSave.save(file, content))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo(code));
    }

    @Test
    void aFullDiskLeavesTheOldFileWhole() throws Exception {
        Path file = disk.resolve("a.svg");
        byte[] old = content(1, 300_000);
        AtomicSave.save(file, old);
        AtomicSave.save(file, old);
        assertThat(file.resolveSibling("a.svg.bak")).exists();
        for (int size : new int[] {250_000, 400_000, 700_000, 2_000_000}) {
            refused("save-disk-full", file, content(2, size));
            assertThat(file).hasBinaryContent(old);
            assertThat(file.resolveSibling("a.svg.bak")).hasBinaryContent(old);
            try (Stream<Path> all = Files.list(disk)) {
                assertThat(all).hasSize(2);
            }
        }
        byte[] small = content(3, 100_000);
        AtomicSave.save(file, small);
        assertThat(file).hasBinaryContent(small);
    }

    @Test
    void aFullDiskKeepsTheWorkThatWasKeptBefore() throws Exception {
        Path file = folder.resolve("a.svg");
        byte[] one = content(1, 600_000);
        Recovery window = new Recovery(disk);
        window.keep(file, Optional.empty(), one, "", EarlierStates.NONE);
        assertThatThrownBy(() -> window.keep(file, Optional.empty(), content(2, 600_000), "", EarlierStates.NONE))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("recovery-disk-full"));
        window.close();
        try (Recovery next = new Recovery(disk)) {
            assertThat(next.leftBehind())
                    .singleElement()
                    .satisfies(work -> assertThat(work.bytes()).isEqualTo(one));
        }
    }

    @Test
    void aDiskThatCanOnlyBeReadIsSaid() throws Exception {
        Path file = disk.resolve("a.svg");
        byte[] old = content(1, 1000);
        AtomicSave.save(file, old);
        assumeTrue(ran("mount", "-o", "remount,ro", disk.toString()));
        refused("save-disk-read-only", file, content(2, 1000));
        assertThat(file).hasBinaryContent(old);
        assertThatThrownBy(() -> new Recovery(disk))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("state-folder"));
    }
}
