package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few rounds; {@code -Dkills=300} for as many as one likes. */
class KillLoopTest {
    @TempDir
    private Path folder;

    @Test
    void killedAtAnyMomentTheFileAndWhatWasKeptAreWhole() throws Exception {
        int times = Integer.getInteger("kills", 4);
        KillLoop.Result result = KillLoop.run(folder, times, 20256);
        assertThat(result.kills()).isEqualTo(times);
        assertThat(result.torn()).isZero();
        assertThat(result.lost()).isZero();
        assertThat(result.savesSeen()).isPositive();
    }
}
