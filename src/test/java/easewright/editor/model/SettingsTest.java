package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
    @TempDir
    Path folder;

    @Test
    void comesBackAsWritten() {
        Settings settings = Settings.FIRST
                .withUnit(LengthUnit.INCH)
                .withDark(true)
                .withTables(List.of(folder.resolve("mine.txt"), folder.resolve("lost.txt")))
                .withRecent(folder.resolve("a.svg"))
                .withRecent(folder.resolve("b.svg"))
                .withRecent(folder.resolve("a.svg"));
        assertThat(settings.write(folder)).isTrue();
        assertThat(Settings.read(folder)).isEqualTo(settings);
        assertThat(Settings.read(folder).tables()).hasSize(2);
        assertThat(settings.recent()).containsExactly(folder.resolve("a.svg"), folder.resolve("b.svg"));
    }

    @Test
    void startsAfreshWhereNothingCanBeRead() throws IOException {
        assertThat(Settings.read(folder.resolve("none"))).isEqualTo(Settings.FIRST);
        Files.writeString(folder.resolve("settings.properties"), "unit=\\uZZZZ");
        assertThat(Settings.read(folder)).isEqualTo(Settings.FIRST);
    }

    /** The hand test of docs/sources.md 5: 10 → 14 cm is 40 %. */
    @Test
    void handTest() {
        assertThat(StretchTest.percent(140).orElseThrow()).isCloseTo(40, within(1e-9));
        assertThat(StretchTest.percent(90)).isEmpty();
        assertThat(StretchTest.percent(500)).isEmpty();
    }
}
