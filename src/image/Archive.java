import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * The archive of classes that a start of the window takes ready made: what Java has loaded after the window was opened
 * with a sample in it. It is laid packed into the image, which would be too large with it as it is. Made where there is
 * a display, or a program that stands in for one; else the first window that a user closes makes it.
 */
final class Archive {
    /** The folder of the jars, as the launcher opens it: a name that stays when the image is moved. */
    static final String FOLDER = "/proc/self/fd/9/";

    /**
     * What Java is started with. Machine code of the best kind is made later than usual: a start calls much a few thousand
     * times and then never again, and what is called in every picture reaches these numbers in a moment.
     */
    static final List<String> OPTIONS = List.of(
            "-Xshare:auto",
            "-Xlog:cds=off",
            "-Xlog:cds+dynamic=off",
            "-XX:Tier4InvocationThreshold=20000",
            "-XX:Tier4MinInvocationThreshold=5000",
            "-XX:Tier4CompileThreshold=40000",
            "-XX:Tier4BackEdgeThreshold=120000");

    private static final Duration LONGEST = Duration.ofMinutes(3);
    private static final Duration LOOK = Duration.ofSeconds(3);

    /** A window that has settled takes less than this from one look to the next. */
    private static final Duration IDLE = Duration.ofMillis(60);

    private final Path image;
    private final Path target;

    Archive(Path image, Path target) {
        this.image = image.toAbsolutePath();
        this.target = target.toAbsolutePath();
    }

    /**
     * Lays the archive into the image.
     *
     * @param classPath as the launcher has it
     */
    void make(String classPath) throws IOException, InterruptedException {
        Path app = image.resolve("lib/app");
        FileTime made = FileTime.from(Instant.ofEpochSecond(Instant.now().getEpochSecond() / 2 * 2));
        try (Stream<Path> files = Files.list(app)) {
            // A time that also the coarse clocks of packed files can tell.
            for (Path file : files.toList()) {
                Files.setLastModifiedTime(file, made);
            }
        }
        Path archive = target.resolve("image-archive.jsa");
        Files.deleteIfExists(archive);
        List<String> line = new ArrayList<>(display());
        line.addAll(List.of("sh", "-c", "exec 9<\"$0\"; exec \"$@\"", app.toString()));
        line.add(image.resolve("lib/runtime/bin/java").toString());
        line.addAll(OPTIONS);
        line.addAll(List.of("-XX:ArchiveClassesAtExit=" + archive, "-cp", classPath, "easewright.Main"));
        line.add(Path.of("sample-pieces", "skirt.svg").toString());
        ProcessBuilder window = new ProcessBuilder(line);
        window.redirectErrorStream(true).redirectOutput(target.resolve("image-archive.log").toFile());
        window.environment().put("XDG_STATE_HOME", target.resolve("image-state").toString());
        openAndClose(window.start());
        if (Files.exists(archive)) {
            pack(archive, image.resolve("lib/classes-" + made.to(TimeUnit.SECONDS) + ".jsa.gz"));
        } else {
            System.out.println("no window could be opened: the archive of classes is made on first use");
        }
    }

    /** What gives a program a display where there is none. */
    private static List<String> display() {
        boolean there = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        boolean stand = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "xvfb-run")));
        return there || !stand ? List.of() : List.of("xvfb-run", "-a");
    }

    /** Waits until the window has nothing left to do, and has Java end in good order, when it writes the archive. */
    private static void openAndClose(Process window) throws InterruptedException {
        Instant end = Instant.now().plus(LONGEST);
        Duration before = Duration.ZERO;
        while (Instant.now().isBefore(end) && !window.waitFor(LOOK.toSeconds(), TimeUnit.SECONDS)) {
            Duration now = spent(window);
            if (!before.isZero() && now.minus(before).compareTo(IDLE) < 0) {
                break;
            }
            before = now;
        }
        java(window).forEach(ProcessHandle::destroy);
        if (!window.waitFor(LONGEST.toSeconds(), TimeUnit.SECONDS)) {
            java(window).forEach(ProcessHandle::destroyForcibly);
        }
    }

    private static Duration spent(Process window) {
        return java(window)
                .map(p -> p.info().totalCpuDuration().orElse(Duration.ZERO))
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** The process itself, or what runs under the stand-in for a display. */
    private static Stream<ProcessHandle> java(Process window) {
        return Stream.concat(Stream.of(window.toHandle()), window.descendants())
                .filter(p -> p.info().command().orElse("").endsWith("/bin/java"));
    }

    private static void pack(Path archive, Path packed) throws IOException {
        try (InputStream in = Files.newInputStream(archive);
                OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed), 1 << 16) {
                    {
                        def.setLevel(Deflater.BEST_COMPRESSION);
                    }
                }) {
            in.transferTo(out);
        }
        Files.delete(archive);
    }
}
