package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BodyFileTest {
    @TempDir
    Path folder;

    @Test
    void readsWhatASewistWrites() throws Unreadable {
        Body body = BodyFile.parse("""
                \ufeff# taken 3 May
                name: Anna
                Hip girth @hip: 98 cm (20 cm below waist)
                waist = 29 1/2 in     # over a slip
                Upper-arm girth: 30,5
                Girth over coat @ over all : 120

                Back waist length: 41
                """, "me.txt");
        assertThat(body.name()).isEqualTo("Anna");
        assertThat(body.measures())
                .containsExactly(
                        new BodyMeasure("Hip girth", "hip", 980, "20 cm below waist"),
                        new BodyMeasure("Waist girth", "waist", 29.5 * 25.4, ""),
                        new BodyMeasure("Upper-arm girth", "upper arm", 305, ""),
                        new BodyMeasure("Girth over coat", "over all", 1200, ""),
                        new BodyMeasure("Back waist length", "", 410, ""));
    }

    @Test
    void aUnitLineHoldsForTheLinesBelow() throws Unreadable {
        Body body = BodyFile.parse("unit: in\r\nhip: 38 1/2\r\n", "me.txt");
        assertThat(body.girth("hip")).hasValue(38.5 * 25.4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hip 98|body-line-form|Line 2",
                "hip:|body-line-form|Line 2",
                "hip: wide|body-line-length|Line 2",
                "hip: 98 mm, no|body-line-length|Line 2",
                "hip: 98 m|body-line-range|Line 2",
                "hip: -98|body-line-range|Line 2",
                "unit: yards|body-unit-unknown|Line 2",
                "# nothing|body-empty|no measurement",
            })
    void namesTheLineAndTheRemedy(String line, String code, String place) {
        assertThatThrownBy(() -> BodyFile.parse("# a body\n" + line + "\n", "me.txt"))
                .isInstanceOfSatisfying(Unreadable.class, e -> {
                    assertThat(e.code()).isEqualTo(code);
                    assertThat(Words.english(LengthUnit.CM).problem(e.code(), e.values()))
                            .contains(place, "me.txt")
                            .doesNotContain("{")
                            .containsPattern("(Write|Use|Check)");
                });
    }

    @Test
    void refusesTwoGirthsForOneLevel() {
        assertThatThrownBy(() -> BodyFile.parse("hip: 98\nHip girth @hip: 99\n", "me.txt"))
                .hasMessageContaining("body-line-twice");
    }

    @Test
    void readsFilesSavedByOlderEditors() throws Exception {
        Path file = folder.resolve("body.txt");
        Files.write(file, "name: Zo\u00eb\nhip: 98\n".getBytes("windows-1252"));
        assertThat(BodyFile.read(file).name()).isEqualTo("Zo\u00eb");
    }

    @Test
    void saysThatAFileIsMissing() {
        assertThatThrownBy(() -> BodyFile.read(folder.resolve("none.txt"))).hasMessageContaining("file-missing");
    }

    @Test
    void aFileMayHoldABodyForEachSize() throws Unreadable {
        Bodies bodies = BodyFile.parseAll(
                "Name: Anna\nhip: 98\n\nsize: 10\nunit: in\nhip: 38 1/2\nsize: M\nhip: 40\n", "me.txt");
        assertThat(bodies.one().girth("hip")).hasValue(980);
        assertThat(bodies.bySize().keySet()).containsExactlyInAnyOrder("10", "M");
        assertThat(bodies.bySize().get("M").girth("hip")).hasValue(1016);
        assertThatThrownBy(() -> BodyFile.parse("size: 10\nhip: 98", "me.txt"))
                .isInstanceOfSatisfying(
                        Unreadable.class, u -> assertThat(u.code()).isEqualTo("body-has-sizes"));
        assertThatThrownBy(() -> BodyFile.parseAll("size: 10\nhip: 98\nsize: 10\nhip: 99", "me.txt"))
                .isInstanceOfSatisfying(
                        Unreadable.class, u -> assertThat(u.code()).isEqualTo("body-size-twice"));
    }

    /** Figures of docs/sources.md 2.2: ASTM D5585-11e1 (read), D5585-95 and home patterns (from memory). */
    @Test
    void sizeTablesAreThoseOfTheSourcesAndSayWhereTheyComeFrom() {
        for (String name : SizeTables.names()) {
            Bodies table = SizeTables.of(name).orElseThrow();
            assertThat(table.source()).isNotEmpty();
            assertThat(table.standing()).isIn("read", "from memory");
        }
        Bodies newest = SizeTables.of("astm-2011").orElseThrow();
        assertThat(newest.bySize()).hasSize(12);
        assertThat(newest.bySize().get("12").girth("bust")).hasValue(38.75 * 25.4);
        assertThat(newest.bySize().get("20").girth("waist")).hasValue(40.5 * 25.4);
        assertThat(newest.bySize().get("00").girth("underbust")).hasValue(25.75 * 25.4);
        assertThat(SizeTables.of("astm-1995").orElseThrow().bySize().get("14").girth("hip"))
                .hasValue(41.5 * 25.4);
        assertThat(SizeTables.of("home-pattern")
                        .orElseThrow()
                        .bySize()
                        .get("16")
                        .girth("waist"))
                .hasValue(30 * 25.4);
        assertThat(SizeTables.of("no-such")).isEmpty();
    }
}
