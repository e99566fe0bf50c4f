package easewright.bench;

import easewright.alter.Refusal;
import easewright.pattern.Pattern;
import easewright.svg.DrawingReader;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;

/**
 * The same jobs as {@link OpenAndWrite} in turns, by the processor time of their thread, for a machine that others use:
 * {@code java … easewright.bench.OpenTurns PIECES TURNS}. The first half of the turns warms up.
 */
public final class OpenTurns {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private OpenTurns() {}

    private enum Job {
        /** Batik's document tree of the bytes. */
        BATIK,
        /** Tags, shapes and their geometry, layers, joined lines; no marks. */
        DRAWING,
        /** All of that, and the pattern by its marks. */
        OPEN,
        /** Writing one changed seam of every piece that has the level, proof included. */
        WRITE
    }

    /** Takes the turns and prints a line for each job. */
    public static void main(String[] args) throws SvgProblem, Refusal, IOException {
        byte[] bytes = Sheets.nest(Integer.parseInt(args[0]));
        int turns = Integer.parseInt(args[1]);
        SvgFile file = SvgFile.read(bytes, "nest.svg");
        Pattern changed = Sheets.changed(file.pattern());
        double[][] millis = new double[Job.values().length][turns];
        long made = 0;
        for (int turn = 0; turn < turns; turn++) {
            for (Job job : Job.values()) {
                long begun = THREADS.getCurrentThreadCpuTime();
                made += run(job, bytes, file, changed).hashCode();
                millis[job.ordinal()][turn] = (THREADS.getCurrentThreadCpuTime() - begun) / 1e6;
            }
        }
        double batik = median(millis[0]);
        System.out.println(bytes.length + " bytes, " + file.pattern().pieces().size() + " pieces (" + made % 10 + ")");
        for (Job job : Job.values()) {
            double median = median(millis[job.ordinal()]);
            System.out.printf(Locale.ROOT, "%-8s %8.2f ms  x %.2f%n", job, median, median / batik);
        }
    }

    private static Object run(Job job, byte[] bytes, SvgFile file, Pattern changed) throws SvgProblem, IOException {
        return switch (job) {
            case BATIK ->
                new SAXSVGDocumentFactory(null).createDocument("nest.svg", new ByteArrayInputStream(bytes));
            case DRAWING -> System.identityHashCode(DrawingReader.read(bytes, "nest.svg"));
            case OPEN -> System.identityHashCode(SvgFile.read(bytes, "nest.svg"));
            case WRITE -> file.write(changed).length;
        };
    }

    private static double median(double[] all) {
        double[] warm = Arrays.copyOfRange(all, all.length / 2, all.length);
        Arrays.sort(warm);
        return warm[warm.length / 2];
    }
}
