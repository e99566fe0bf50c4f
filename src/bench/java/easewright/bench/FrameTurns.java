package easewright.bench;

import com.sun.management.ThreadMXBean;
import easewright.editor.model.Reading;
import easewright.editor.model.Trial;
import easewright.editor.model.Wanted;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The same as {@link DragFrame}, by the processor time of its thread and what it allocates, for a machine that others
 * use: {@code java … easewright.bench.FrameTurns SEGMENTS STITCHING FRAMES} on the skirt of twelve gores, or
 * {@code nest PIECES FRAMES [SIZES]} in one or more sizes of a nest, {@code stack PIECES FRAMES} of one whose sizes lie over each other.
 * As many frames go before to warm up.
 */
public final class FrameTurns {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private FrameTurns() {}

    /** Pulls, and prints one line. */
    public static void main(String[] args) throws SvgProblem {
        Pattern pattern =
                switch (args[0]) {
                    case "nest" -> SvgFile.read(Sheets.nest(Integer.parseInt(args[1])), "nest.svg")
                            .pattern();
                    case "stack" -> SvgFile.read(Sheets.nest(Integer.parseInt(args[1]), 8), "nest.svg")
                            .pattern();
                    default -> Gores.skirt(12, Integer.parseInt(args[0]), LineKind.valueOf(args[1]));
                };
        int frames = Integer.parseInt(args[2]);
        Reading reading = Reading.of(pattern);
        int sizes = args.length > 3 ? Integer.parseInt(args[3]) : 1;
        Wanted wanted = Wanted.at("hip", LevelKind.HIP)
                .withAlsoIn(PatternPart.sizes(pattern).stream().limit(sizes).collect(Collectors.toSet()));
        Optional<Trial> last = Optional.empty();
        double[] spent = new double[frames];
        double[] clock = new double[frames];
        long allocated = 0;
        for (int frame = -frames; frame < frames; frame++) {
            if (frame == 0) {
                allocated = THREADS.getCurrentThreadAllocatedBytes();
            }
            long began = System.nanoTime();
            long begun = THREADS.getCurrentThreadCpuTime();
            last = Trial.of(pattern, reading, wanted.withAmount(1 + Math.floorMod(frame, 60)), last);
            if (!(last.orElseThrow() instanceof Trial.Shown)) {
                throw new IllegalStateException("The pull was refused: " + last);
            }
            if (frame >= 0) {
                spent[frame] = (THREADS.getCurrentThreadCpuTime() - begun) / 1e6;
                clock[frame] = (System.nanoTime() - began) / 1e6;
            }
        }
        allocated = THREADS.getCurrentThreadAllocatedBytes() - allocated;
        System.out.printf(
                Locale.ROOT,
                "%s %s: processor time median %.2f, 99th percentile %.2f ms; clock %.2f and %.2f ms; %.2f MB each%n",
                args[0],
                args[1],
                at(spent, 50),
                at(spent, 99),
                at(clock, 50),
                at(clock, 99),
                allocated / 1e6 / frames);
    }

    private static double at(double[] all, int percentile) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length * percentile / 100];
    }
}
