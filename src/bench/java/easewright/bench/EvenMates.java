package easewright.bench;

import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.draft.Samples;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
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
 * A seam change after which seams that are sewn together still fit, against the same change made plainly: front and back
 * of trousers at the thigh, whose seams slant differently, and of a bodice at the bust.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EvenMates {
    @Param({"trousers thigh", "bodice bust", "skirt hip"})
    public String where;

    @Param({"false", "true"})
    public boolean even;

    private Pattern pattern;
    private String level;
    private int turn;

    /** Reads the sample. */
    @Setup
    public void lay() throws SvgProblem {
        String file = where.substring(0, where.indexOf(' ')) + ".svg";
        level = where.substring(where.indexOf(' ') + 1);
        pattern = SvgFile.read(Samples.files().get(file).getBytes(StandardCharsets.UTF_8), file)
                .pattern();
    }

    /** By 20 to 59 mm. */
    @Benchmark
    public Object change() throws Refusal {
        turn++;
        SeamChange plain = SeamChange.at(level, 20 + turn % 40);
        return (even ? plain.evened() : plain).apply(pattern);
    }
}
