package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
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
                .withTables(List.of(), List.of(folder.resolve("mine.txt"), folder.resolve("lost.txt")))
                .withRecent(folder.resolve("a.svg"))
                .withRecent(folder.resolve("b.svg"))
                .withRecent(folder.resolve("a.svg"));
        assertThat(settings.write(folder)).isTrue();
        assertThat(Settings.read(folder)).isEqualTo(settings);
        assertThat(Settings.read(folder).tables()).hasSize(2);
        assertThat(settings.recent()).containsExactly(folder.resolve("a.svg"), folder.resolve("b.svg"));
    }

    /** What is kept for another reason says nothing of the unit. */
    @Test
    void aUnitIsKeptOnlyWhereItWasChosen() {
        assertThat(Settings.FIRST.withDark(true).write(folder)).isTrue();
        assertThat(Settings.read(folder).unitChosen()).isFalse();
        assertThat(Settings.FIRST.withUnit(LengthUnit.CM).write(folder)).isTrue();
        assertThat(Settings.read(folder).unitChosen()).isTrue();
    }

    @Test
    void startsAfreshWhereNothingCanBeRead() throws IOException {
        assertThat(Settings.read(folder.resolve("none"))).isEqualTo(Settings.FIRST);
        Files.writeString(folder.resolve("settings.properties"), "unit=\\uZZZZ");
        assertThat(Settings.read(folder)).isEqualTo(Settings.FIRST);
    }

    @Test
    void whatCannotBeWrittenLeavesNothingBehind() throws IOException {
        // A folder that is not empty is in the way.
        Files.createDirectories(folder.resolve("settings.properties/in-the-way"));
        assertThat(Settings.FIRST.write(folder)).isFalse();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(folder.resolve("settings.properties"));
        }
    }

    /** The hand test of docs/sources.md 5: 10 → 14 cm is 40 %. */
    @Test
    void handTest() {
        assertThat(StretchTest.percent(140, 100).orElseThrow()).isCloseTo(40, within(1e-9));
        assertThat(StretchTest.percent(90, 100)).isEmpty();
        assertThat(StretchTest.percent(500, 100)).isEmpty();
        assertThat(StretchTest.percent(5 * 25.4, StretchTest.marked(LengthUnit.INCH))
                        .orElseThrow())
                .isCloseTo(25, within(1e-9));
    }

    /** 50 cm that become 47.5 cm have lost 5 %. */
    @Test
    void washTest() {
        assertThat(WashTest.percent(475, 500).orElseThrow()).isCloseTo(5, within(1e-9));
        assertThat(WashTest.percent(WashTest.marked(LengthUnit.INCH) - 25.4, WashTest.marked(LengthUnit.INCH))
                        .orElseThrow())
                .isCloseTo(5, within(1e-9));
        assertThat(WashTest.percent(510, 500)).isEmpty();
        assertThat(WashTest.percent(200, 500)).isEmpty();
    }
}
