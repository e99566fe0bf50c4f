package easewright.command;

import easewright.draft.Samples;
import easewright.pattern.Problem;
import easewright.svg.SvgProblem;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The whole job once, without a window: the ease sheet of the sample skirt, 24 mm more at the hip, the adjusted
 * drawing and the report, by the very commands a user has.
 */
public final class SampleJob {
    private static final String SAMPLE = "skirt";

    private SampleJob() {}

    /**
     * Runs it.
     *
     * @param home   folder with {@code sample-pieces}; where it is missing, the sample is drafted anew
     * @param folder where the results go; made if missing
     * @return the exit code of the worst step
     */
    public static int run(PrintWriter out, PrintWriter err, Path home, Path folder) {
        Path sample;
        try {
            Target.folder(folder);
            sample = sample(home, folder);
        } catch (Problem e) {
            err.println(Commands.english().problem(e.code(), e.values()));
            err.flush();
            return Commands.REFUSED;
        }
        Path changed = folder.resolve(SAMPLE + "-hip-24mm-more.svg");
        Path report = folder.resolve(SAMPLE + "-hip-24mm-more.html");
        List<String[]> steps = List.of(
                new String[] {"ease", sample.toString()},
                new String[] {
                    "change", sample.toString(), "--at", "hip", "--by", "+24mm", "-o", changed.toString(), "--overwrite"
                },
                new String[] {"report", changed.toString(), "-o", report.toString(), "--overwrite"});
        int worst = Commands.DONE;
        for (String[] step : steps) {
            out.println();
            out.println("easewright " + String.join(" ", step));
            int code = Commands.run(out, err, step);
            worst = Math.max(worst, code);
            if (code > Commands.FAULTS) {
                return worst;
            }
        }
        return worst;
    }

    private static Path sample(Path home, Path folder) throws Trouble, SvgProblem {
        Path kept = home.resolve("sample-pieces").resolve(SAMPLE + ".svg");
        if (Files.isRegularFile(kept)) {
            return kept;
        }
        Path drawn = folder.resolve(SAMPLE + ".svg");
        Target.save(drawn, Samples.files().get(SAMPLE + ".svg").getBytes(StandardCharsets.UTF_8));
        return drawn;
    }
}
