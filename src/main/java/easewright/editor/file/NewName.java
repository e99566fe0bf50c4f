package easewright.editor.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A name for a new file beside the one that was opened. */
final class NewName {
    private static final Pattern PARTS =
            Pattern.compile("(?<stem>.+?)(?<ending>\\.svgz?)?", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    private NewName() {}

    /**
     * The first name that no file has: the word behind the name of the file, and a number where that is taken.
     *
     * @param word what is said of the new file, such as "fitted"
     */
    static Path beside(Path file, String word) {
        String name = file.getFileName().toString();
        Matcher parts = PARTS.matcher(name);
        boolean known = parts.matches();
        String ending = known && parts.group("ending") != null ? parts.group("ending") : ".svg";
        String stem = known ? parts.group("stem") : name;
        String first = stem.replaceFirst("-" + Pattern.quote(word) + "(-\\d+)?$", "") + "-" + word;
        Path path = file.resolveSibling(first + ending);
        for (int i = 2; Files.exists(path) || path.equals(file); i++) {
            path = file.resolveSibling(first + "-" + i + ending);
        }
        return path;
    }
}
