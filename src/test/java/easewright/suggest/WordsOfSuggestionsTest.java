package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every suggestion and every reason can be said. */
class WordsOfSuggestionsTest {
    private static final Pattern REASON = Pattern.compile("(?:Reason\\.of|new Reason)\\(\\s*\"([a-z-]+)\"");
    private static final Pattern CODE = Pattern.compile("String code =[^;]*;");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");
    private static final Words WORDS = Words.english(LengthUnit.CM);

    @Test
    void everyKindHasAnAnnouncement() {
        for (Suggestion.Kind kind : Suggestion.Kind.values()) {
            String key = "suggestion." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            assertThat(WORDS.of(key)).isNotEqualTo(key);
        }
    }

    @Test
    void everyReasonHasALine() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/easewright/suggest"))) {
            for (Path file : files.toList()) {
                String source = Files.readString(file);
                REASON.matcher(source).results().forEach(m -> codes.add(m.group(1)));
                Matcher code = CODE.matcher(source);
                while (code.find()) {
                    LITERAL.matcher(code.group()).results().forEach(m -> codes.add(m.group(1)));
                }
            }
        }
        assertThat(codes).hasSizeGreaterThan(12);
        for (String code : codes) {
            assertThat(WORDS.of("reason." + code)).as(code).isNotEqualTo("reason." + code);
        }
    }
}
