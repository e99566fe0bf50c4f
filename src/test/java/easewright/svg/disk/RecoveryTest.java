package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.svg.SvgProblem;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryTest {
    @TempDir
    private Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static Optional<Fingerprint> seen(Path file) {
        try {
            return Optional.of(Fingerprint.of(Files.readAllBytes(file)));
        } catch (java.io.IOException notThere) {
            return Optional.empty();
        }
    }

    private List<KeptWork> foundByANewWindow() throws SvgProblem {
        try (Recovery next = new Recovery(folder)) {
            return next.leftBehind();
        }
    }

    @Test
    void workOfAWindowThatEndedIsFoundUntilItIsDealtWith() throws Exception {
        Path file = folder.resolve("skirt.svg");
        Files.write(file, bytes("as saved"));
        Recovery window = new Recovery(folder);
        window.keep(file, seen(file), bytes("one"), "", EarlierStates.NONE);
        window.keep(file, seen(file), bytes("two"), "", EarlierStates.NONE);
        window.keep(Path.of("untitled.svg"), Optional.empty(), bytes("three"), "", EarlierStates.NONE);
        assertThat(window.leftBehind()).isEmpty();
        assertThat(foundByANewWindow()).isEmpty();
        window.close();

        try (Recovery next = new Recovery(folder)) {
            List<KeptWork> left = next.leftBehind();
            assertThat(left).extracting(KeptWork::original).containsExactlyInAnyOrder(file, Path.of("untitled.svg"));
            KeptWork skirt = left.get(left.get(0).original().equals(file) ? 0 : 1);
            assertThat(skirt.bytes()).isEqualTo(bytes("two"));
            assertThat(skirt.originalChanged()).isFalse();
            assertThat(file).hasContent("as saved");
            Files.write(file, bytes("as saved by somebody else"));
            assertThat(skirt.originalChanged()).isTrue();
            left.forEach(next::discard);
            assertThat(next.leftBehind()).isEmpty();
        }
    }

    @Test
    void whatIsNotWholeIsToldOnceAndStays() throws Exception {
        try (Recovery window = new Recovery(folder)) {
            window.keep(Path.of("whole.svg"), Optional.empty(), bytes("whole"), "", EarlierStates.NONE);
            window.keep(Path.of("torn.svg"), Optional.empty(), bytes("torn ".repeat(1000)), "", EarlierStates.NONE);
        }
        try (Recovery next = new Recovery(folder)) {
            Path torn = next.leftBehind().stream()
                    .filter(w -> w.original().equals(Path.of("torn.svg")))
                    .findFirst()
                    .orElseThrow()
                    .file();
            byte[] stored = Files.readAllBytes(torn);
            Files.write(torn, Arrays.copyOf(stored, stored.length / 2));
            assertThat(next.leftBehind()).extracting(KeptWork::original).containsExactly(Path.of("whole.svg"));
            List<Path> aside = next.putAsideDamaged();
            assertThat(aside).hasSize(1);
            assertThat(aside.get(0)).hasSize(stored.length / 2);
            assertThat(next.putAsideDamaged()).isEmpty();
            assertThat(next.leftBehind()).hasSize(1);
        }
    }

    /** Saved in the very moment in which the program ended: there is nothing to bring back but what was tried. */
    @Test
    void whatIsInItsFileIsNotOffered() throws Exception {
        Path file = Files.write(folder.resolve("skirt.svg"), bytes("before"));
        Path other = Files.write(folder.resolve("other.svg"), bytes("before"));
        try (Recovery window = new Recovery(folder)) {
            window.keep(file, seen(file), bytes("after"), "", EarlierStates.NONE);
            window.keep(other, seen(other), bytes("after"), "what is tried", EarlierStates.NONE);
        }
        Files.write(file, bytes("after"));
        Files.write(other, bytes("after"));
        List<KeptWork> left = foundByANewWindow();
        assertThat(left).extracting(KeptWork::original).containsExactly(other);
        assertThat(left.get(0).isInItsFile()).isTrue();
        assertThat(left.get(0).originalChanged()).isFalse();
        assertThat(left.get(0).unfinished()).isEqualTo("what is tried");
    }

    /** What another program made of the file before this window kept its work is not taken for what was opened. */
    @Test
    void aFileChangedBeforeTheWorkWasKeptIsKnownToBeChanged() throws Exception {
        Path file = Files.write(folder.resolve("skirt.svg"), bytes("as opened"));
        Optional<Fingerprint> opened = seen(file);
        Files.write(file, bytes("by somebody else"));
        try (Recovery window = new Recovery(folder)) {
            window.keep(file, opened, bytes("my work"), "", EarlierStates.NONE);
        }
        assertThat(foundByANewWindow().get(0).originalChanged()).isTrue();
    }

    @Test
    void aFolderThatWasClearedAwayIsMadeAgain() throws Exception {
        try (Recovery window = new Recovery(folder)) {
            Files.delete(folder.resolve("recovery/claims.lock"));
            Files.delete(folder.resolve("recovery"));
            window.keep(Path.of("a.svg"), Optional.empty(), bytes("one"), "", EarlierStates.NONE);
        }
        assertThat(foundByANewWindow()).hasSize(1);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("recovery"))))
                .isEqualTo("rwx------");
    }

    /** Kept by the program before it knew of unfinished things, which may have crashed and been replaced since. */
    @Test
    void whatAnOlderProgramKeptIsFound() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.writeUTF("easewright-kept-1");
        data.writeUTF("a.svg");
        data.writeLong(0);
        data.writeLong(-1);
        data.writeUTF("");
        data.writeInt(3);
        data.write(bytes("one"));
        data.writeUTF(Fingerprint.of(out.toByteArray()).sha256());
        KeptWork work = KeptWork.of(Path.of("k"), out.toByteArray()).orElseThrow();
        assertThat(work.bytes()).isEqualTo(bytes("one"));
        assertThat(work.unfinished()).isEmpty();
        assertThat(work.earlier().states()).isEmpty();
    }

    /** Clocks are set back by hand, by the network and in autumn: the state kept last is what stays all the same. */
    @Test
    void aClockThatRunsBackwardsCostsNothing() throws Exception {
        AtomicLong day = new AtomicLong(20_000);
        InstantSource backwards = () -> Instant.ofEpochSecond(86_400 * day.getAndDecrement());
        try (Recovery window = new Recovery(folder, Disk.REAL, backwards)) {
            for (String state : List.of("one", "two", "three")) {
                window.keep(Path.of("a.svg"), Optional.empty(), bytes(state), "", EarlierStates.NONE);
                window.keep(Path.of("b.svg"), Optional.empty(), bytes(state), "", EarlierStates.NONE);
            }
        }
        List<KeptWork> left = foundByANewWindow();
        assertThat(left).extracting(KeptWork::original).containsExactlyInAnyOrder(Path.of("a.svg"), Path.of("b.svg"));
        assertThat(left).allSatisfy(work -> assertThat(work.bytes()).isEqualTo(bytes("three")));
    }

    @Test
    void nothingIsKeptAfterTheEnd() throws Exception {
        Recovery window = new Recovery(folder);
        window.close();
        window.keep(Path.of("late.svg"), Optional.empty(), bytes("late"), "", EarlierStates.NONE);
        assertThat(foundByANewWindow()).isEmpty();
    }

    @Test
    void whatIsDoneIsNotLeftBehind() throws Exception {
        Path file = folder.resolve("skirt.svg");
        try (Recovery window = new Recovery(folder)) {
            window.keep(file, seen(file), bytes("one"), "", EarlierStates.NONE);
            window.keep(folder.resolve("other.svg"), Optional.empty(), bytes("two"), "", EarlierStates.NONE);
            window.done(file);
        }
        assertThat(foundByANewWindow()).extracting(KeptWork::original).containsExactly(folder.resolve("other.svg"));
    }

    @Test
    void keptWorkIsForThisUserOnly() throws Exception {
        try (Recovery window = new Recovery(folder)) {
            window.keep(folder.resolve("a.svg"), Optional.empty(), bytes("one"), "", EarlierStates.NONE);
        }
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("recovery"))))
                .isEqualTo("rwx------");
    }

    /** Whatever a power cut leaves of a file: nothing is offered that is not whole. */
    @Test
    void cutOrDamagedWorkIsNeverOffered() {
        byte[] content = bytes("<svg/>");
        byte[] stored = new KeptWork(
                        Path.of("k"),
                        Path.of("a.svg"),
                        Optional.empty(),
                        java.time.Instant.EPOCH,
                        content,
                        "what is tried",
                        new EarlierStates(List.of(bytes("<svg><g/></svg>"), bytes("<svg></svg>")), 1))
                .stored();
        assertThat(KeptWork.of(Path.of("k"), stored).orElseThrow().bytes()).isEqualTo(content);
        assertThat(KeptWork.of(Path.of("k"), stored).orElseThrow().unfinished()).isEqualTo("what is tried");
        EarlierStates earlier = KeptWork.of(Path.of("k"), stored).orElseThrow().earlier();
        assertThat(earlier.states()).containsExactly(bytes("<svg><g/></svg>"), bytes("<svg></svg>"));
        assertThat(earlier.saved()).isEqualTo(1);
        for (int length = 0; length < stored.length; length++) {
            assertThat(KeptWork.of(Path.of("k"), Arrays.copyOf(stored, length))).isEmpty();
            byte[] flipped = stored.clone();
            flipped[length] ^= 0x10;
            assertThat(KeptWork.of(Path.of("k"), flipped)).as("byte %d", length).isEmpty();
        }
    }

    @Test
    void aWindowThatDiesWhileKeepingLeavesTheStateBefore() throws Exception {
        Path file = folder.resolve("skirt.svg");
        for (FaultyDisk.Fault fault :
                List.of(FaultyDisk.Fault.DIE_BEFORE, FaultyDisk.Fault.DIE_HALF, FaultyDisk.Fault.DIE_AFTER)) {
            for (int step = 4; step < 8; step++) {
                Recovery window = new Recovery(folder, new FaultyDisk(step, fault), InstantSource.system());
                window.keep(file, seen(file), bytes("one"), "", EarlierStates.NONE);
                assertThatThrownBy(() -> window.keep(file, seen(file), bytes("two"), "", EarlierStates.NONE))
                        .isInstanceOf(FaultyDisk.Died.class);
                endsWithoutTidying(window);
                try (Recovery next = new Recovery(folder)) {
                    assertThat(next.leftBehind())
                            .singleElement()
                            .satisfies(work -> assertThat(new String(work.bytes(), StandardCharsets.UTF_8))
                                    .isIn("one", "two"));
                    next.leftBehind().forEach(next::discard);
                }
            }
        }
    }

    /** The system lets go of a dead program's claims; its disk does nothing more. */
    private static void endsWithoutTidying(Recovery window) {
        try {
            window.close();
        } catch (FaultyDisk.Died dead) {
            return;
        }
    }

    @Test
    void keepingThatFailsSaysSoAndKeepsTheStateBefore() throws Exception {
        Path file = folder.resolve("skirt.svg");
        Recovery window = new Recovery(folder, new FaultyDisk(5, FaultyDisk.Fault.HALF), InstantSource.system());
        window.keep(file, seen(file), bytes("one"), "", EarlierStates.NONE);
        assertThatThrownBy(() -> window.keep(file, seen(file), bytes("two"), "", EarlierStates.NONE))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("recovery-not-kept"));
        window.close();
        assertThat(foundByANewWindow())
                .singleElement()
                .satisfies(work -> assertThat(work.bytes()).isEqualTo(bytes("one")));
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws Exception {
        Path blocked = Files.write(folder.resolve("file"), bytes("x"));
        assertThatThrownBy(() -> new Recovery(blocked))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("state-folder"));
        assertThatThrownBy(() -> FileClaim.take(folder.resolve("a.svg"), blocked))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("state-folder"));
    }
}
