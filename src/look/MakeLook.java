import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.css.Stylesheet;

/**
 * Makes the style sheets of the window ready to be mapped, since reading them as text and matching all of their rules takes a tenth of a start:
 * the program's own, and of AtlantaFX's theme what the window can need. Run by Maven after compiling, with the class
 * path of the program:
 *
 * <pre>java -cp CLASSES MakeLook src/look/left-out.txt target/classes/easewright/editor</pre>
 *
 * Where this was not done, the window takes the whole sheets as text and looks the same.
 */
public final class MakeLook {
    private static final String THEMES = "/atlantafx/base/theme/";

    /** The theme's sheets are plain: no rule stands within another, and no brace or comma in a text of a selector. */
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");

    private final List<Pattern> leftOut;

    private MakeLook(List<Pattern> leftOut) {
        this.leftOut = leftOut;
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[1]);
        List<Pattern> leftOut = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of(arguments[0]))) {
            if (!line.startsWith("#") && !line.isBlank()) {
                leftOut.add(Pattern.compile("\\." + Pattern.quote(line.split(" ")[0])));
            }
        }
        MakeLook look = new MakeLook(leftOut);
        look.make("primer-light.css", folder.resolve("by-day.css"));
        look.make("primer-dark.css", folder.resolve("by-lamp.css"));
        mapped(folder.resolve("editor.css"));
    }

    private void make(String theme, Path sheet) throws IOException {
        String whole;
        try (InputStream in = MakeLook.class.getResourceAsStream(THEMES + theme)) {
            whole = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        StringBuilder wanted = new StringBuilder();
        Matcher rule = RULE.matcher(whole.replaceAll("(?s)/\\*.*?\\*/", ""));
        while (rule.find()) {
            List<String> selectors = new ArrayList<>(List.of(rule.group(1).split(",")));
            selectors.removeIf(this::isLeftOut);
            if (!selectors.isEmpty()) {
                wanted.append(String.join(",", selectors)).append('{').append(rule.group(2)).append("}\n");
            }
        }
        Files.writeString(sheet, wanted);
        mapped(sheet);
    }

    /**
     * Beside the text, which stays: a toolkit that does not know this form, as one of another version may not, takes
     * the text of the same name in its place.
     */
    private static void mapped(Path text) throws IOException {
        String name = text.getFileName().toString().replaceFirst("\\.css$", ".bss");
        Stylesheet.convertToBinary(text.toFile(), text.resolveSibling(name).toFile());
    }

    private boolean isLeftOut(String selector) {
        return leftOut.stream().anyMatch(p -> p.matcher(selector).find());
    }
}
