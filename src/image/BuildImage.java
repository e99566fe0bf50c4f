import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
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
        Path launcher = image.resolve(
                switch (build.system) {
                    case "windows" -> NAME + ".exe";
                    case "mac" -> "Contents/MacOS/" + NAME;
                    default -> "bin/" + NAME;
                });
        archiveClasses(launcher);
        if (build.system.equals("linux")) {
            new Archive(image, build.target).make(replaceLauncher(launcher, image.resolve("lib/app")));
        }
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
            for (Path jar : libraries.filter(BuildImage::isJar).sorted().toList()) {
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

    private static boolean isJar(Path file) {
        return file.getFileName().toString().endsWith(".jar");
    }

    private String jlinkOptions() {
        String options = "--strip-java-debug-attributes --no-header-files --no-man-pages --compress=2";
        return system.equals("linux")
                ? options + " --strip-native-debug-symbols=exclude-debuginfo-files"
                : options + " --strip-native-commands";
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

    /** Makes the archive of Java's own classes, which a Java made by jlink lacks, and which starts take ready made. */
    private static void archiveClasses(Path launcher) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(launcher.toAbsolutePath().toString());
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_TOOL_OPTIONS", "-Xshare:dump");
        if (!builder.start().waitFor(300, TimeUnit.SECONDS)) {
            throw new IllegalStateException("The archive of classes was not finished");
        }
    }

    /**
     * On Linux the launcher that jpackage makes asks the package manager where it is before every start, which takes
     * longer than measuring a pattern; a script takes its place.
     *
     * @return the class path in it
     */
    private static String replaceLauncher(Path launcher, Path app) throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> jars = Files.list(app)) {
            for (Path jar : jars.filter(BuildImage::isJar).sorted().toList()) {
                names.add(jar.getFileName().toString());
            }
        }
        // The program and the toolkit first, which most classes come from.
        names.sort(Comparator.comparing(
                name -> name.equals("easewright.jar") ? 0 : name.startsWith("javafx") ? 1 : 2));
        String path = Archive.FOLDER + String.join(":" + Archive.FOLDER, names);
        String script = Files.readString(Path.of("src", "image", "launch.sh"));
        Files.delete(launcher);
        Files.writeString(
                launcher, script.replace("@CLASSPATH@", path).replace("@OPTIONS@", String.join(" ", Archive.OPTIONS)));
        Files.setPosixFilePermissions(launcher, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.delete(launcher.resolveSibling("../lib/libapplauncher.so"));
        return path;
    }

    /** Packs the image for the system's own way of installing, with the drawings it opens. */
    private void installer(Path image, String type) throws IOException {
        Path icon = Icon.write(target.resolve("image-icon"), system);
        Path drawings = Files.writeString(
                target.resolve("image-icon").resolve("drawings.properties"),
                "extension=svg\nmime-type=image/svg+xml\ndescription=Pattern pieces as SVG\n");
        // The system's own entry would start the program without the drawing that was double-clicked.
        Path own = Files.createDirectories(target.resolve("image-icon").resolve("own"));
        Files.writeString(
                own.resolve(NAME + ".desktop"),
                """
                [Desktop Entry]
                Type=Application
                Name=APPLICATION_NAME
                Comment=APPLICATION_DESCRIPTION
                Exec=APPLICATION_LAUNCHER %f
                Icon=APPLICATION_ICON
                Terminal=false
                Categories=Graphics;VectorGraphics;
                DESKTOP_MIMES
                """);
        List<String> line = new ArrayList<>(List.of(
                "--type", type,
                "--resource-dir", own.toString(),
                "--description", "Measures and changes the ease of pattern pieces",
                "--license-file", target.toAbsolutePath().resolveSibling("LICENSE").toString(),
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
