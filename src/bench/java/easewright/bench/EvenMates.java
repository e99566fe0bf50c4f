package easewright.bench;

import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.draft.Samples;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
 * of trousers at the thigh, whose seams slant differently, of a bodice at the bust and of a skirt at the hip.
 *
 * <p>{@code java … easewright.bench.EvenMates TURNS} takes both in turns, by the processor time of their thread, for a
 * machine that others use. The first half of the turns warms up.
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

    /** By 20 to 49 mm; more than 53 cannot be made even on these trousers. */
    @Benchmark
    public Object change() throws Refusal {
        turn++;
        SeamChange plain = SeamChange.at(level, 20 + turn % 30);
        return (even ? plain.evened() : plain).apply(pattern);
    }

    /** Takes the turns and prints a line for each place. */
    public static void main(String[] args) throws SvgProblem, Refusal {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        int turns = Integer.parseInt(args[0]);
        for (String place : List.of("trousers thigh", "bodice bust", "skirt hip")) {
            EvenMates bench = new EvenMates();
            bench.where = place;
            bench.lay();
            double[][] millis = new double[2][turns];
            for (int turn = 0; turn < turns; turn++) {
                for (int even = 0; even < 2; even++) {
                    bench.even = even == 1;
                    bench.turn = turn;
                    long begun = threads.getCurrentThreadCpuTime();
                    Object done = bench.change();
                    millis[even][turn] = (threads.getCurrentThreadCpuTime() - begun) / 1e6;
                    if (done == null) {
                        throw new IllegalStateException("Nothing was made");
                    }
                }
            }
            double plain = median(millis[0]);
            double evened = median(millis[1]);
            System.out.printf(
                    Locale.ROOT, "%-15s plain %.2f ms, even %.2f ms, x %.1f%n", place, plain, evened, evened / plain);
        }
    }

    private static double median(double[] all) {
        double[] warm = Arrays.copyOfRange(all, all.length / 2, all.length);
        Arrays.sort(warm);
        return warm[warm.length / 2];
    }
}
