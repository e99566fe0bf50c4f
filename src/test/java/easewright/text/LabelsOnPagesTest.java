package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a page for readers calls a button or a page of the window, set in italics, is called so there. */
class LabelsOnPagesTest {
    private static final Pattern ITALICS = Pattern.compile("(?<![*\\w])\\*([A-Z][^*\\n]+)\\*(?!\\*)");

    /** What stands around the name itself: a sign before it, a count, that a window follows. */
    private static final Pattern AROUND = Pattern.compile("^\u2713 | \\(\\{count}\\)$| \u2026$");

    @ParameterizedTest
    @CsvSource({"README.md, 15", "docs/first-fit.md, 12", "docs/ease-tables.md, 2"})
    void whatAPageNamesIsInTheWindow(Path page, int atLeast) throws IOException {
        Set<String> labels = Words.english(LengthUnit.CM).bundle().keySet().stream()
                .filter(key -> key.startsWith("editor.") || key.startsWith("way."))
                .map(key -> Words.english(LengthUnit.CM).bundle().getString(key))
                .map(line -> AROUND.matcher(line).replaceAll(""))
                .collect(Collectors.toSet());
        Set<String> named = new TreeSet<>();
        Matcher italics = ITALICS.matcher(Files.readString(page));
        while (italics.find()) {
            named.add(italics.group(1));
        }
        assertThat(named).hasSizeGreaterThanOrEqualTo(atLeast);
        // To the letter; at the beginning of a sentence a small one is written great.
        assertThat(named)
                .allSatisfy(name -> assertThat(labels)
                        .containsAnyOf(name, name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1)));
    }
}
