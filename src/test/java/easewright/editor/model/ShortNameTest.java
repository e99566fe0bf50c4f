package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShortNameTest {
    @Test
    void aLongNameLosesItsMiddleAndKeepsItsEnding() {
        String name = "skirt ".repeat(13) + "for Anna.svg";
        assertThat(ShortName.of(name))
                .hasSize(40)
                .startsWith("skirt skirt ")
                .endsWith(" for Anna.svg")
                .contains("\u2026");
        assertThat(ShortName.of("skirt.svg")).isEqualTo("skirt.svg");
        assertThat(ShortName.of("s".repeat(36) + ".svg")).isEqualTo("s".repeat(36) + ".svg");
    }

    @Test
    void noLetterIsCutInTwo() {
        String scissors = "\ud83d\ude00".repeat(60) + ".svg";
        String shown = ShortName.of(scissors);
        assertThat(shown.codePointCount(0, shown.length())).isEqualTo(40);
        assertThat(shown.codePoints()).noneMatch(c -> c >= 0xD800 && c <= 0xDFFF);
    }

    @Test
    void onlyNamesOfFilesAreShortened() {
        String text = "x".repeat(90);
        assertThat(ShortName.in(Map.of("file", text, "files", List.of(text, "a.svg"), "reason", text, "count", 2)))
                .containsEntry("reason", text)
                .containsEntry("count", 2)
                .containsEntry("file", ShortName.of(text))
                .containsEntry("files", List.of(ShortName.of(text), "a.svg"));
    }
}
