package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import easewright.svg.HostileDrawings.Fate;
import easewright.svg.HostileDrawings.Hostile;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The made hostile drawings, read and, where that succeeds, marked. The heavy ones are left to {@link HostileRun}. */
class MadeHostilesTest {
    static List<Hostile> light() {
        return HostileDrawings.all().stream().filter(one -> !one.heavy()).toList();
    }

    @ParameterizedTest
    @MethodSource("light")
    void meetsItsFate(Hostile hostile) {
        byte[] bytes = hostile.bytes().get();
        // Generous, since the machine may be busy: this is against never ending.
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            SvgFile file;
            try {
                file = SvgFile.read(bytes, hostile.name());
            } catch (SvgProblem refused) {
                assertThat(hostile.fate()).as(refused.code()).isNotEqualTo(Fate.OPENED);
                assertThat(refused.values()).containsEntry("file", hostile.name());
                return;
            }
            assertThat(hostile.fate()).isNotEqualTo(Fate.REFUSED);
            assertThat(file.write(file.pattern())).isEqualTo(bytes);
            if (hostile.fate() == Fate.OPENED) {
                DrawnShape good = file.drawing().shape("good").orElseThrow();
                assertThat(Ring.largest(good).orElseThrow().area()).isCloseTo(6400, within(1e-6));
                byte[] marked = file.write(file.pattern().withWish("hip", 10));
                assertThat(SvgFile.read(marked, hostile.name()).pattern().wishes())
                        .containsKey("hip");
            }
        });
    }
}
