package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.PlaceText;
import easewright.alter.Refusal;
import easewright.alter.Ways;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pictures of docs/methods.md are what the commands above them do. To draw them anew:
 * {@code mvn test -Dtest=MethodsPageTest -Dpictures=write}.
 */
class MethodsPageTest {
    private static final Path PAGE = Path.of("docs/methods.md");
    private static final String PROGRAM = "java -jar target/easewright.jar ";
    private static final java.util.regex.Pattern STEP = java.util.regex.Pattern.compile(
            "^ +" + java.util.regex.Pattern.quote(PROGRAM)
                    + "(?<command>.+)$|\\]\\((?<picture>pictures/methods/[a-z-]+\\.svg)\\)",
            java.util.regex.Pattern.MULTILINE);
    private static final java.util.regex.Pattern WORD = java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    /** Picture to the words of the command that stands above it. */
    private static Map<String, List<String>> commands() throws IOException {
        Map<String, List<String>> commands = new LinkedHashMap<>();
        List<String> last = List.of();
        Matcher step = STEP.matcher(Files.readString(PAGE));
        while (step.find()) {
            if (step.group("command") != null) {
                last = words(step.group("command"));
            } else {
                commands.put(step.group("picture"), last);
            }
        }
        return commands;
    }

    private static List<String> words(String command) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        return words;
    }

    @Test
    void everyPictureShowsWhatItsCommandDoes() throws Exception {
        Map<String, List<String>> commands = commands();
        assertThat(commands).hasSizeGreaterThan(12);
        for (Map.Entry<String, List<String>> each : commands.entrySet()) {
            String picture = drawn(each.getValue());
            Path file = PAGE.resolveSibling(each.getKey());
            if ("write".equals(System.getProperty("pictures"))) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, picture);
            }
            assertThat(file).content().as(each.getKey()).isEqualTo(picture);
        }
        try (var files = Files.list(PAGE.resolveSibling("pictures/methods"))) {
            assertThat(files.map(f -> "pictures/methods/" + f.getFileName()))
                    .containsExactlyInAnyOrderElementsOf(commands.keySet());
        }
    }

    private String drawn(List<String> words) throws IOException, SvgProblem, Refusal, Unreadable {
        List<String> command = new ArrayList<>(words);
        Path out = folder.resolve("out.svg");
        Files.deleteIfExists(out);
        command.set(command.size() - 1, out.toString());
        Run run = Run.of(command.toArray());
        assertThat(run.code()).as("%s%n%s", words, run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        Pattern before = SvgFile.read(Path.of(command.get(1))).pattern();
        Pattern after = SvgFile.read(out).pattern();
        return new MethodPicture(before, after, slashes(words, before)).svg();
    }

    private static List<Point[]> slashes(List<String> words, Pattern pattern) throws Refusal, Unreadable {
        List<Point[]> slashes = new ArrayList<>();
        for (int i = 1; i < words.size(); i++) {
            if (words.get(i - 1).equals("--slash")) {
                String[] places = words.get(i).split(">");
                slashes.add(new Point[] {place(pattern, places[0]), place(pattern, places[1])});
            }
        }
        return slashes;
    }

    private static Point place(Pattern pattern, String text) throws Refusal, Unreadable {
        return PlaceText.read(pattern, text, length -> Lengths.parse(length, LengthUnit.MM));
    }

    /** Every way has its section; slashes by their gap are told of beside those by the girth. */
    @Test
    void everyWayIsOnThePage() throws IOException {
        String page = Files.readString(PAGE);
        TreeSet<String> missing = new TreeSet<>();
        Ways.all().forEach(way -> {
            if (!page.contains("`" + way.method() + "`")) {
                missing.add(way.method());
            }
        });
        assertThat(missing).isEmpty();
    }
}
