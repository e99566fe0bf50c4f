import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Builds the program as one folder that runs by itself, with a Java of its own, and if asked an installer of it. Run by
 * {@code mvn -Pimage package} after the jar has been made:
 *
 * <pre>java -cp CLASSES BuildImage TARGET_FOLDER VERSION [deb|rpm|msi|exe|dmg|pkg]</pre>
 */
public final class BuildImage {
    private static final String NAME = "Easewright";
    private static final List<String> NATIVE = List.of(".so", ".dll", ".dylib");

    /** Parts that libraries use where they are there and do without otherwise. */
    private static final List<String> DISPENSABLE = List.of("jdk.jfr", "java.sql");

    /** What lies in needed parts of Java for another toolkit, sound, style sheets of XML and key stores. */
    private static final List<String> LEFT_OUT = List.of(
            "java.desktop/javax/swing",
            "java.desktop/sun/swing",
            "java.desktop/com/sun/java/swing",
            "java.desktop/javax/sound",
            "java.desktop/com/sun/media/sound",
            "java.xml/com/sun/org/apache/xalan",
            "java.xml/com/sun/org/apache/bcel",
            "java.xml/com/sun/org/apache/xpath",
            "java.xml/com/sun/org/apache/xml/internal/dtm",
            "java.base/sun/security/tools");

    /** Tables for reading foreign PDF files in Chinese, Japanese and Korean, charts, and a look that is not used. */
    private static final Pattern UNUSED = Pattern.compile("org/apache/fontbox/cmap/(?!.*Identity)[^/.]+"
            + "|javafx/scene/chart/.+|com/sun/javafx/scene/control/skin/caspian/.+");

    private final Path target;
    private final String version;
    private final String system;

    private BuildImage(Path target, String version) {
        this.target = target;
        this.version = version;
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        this.system = os.contains("win") ? "windows" : os.contains("mac") ? "mac" : "linux";
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        BuildImage build = new BuildImage(Path.of(arguments[0]), arguments[1]);
        Path image = build.image();
        build.stripSymbols(image);
        build.archiveClasses(image);
        System.out.printf(Locale.ROOT, "%s  %.1f MB%n", image, size(image) / 1e6);
        if (arguments.length > 2 && !arguments[2].isBlank()) {
            build.installer(image, arguments[2]);
        }
    }

    private Path image() throws IOException {
        Path input = fresh(target.resolve("image-input"));
        Path out = fresh(target.resolve("image"));
        Path icon = Icon.write(Files.createDirectories(target.resolve("image-icon")), system);
        List<String> jars = new ArrayList<>();
        try (Stream<Path> libraries = Files.list(target.resolve("lib"))) {
            for (Path jar : libraries.sorted().toList()) {
                jars.add(unpackNative(jar, input).toString());
            }
        }
        Path main = target.resolve("easewright.jar");
        unpackNative(main, input);
        run(
                "jpackage",
                "--type", "app-image",
                "--name", NAME,
                "--app-version", version,
                "--input", input.toString(),
                "--main-jar", "easewright.jar",
                "--main-class", "easewright.Main",
                "--icon", icon.toString(),
                "--dest", out.toString(),
                "--add-modules", modules(main, jars),
                "--jlink-options", jlinkOptions());
        return out.resolve(system.equals("mac") ? NAME + ".app" : NAME);
    }

    private String jlinkOptions() throws IOException {
        String options = "--strip-java-debug-attributes --strip-native-commands --no-header-files --no-man-pages"
                + " --compress=2 --exclude-resources=@" + leftOut();
        return system.equals("linux") ? options + " --strip-native-debug-symbols=exclude-debuginfo-files" : options;
    }

    /** A file that lists what is left out; of each package one file stays, since Java wants to find the package. */
    private Path leftOut() throws IOException {
        Path modules = FileSystems.getFileSystem(URI.create("jrt:/")).getPath("/modules");
        List<String> lines = new ArrayList<>();
        for (String part : LEFT_OUT) {
            Set<Path> seen = new HashSet<>();
            try (Stream<Path> all = Files.walk(modules.resolve(part))) {
                for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                    if (!seen.add(file.getParent())) {
                        lines.add("/" + modules.relativize(file));
                    }
                }
            }
        }
        return Files.write(target.resolve("image-icon").resolve("left-out.txt"), lines);
    }

    /**
     * Copies a library, leaving out what holds nothing; parts in machine code are laid beside it, where the toolkit
     * looks before it would unpack them into the user's home.
     */
    private static Path unpackNative(Path jar, Path folder) throws IOException {
        Path copy = folder.resolve(jar.getFileName());
        try (ZipFile in = new ZipFile(jar.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(copy))) {
            out.setLevel(9);
            for (ZipEntry entry : in.stream().toList()) {
                try (InputStream content = in.getInputStream(entry)) {
                    if (UNUSED.matcher(entry.getName()).matches()) {
                        continue;
                    }
                    if (NATIVE.stream().anyMatch(entry.getName()::endsWith) && !entry.getName().contains("/")) {
                        Files.copy(content, folder.resolve(entry.getName()));
                    } else {
                        out.putNextEntry(new ZipEntry(entry.getName()));
                        content.transferTo(out);
                    }
                }
            }
        }
        return copy;
    }

    /** The parts of Java that the program and its libraries use. */
    private static String modules(Path main, List<String> jars) {
        StringWriter out = new StringWriter();
        ToolProvider jdeps = ToolProvider.findFirst("jdeps").orElseThrow();
        int code = jdeps.run(
                new PrintWriter(out, true),
                new PrintWriter(out, true),
                "--print-module-deps", "--ignore-missing-deps", "--recursive",
                "--multi-release", "17",
                "--class-path", String.join(java.io.File.pathSeparator, jars),
                main.toString());
        List<String> lines = out.toString().strip().lines().toList();
        if (code != 0 || lines.isEmpty()) {
            throw new IllegalStateException("jdeps: " + out);
        }
        List<String> needed = new ArrayList<>(List.of(lines.get(lines.size() - 1).split(",")));
        needed.removeAll(DISPENSABLE);
        return String.join(",", needed);
    }

    /** Takes the names of inner functions out of Java's machine code where the system has the tool for it. */
    private void stripSymbols(Path image) throws IOException, InterruptedException {
        Path machine = image.resolve("lib/runtime/lib/server/libjvm.so");
        if (system.equals("linux") && Files.exists(machine)) {
            try {
                new ProcessBuilder("strip", "--strip-unneeded", machine.toString()).inheritIO().start().waitFor();
            } catch (IOException noSuchTool) {
                System.out.println("strip is not installed: the image is 4 MB larger");
            }
        }
    }

    /**
     * Lets the program run once and keeps the classes it loaded in an archive, from which later runs take them ready
     * made: first the archive of Java's own classes, which a Java made by jlink lacks, then that of everything else.
     */
    private void archiveClasses(Path image) throws IOException, InterruptedException {
        Path launcher = image.resolve(
                switch (system) {
                    case "windows" -> NAME + ".exe";
                    case "mac" -> "Contents/MacOS/" + NAME;
                    default -> "bin/" + NAME;
                });
        Path app = image.resolve(
                switch (system) {
                    case "windows" -> "app";
                    case "mac" -> "Contents/app";
                    default -> "lib/app";
                });
        Path archive = app.resolve("easewright.jsa").toAbsolutePath();
        Path sample = target.toAbsolutePath().getParent().resolve("sample-pieces").resolve("skirt.svg");
        start(launcher, "-Xshare:dump", 120);
        // With a display the window opens, and is asked to close after a while; else a command has to do.
        start(launcher, "-XX:ArchiveClassesAtExit=" + archive, 15, sample.toString());
        if (!Files.exists(archive)) {
            start(launcher, "-XX:ArchiveClassesAtExit=" + archive, 60, "measure", sample.toString());
        }
        Path settings = app.resolve(NAME + ".cfg");
        Files.writeString(
                settings,
                Files.readString(settings).stripTrailing()
                        + "\njava-options=-XX:SharedArchiveFile=$APPDIR/easewright.jsa"
                        + "\njava-options=-Xlog:cds=off\njava-options=-Xlog:cds+dynamic=off\n");
    }

    /** Starts the program with options for its Java; it is asked to end after so many seconds. */
    private static void start(Path launcher, String javaOptions, long seconds, String... arguments)
            throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(launcher.toAbsolutePath().toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_TOOL_OPTIONS", javaOptions);
        Process process = builder.start();
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            process.destroy();
            process.waitFor(60, TimeUnit.SECONDS);
        }
    }

    /** Packs the image for the system's own way of installing, with the drawings it opens. */
    private void installer(Path image, String type) throws IOException {
        Path icon = Icon.write(target.resolve("image-icon"), system);
        Path drawings = Files.writeString(
                target.resolve("image-icon").resolve("drawings.properties"),
                "extension=svg\nmime-type=image/svg+xml\ndescription=Pattern pieces as SVG\n");
        List<String> line = new ArrayList<>(List.of(
                "--type", type,
                "--name", NAME,
                "--app-version", version,
                "--app-image", image.toString(),
                "--file-associations", drawings.toString(),
                "--dest", fresh(target.resolve("installer")).toString()));
        if (system.equals("linux")) {
            line.addAll(List.of("--linux-shortcut", "--linux-menu-group", "Graphics", "--icon", icon.toString()));
        } else if (system.equals("windows")) {
            line.addAll(List.of("--win-menu", "--win-shortcut", "--win-per-user-install"));
        }
        run("jpackage", line.toArray(String[]::new));
    }

    private static void run(String tool, String... arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        int code = ToolProvider.findFirst(tool).orElseThrow().run(out, System.err, arguments);
        if (code != 0) {
            throw new IllegalStateException(tool + " failed");
        }
    }

    private static Path fresh(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        return Files.createDirectories(folder);
    }

    private static long size(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            long sum = 0;
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                sum += Files.size(path);
            }
            return sum;
        }
    }
}
