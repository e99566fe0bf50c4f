package easewright.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which lines of the bundle are shown where, by the texts in the sources that could be a code or the start of a key. */
final class SeenLines {
    private static final Path SOURCES = Path.of("src/main/java/easewright");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-zA-Z0-9.-]*)\"");

    private SeenLines() {}

    /** Read once. */
    private static final class Elsewhere {
        static final Set<String> LITERALS = literals(false);
    }

    /** Whether the window, or paper, shows a line. */
    static boolean inTheWindow(String key) {
        return isSeen(key, Elsewhere.LITERALS);
    }

    /** Whether anything but the command line shows a line: the start of its key, or its code, is in the sources. */
    static boolean isSeen(String key, Set<String> elsewhere) {
        if (key.startsWith("problem.")) {
            return elsewhere.contains(key.substring("problem.".length()));
        }
        return elsewhere.stream().anyMatch(start -> start.indexOf('.') > 0 && key.startsWith(start));
    }

    /** All texts that could be a code or the start of a key, in the command line or in all other rooms. */
    static Set<String> literals(boolean ofCommands) {
        Set<String> literals = new TreeSet<>();
        for (Path source : sources()) {
            if (isCommand(source) == ofCommands) {
                LITERAL.matcher(text(source)).results().forEach(m -> literals.add(m.group(1)));
            }
        }
        return literals;
    }

    static boolean isCommand(Path source) {
        return source.startsWith(SOURCES.resolve("command")) || source.equals(SOURCES.resolve("Main.java"));
    }

    static List<Path> sources() {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path source) {
        try {
            return Files.readString(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
