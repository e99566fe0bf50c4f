package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The build leaves rules out of the window's look: only such as the window has no use for. */
class LookTest {
    private static final Path LEFT_OUT = Path.of("src", "look", "left-out.txt");
    private static final Path WINDOW = Path.of("src", "main", "java", "easewright", "editor");
    private static final Pattern TEXT = Pattern.compile("\"([a-z][a-z-]*)\"");
    private static final Pattern ADDED = Pattern.compile("getStyleClass\\(\\)\\s*\\.(add|addAll|setAll)\\(([^;]*)\\);");

    private static final Pattern OF_THE_THEME = Pattern.compile("import atlantafx\\.base\\.controls\\.(\\w+);");

    private static List<String[]> leftOut() throws IOException {
        List<String[]> found = new ArrayList<>();
        for (String line : Files.readAllLines(LEFT_OUT)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                found.add(line.split(" "));
            }
        }
        return found;
    }

    private static List<String> sources() throws IOException {
        try (Stream<Path> all = Files.walk(WINDOW)) {
            List<String> texts = new ArrayList<>();
            for (Path file :
                    all.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
            return texts;
        }
    }

    @Test
    void noControlOfTheWindowIsWithoutItsLook() throws IOException {
        List<String> used = new ArrayList<>();
        for (String source : sources()) {
            for (String[] each : leftOut()) {
                for (int i = 1; i < each.length; i++) {
                    if (source.contains("javafx.scene.control." + each[i] + ";")
                            || source.contains("javafx.scene.web." + each[i] + ";")) {
                        used.add(each[i]);
                    }
                }
            }
        }
        Matcher ofTheTheme = OF_THE_THEME.matcher(String.join("\n", sources()));
        int seen = 0;
        while (ofTheTheme.find()) {
            seen++;
            // The theme's own controls have a style class that is their name.
            String name =
                    ofTheTheme.group(1).replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
            leftOut().stream().filter(each -> name.startsWith(each[0])).forEach(each -> used.add(name));
        }
        assertThat(seen).isPositive();
        assertThat(leftOut()).hasSizeGreaterThan(20);
        assertThat(used).as("controls whose rules the build leaves out").isEmpty();
    }

    @Test
    void noStyleClassOfTheWindowIsLeftOut() throws IOException {
        List<String> used = new ArrayList<>();
        int seen = 0;
        for (String source : sources()) {
            Matcher added = ADDED.matcher(source);
            while (added.find()) {
                Matcher text = TEXT.matcher(added.group(2));
                while (text.find()) {
                    seen++;
                    String name = text.group(1);
                    leftOut().stream()
                            .filter(each -> name.startsWith(each[0]))
                            .findFirst()
                            .ifPresent(each -> used.add(name));
                }
            }
        }
        assertThat(seen).isGreaterThan(50);
        assertThat(used).as("style classes whose rules the build leaves out").isEmpty();
    }

    @Test
    void everyLineIsOfTheTheme() throws IOException {
        String theme;
        try (var in = LookTest.class.getResourceAsStream("/atlantafx/base/theme/primer-light.css")) {
            theme = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
        assertThat(leftOut()).allSatisfy(each -> assertThat(theme).as(each[0]).contains("." + each[0]));
    }
}
