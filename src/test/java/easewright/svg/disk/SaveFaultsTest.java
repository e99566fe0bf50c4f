package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every step of a save made to fail, or to be the last thing the program does. */
class SaveFaultsTest {
    private static final byte[] OLD = "what was there".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "what is to be there, longer".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private Path target(int run) throws IOException {
        Path place = Files.createDirectory(folder.resolve("run" + run)).resolve("a.svg");
        Files.write(place, OLD);
        return place;
    }

    private static List<String> names(Path place) throws IOException {
        try (Stream<Path> all = Files.list(place.getParent())) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private int stepsOfASave() throws Exception {
        FaultyDisk disk = new FaultyDisk(-1, FaultyDisk.Fault.REFUSE);
        new AtomicSave(disk).put(target(-1), NEW, Optional.empty());
        return disk.steps();
    }

    @Test
    void whereTheFolderMayNotBeWrittenNothingIsTouched() throws Exception {
        Path place = target(0);
        assertThatThrownBy(() -> new AtomicSave(new FaultyDisk(0, FaultyDisk.Fault.FORBID))
                        .put(place, NEW, Optional.of(Fingerprint.of(OLD))))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("save-denied"));
        assertThat(place).hasBinaryContent(OLD);
        assertThat(names(place)).containsExactly("a.svg");
    }

    @ParameterizedTest
    @EnumSource(
            value = FaultyDisk.Fault.class,
            names = {"REFUSE", "HALF", "LATE"})
    void aStepThatFailsLeavesTheOldFileOrSaysThatTheNewOneIsThere(FaultyDisk.Fault fault) throws Exception {
        int steps = stepsOfASave();
        assertThat(steps).isGreaterThan(8);
        for (int wrong = 0; wrong < steps; wrong++) {
            Path place = target(wrong);
            String said = "";
            try {
                new AtomicSave(new FaultyDisk(wrong, fault)).put(place, NEW, Optional.of(Fingerprint.of(OLD)));
            } catch (SvgProblem e) {
                said = e.code();
            }
            byte[] now = Files.readAllBytes(place);
            if (said.isEmpty() || said.equals("save-not-forced")) {
                assertThat(now).as("step %d: %s", wrong, said).isEqualTo(NEW);
                assertThat(place.resolveSibling("a.svg.bak")).hasBinaryContent(OLD);
            } else {
                assertThat(said).isEqualTo("save-failed");
                // A rename that was done although it was reported as failed cannot be told from one that was not.
                assertThat(now).as("step %d", wrong).isIn((Object) OLD, fault == FaultyDisk.Fault.LATE ? NEW : OLD);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FaultyDisk.Fault.class,
            names = {"DIE_BEFORE", "DIE_HALF", "DIE_AFTER"})
    void aProgramThatDiesAtAnyStepLeavesOneWholeFileAndTheNextSaveTidiesUp(FaultyDisk.Fault fault) throws Exception {
        int steps = stepsOfASave();
        for (int last = 0; last < steps; last++) {
            Path place = target(last);
            AtomicSave save = new AtomicSave(new FaultyDisk(last, fault));
            assertThatThrownBy(() -> save.put(place, NEW, Optional.empty())).isInstanceOf(FaultyDisk.Died.class);
            assertThat(Files.readAllBytes(place)).as("step %d", last).isIn(OLD, NEW);
            for (String left : names(place)) {
                if (left.endsWith(".tmp")) {
                    Files.setLastModifiedTime(
                            place.resolveSibling(left),
                            FileTime.from(Instant.now().minus(Duration.ofHours(2))));
                }
            }
            AtomicSave.save(place, NEW);
            assertThat(names(place)).containsExactly("a.svg", "a.svg.bak");
        }
    }

    @Test
    void onlyOldFilesOfOurOwnMakingAreSweptAway() throws Exception {
        Path place = target(0);
        List<String> others = List.of(
                ".a.svg.tmp",
                ".a.svg.0a1b2c3d-0000-0000-0000-0123456789ab.txt",
                ".b.svg.0a1b2c3d-0000-0000-0000-0123456789ab.tmp",
                ".a.svg.mine.tmp");
        for (String other : others) {
            Path file = Files.write(place.resolveSibling(other), OLD);
            Files.setLastModifiedTime(file, FileTime.from(Instant.EPOCH));
        }
        Path recent = Files.write(place.resolveSibling(".a.svg.0a1b2c3d-0000-0000-0000-0123456789ab.tmp"), OLD);
        Path stale = Files.write(place.resolveSibling(".a.svg.fa1b2c3d-0000-0000-0000-0123456789ab.tmp"), OLD);
        Files.setLastModifiedTime(stale, FileTime.from(Instant.EPOCH));
        AtomicSave.save(place, NEW);
        assertThat(stale).doesNotExist();
        assertThat(recent).exists();
        assertThat(names(place)).containsAll(others);
    }
}
