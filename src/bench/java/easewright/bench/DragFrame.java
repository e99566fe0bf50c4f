package easewright.bench;

import easewright.editor.model.Reading;
import easewright.editor.model.Trial;
import easewright.editor.model.Wanted;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the editor works out between two display frames while a seam is pulled: the change, all measures, the ease and
 * everything that is to be noticed. Twelve pieces.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DragFrame {
    @Param({"2000", "20000", "200000"})
    public int segments;

    @Param({"STITCHING", "CUTTING"})
    public LineKind drawn;

    private Pattern pattern;
    private Reading reading;
    private Wanted wanted;
    private Optional<Trial> last = Optional.empty();
    private int frame;

    @Setup
    public void lay() {
        pattern = Gores.skirt(12, segments, drawn);
        reading = Reading.of(pattern);
        wanted = Wanted.at("hip", LevelKind.HIP);
    }

    /** Pulls to and fro by millimetres. */
    @Benchmark
    public Object pull() {
        frame++;
        last = Trial.of(pattern, reading, wanted.withAmount(1 + frame % 60), last);
        if (!(last.orElseThrow() instanceof Trial.Shown)) {
            throw new IllegalStateException("The pull was refused: " + last);
        }
        return last;
    }
}
