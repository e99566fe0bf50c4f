package easewright.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Opens each hostile input in a program of its own with 1 GB of memory, marks it and reads it again, and prints one
 * line for each: what became of it, the time from start to end of the work, the processor time and the most memory
 * of the whole program.
 *
 * <p>{@code java … easewright.svg.HostileRun FOLDER} for all files of a folder; the made ones are written there first
 * with {@code HostileDrawings FOLDER}.
 */
public final class HostileRun {
    private HostileRun() {}

    public static void main(String[] args) throws Exception {
        Path given = Path.of(args[0]);
        if (Files.isRegularFile(given)) {
            System.out.println(one(given));
            return;
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(given)) {
            files = all.filter(f -> f.toString().matches(".*\\.svgz?")).sorted().toList();
        }
        for (Path file : files) {
            List<String> command = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx640m",
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    HostileRun.class.getName(),
                    file.toString()));
            Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(run.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            int exit = run.waitFor();
            String[] lines = said.strip().split("\n");
            System.out.println(
                    file.getFileName() + "\t" + (exit == 0 ? lines[lines.length - 1] : "FAILED " + lines[0]));
        }
    }

    private static String one(Path file) throws IOException {
        long begun = System.nanoTime();
        String outcome;
        try {
            SvgFile svg = SvgFile.read(file);
            outcome = "opened, " + svg.pattern().pieces().size() + " pieces, "
                    + svg.drawing().all().size() + " shapes";
            try {
                svg.write(svg.pattern().withWish("hip", 10));
            } catch (SvgProblem refused) {
                outcome += ", not written: " + refused.code();
            }
        } catch (SvgProblem refused) {
            outcome = "refused: " + refused.code();
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        double processor =
                ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1000.0;
        return String.format(Locale.ROOT, "%s\t%.2f s\t%.2f s\t%d MB", outcome, seconds, processor, peakMegabytes());
    }

    /** The most that the system has had in memory for this program. */
    private static long peakMegabytes() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("VmHWM:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                .findFirst()
                .orElse(-1);
    }
}
