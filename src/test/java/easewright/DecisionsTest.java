package easewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    private static final Pattern OTHER = Pattern.compile("\\[(\\d+)]\\(([^)]*)\\)");

    /** What may stand between the heading and the text: which other decisions this one touches, and they say so too. */
    private static final Map<String, String> ANSWERS = Map.of("Replaces", "Replaced", "Adds to", "Added to");

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

    /** The first lines below the heading, as far as they speak of other decisions. */
    private static String relations(Path page) throws IOException {
        String first = lines(page).get(2);
        return first.matches("(Replace|Add)(s|d|ed) .*") ? first : "";
    }

    @Test
    void theListHasEveryPageOnceInOrderByItsHeading() throws IOException {
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
        assertThat(listed).containsExactlyElementsOf(written).hasSizeGreaterThan(40);
    }

    /** Whoever reads a page that another one has replaced learns it there. */
    @Test
    void whatReplacesOrAddsIsSaidOnBothPages() throws IOException {
        Map<Integer, Path> pages = pages();
        int related = 0;
        for (Map.Entry<Integer, Path> each : pages.entrySet()) {
            String said = relations(each.getValue());
            for (Map.Entry<String, String> answer : ANSWERS.entrySet()) {
                if (said.contains(answer.getKey())) {
                    Matcher other = OTHER.matcher(said);
                    while (other.find()) {
                        Path page = pages.get(Integer.valueOf(other.group(1)));
                        assertThat(page.getFileName()).hasToString(other.group(2));
                        assertThat(relations(page))
                                .as("%s, of which %d says \"%s\"", page.getFileName(), each.getKey(), said)
                                .contains(answer.getValue())
                                .contains("[" + each.getKey() + "]");
                        related++;
                    }
                }
            }
        }
        assertThat(related).isGreaterThan(5);
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
