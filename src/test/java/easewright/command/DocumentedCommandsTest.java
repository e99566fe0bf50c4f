package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command that the README and the walk show can be run as it stands, and what is shown of its output is true. */
class DocumentedCommandsTest {
    private static final String PROGRAM = "java -jar target/easewright.jar";
    private static final Pattern COMMAND = Pattern.compile(" {4}" + Pattern.quote(PROGRAM) + " (.+)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    /** The words of a line as a shell parts them; what the page writes, or has written before, lies in the test's folder. */
    private List<Object> words(String line) {
        List<Object> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            String text = word.group(1) != null ? word.group(1) : word.group(2);
            String name = text.substring(text.lastIndexOf('/') + 1);
            boolean written = text.startsWith("target/")
                    || words.contains("-o") && words.get(words.size() - 1).equals("-o")
                    || Files.exists(folder.resolve(name)) && !text.contains("/");
            words.add(written ? folder.resolve(name) : text);
        }
        return words;
    }

    private void run(String page) throws IOException {
        List<String> lines = Files.readAllLines(Path.of(page));
        int commands = 0;
        String out = "";
        for (int i = 0; i < lines.size(); i++) {
            Matcher command = COMMAND.matcher(lines.get(i));
            if (command.matches()) {
                StringBuilder line = new StringBuilder(command.group(1));
                while (line.charAt(line.length() - 1) == '\\') {
                    i++;
                    line.setLength(line.length() - 1);
                    line.append(lines.get(i).strip());
                }
                Run run = Run.of(words(line.toString()).toArray());
                assertThat(run.code()).as(page + ": " + line + "\n" + run.err()).isLessThanOrEqualTo(Commands.FAULTS);
                out = run.out();
                commands++;
            } else if (lines.get(i).startsWith("      ") && !out.isEmpty()) {
                assertThat(out.lines().map(String::stripTrailing))
                        .as(page + ", line " + (i + 1))
                        .contains(lines.get(i).substring(4));
            }
        }
        assertThat(commands).as(page).isGreaterThan(0);
    }

    @Test
    void theReadmeTellsTheTruth() throws IOException {
        run("README.md");
    }

    @Test
    void theWalkTellsTheTruth() throws IOException {
        Path marked = Path.of("docs/first-fit/skirt-wider.svg");
        Files.copy(marked, folder.resolve("marked-skirt.svg"));
        run("docs/first-fit.md");
    }
}
