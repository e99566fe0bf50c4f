package easewright.svg;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * Fuzzes the readers for as long as is asked, from wherever it left off. Every seed gives the same inputs for ever;
 * each new kind of failure is kept as a file, to be moved to {@code src/test/resources/fuzz} when it is put right.
 *
 * <p>{@code java … easewright.svg.ReaderFuzz FOLDER SECONDS}
 */
public final class ReaderFuzz {
    private static final long SLOW_MILLIS = 2000;

    private final Path folder;
    private final PrintStream said;
    private final Set<String> kinds = new HashSet<>();
    private long cases;
    private long slowest;

    private ReaderFuzz(Path folder, PrintStream said) {
        this.folder = folder;
        this.said = said;
    }

    public static void main(String[] args) throws IOException {
        new ReaderFuzz(Path.of(args[0]), System.out).run(Long.parseLong(args[1]));
    }

    private void run(long seconds) throws IOException {
        Files.createDirectories(folder);
        Path state = folder.resolve("next-seed");
        long seed = Files.exists(state) ? Long.parseLong(Files.readString(state).strip()) : 0;
        long first = seed;
        long end = System.currentTimeMillis() + seconds * 1000;
        while (System.currentTimeMillis() < end) {
            for (FuzzCases.Reader reader : FuzzCases.Reader.values()) {
                one(reader, seed);
            }
            seed++;
            if (seed % 1000 == 0) {
                Files.writeString(state, Long.toString(seed));
            }
        }
        Files.writeString(state, Long.toString(seed));
        said.println("seeds " + first + " to " + seed + ", " + cases + " cases, slowest " + slowest + " ms, "
                + kinds.size() + " kinds of failure");
    }

    private void one(FuzzCases.Reader reader, long seed) throws IOException {
        String input = FuzzCases.of(reader, seed);
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        cases++;
        try {
            FuzzChecks.check(reader, input);
            long taken = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) / 1_000_000;
            slowest = Math.max(slowest, taken);
            if (taken > SLOW_MILLIS) {
                keep(reader, seed, input, "slow", "took " + taken + " ms");
            }
        } catch (Exception | AssertionError | StackOverflowError failure) {
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            keep(reader, seed, input, kind(failure), trace.toString());
        }
    }

    /** Failures at the same place are of one kind. */
    private static String kind(Throwable failure) {
        StringBuilder kind = new StringBuilder(failure.getClass().getSimpleName());
        for (StackTraceElement at : failure.getStackTrace()) {
            if (at.getClassName().startsWith("easewright.")) {
                kind.append(' ').append(at.getClassName()).append(':').append(at.getLineNumber());
                break;
            }
        }
        return kind.toString();
    }

    private void keep(FuzzCases.Reader reader, long seed, String input, String kind, String why) throws IOException {
        if (kinds.add(reader + " " + kind)) {
            String name = reader.name().toLowerCase(java.util.Locale.ROOT) + "-" + seed;
            Files.writeString(folder.resolve(name + ".txt"), input, StandardCharsets.UTF_8);
            Files.writeString(folder.resolve(name + ".why"), why, StandardCharsets.UTF_8);
            said.println(name + ": " + kind);
        }
    }
}
