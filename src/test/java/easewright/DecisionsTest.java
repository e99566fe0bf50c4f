package easewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages in {@code docs/decisions} and the list of them. */
class DecisionsTest {
    private static final Path FOLDER = Path.of("docs/decisions");
    private static final Pattern HEADING = Pattern.compile("# (\\d+)\\. .+");
    private static final Pattern ENTRY = Pattern.compile("- \\[((\\d+)\\. .+?)]\\((\\d{4}-[a-z0-9-]+\\.md)\\)(;.*)?");
    /** What is done to another decision, or by it; and which. */
    private static final Pattern SAID =
            Pattern.compile("(?i)\\b(replace[sd]|add(?:s|ed) to|change[sd])\\b|\\[(\\d+)]\\(([^)]*)\\)");

    private static final Map<String, String> ANSWERS =
            Map.of("replaces", "replaced", "adds to", "added to", "changes", "changed");

    private static Map<Integer, Path> pages() throws IOException {
        Map<Integer, Path> pages = new TreeMap<>();
        try (Stream<Path> all = Files.list(FOLDER)) {
            for (Path page : all.toList()) {
                String name = page.getFileName().toString();
                if (!name.equals("README.md")) {
                    assertThat(pages.put(Integer.valueOf(name.substring(0, 4)), page))
                            .as(name)
                            .isNull();
                }
            }
        }
        return pages;
    }

    private static List<String> lines(Path page) throws IOException {
        return Files.readAllLines(page);
    }

    /** What stands between the heading and the text, in small letters: which other decisions this one touches. */
    private static String relations(Path page) throws IOException {
        List<String> below = lines(page).subList(2, lines(page).size());
        String first = String.join(" ", below.subList(0, below.indexOf(""))).toLowerCase(Locale.ROOT);
        return first.matches("(replace|add|change)(s|d|ed) .*") ? first : "";
    }

    @Test
    void theListHasEveryPageOnceByItsHeading() throws IOException {
        List<String> listed = new ArrayList<>();
        for (String line : lines(FOLDER.resolve("README.md"))) {
            Matcher entry = ENTRY.matcher(line);
            if (entry.matches()) {
                listed.add(entry.group(3) + " # " + entry.group(1));
            }
        }
        List<String> written = new ArrayList<>();
        for (Map.Entry<Integer, Path> each : pages().entrySet()) {
            String heading = lines(each.getValue()).get(0);
            Matcher number = HEADING.matcher(heading);
            assertThat(number.matches()).as(heading).isTrue();
            assertThat(Integer.valueOf(number.group(1))).isEqualTo(each.getKey());
            written.add(each.getValue().getFileName() + " " + heading);
        }
        assertThat(listed).containsExactlyInAnyOrderElementsOf(written).hasSizeGreaterThan(40);
    }

    /** Whoever reads a page that another one has replaced learns it there. */
    @Test
    void whatReplacesAddsOrChangesIsSaidOnBothPages() throws IOException {
        Map<Integer, Path> pages = pages();
        int related = 0;
        for (Map.Entry<Integer, Path> each : pages.entrySet()) {
            Matcher said = SAID.matcher(relations(each.getValue()));
            String verb = "";
            while (said.find()) {
                if (said.group(1) != null) {
                    verb = said.group(1);
                } else if (ANSWERS.containsKey(verb)) {
                    Path page = pages.get(Integer.valueOf(said.group(2)));
                    assertThat(page.getFileName()).hasToString(said.group(3));
                    assertThat(relations(page))
                            .as("%s, which %d %s", page.getFileName(), each.getKey(), verb)
                            .contains(ANSWERS.get(verb))
                            .contains("[" + each.getKey() + "]");
                    related++;
                }
            }
        }
        assertThat(related).isGreaterThan(9);
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        Pattern link = Pattern.compile("]\\((?!https?:|#)([^)#]+)[^)]*\\)");
        for (Path page : pages().values()) {
            Matcher to = link.matcher(Files.readString(page));
            while (to.find()) {
                assertThat(FOLDER.resolve(to.group(1))).as(page.toString()).exists();
            }
        }
    }
}
