package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class WayWordsTest {
    private static final String ASKED = "editor.here.next.";
    private static final Path BUNDLE = Path.of("src/main/resources/easewright/text/messages.properties");

    /** What the window asks for next is a sentence of its own for each thing without which there is no change. */
    @Test
    void whatIsToBeChosenIsAskedForInASentence() {
        Words words = Words.english(LengthUnit.CM);
        Set<String> wanted = new TreeSet<>();
        for (Way way : Ways.all()) {
            for (Setting setting : way.settings()) {
                // Level and amount have their places above the form; the piece is that of the places.
                boolean elsewhere = setting.key().equals(way.amount())
                        || setting.kind() == Setting.Kind.LEVEL
                        || setting.kind() == Setting.Kind.PIECE;
                if (setting.required() && !elsewhere) {
                    wanted.add(ASKED + way.method() + "." + setting.key());
                }
            }
        }
        assertThat(words.bundle().keySet().stream().filter(k -> k.startsWith(ASKED)))
                .containsExactlyInAnyOrderElementsOf(wanted)
                .hasSizeGreaterThan(5)
                .allSatisfy(key -> assertThat(words.of(key)).startsWith("Now ").endsWith("."));
    }

    @Test
    void everyWayAndSettingHasItsWordsAndNoOther() throws IOException {
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE)) {
            lines.load(reader);
        }
        Set<String> wanted = new TreeSet<>();
        for (Way way : Ways.all()) {
            String start = "way." + way.method() + ".";
            wanted.addAll(List.of(start + "name", start + "what", start + "hint"));
            for (Setting setting : way.settings()) {
                wanted.add(start + "setting." + setting.key());
                wanted.add(start + "setting." + setting.key() + ".hint");
                setting.choices().forEach(c -> wanted.add(start + "setting." + setting.key() + "." + c));
            }
        }
        Set<String> there = new TreeSet<>();
        lines.stringPropertyNames().stream()
                .filter(k -> k.startsWith("way.") && !k.endsWith(".command"))
                .forEach(there::add);
        assertThat(there).isEqualTo(wanted);
    }
}
