package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs of sizes, as a nest writes them on its pieces. */
class SizeNamesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Skirt front 10-12-14|Skirt front",
                "Skirt front, sizes 10 to 14|Skirt front",
                "Front (S-M-L)|Front",
                "Front S/M/L/XL|Front",
                "Front: size 38, 40, 42|Front",
                "Front - EU 38/40|Front",
                "8-10-12 Sleeve|Sleeve",
                "6-8-10 Sleeve|Sleeve",
                "Front 12|Front 12",
                "Front 1-2|Front 1-2",
                "Panel 1/2|Panel 1/2",
                "Pocket 2|Pocket 2",
                "A-line skirt|A-line skirt",
                "Size 10-12|Size 10-12",
                "Front L/R|Front L/R",
                "10-12|10-12"
            })
    void aNameWithoutItsRun(String name, String without) {
        assertThat(SizeNames.withoutRun(name)).isEqualTo(without);
    }

    @Test
    void theSizesOfARun() {
        assertThat(SizeNames.run("Skirt front 36-38-40, cut 1 on fold")).containsExactly("36", "38", "40");
        assertThat(SizeNames.run("Front (sizes S, M and XL)")).containsExactly("S", "M", "XL");
        assertThat(SizeNames.run("Front cut 1/2")).isEmpty();
        assertThat(SizeNames.run("Allowance 1.5-2.5 cm")).isEmpty();
        assertThat(SizeNames.run("Front 12")).isEmpty();
    }

    @Test
    void layersMayBeCalledWithALineBetween() {
        assertThat(SizeNames.ofLayers(List.of("size_36", "size_38", "text")))
                .isEqualTo(Map.of("size_36", "36", "size_38", "38"));
    }

    @Test
    void aSizeMayStandBeforeTheName() {
        assertThat(SizeNames.in(List.of("12 Front", "14 Front", "12 Back", "Pocket")))
                .isEqualTo(Map.of("12 Front", "12", "14 Front", "14", "12 Back", "12"));
        assertThat(SizeNames.in(List.of("Size S Sleeve", "M_Sleeve")))
                .isEqualTo(Map.of("Size S Sleeve", "S", "M_Sleeve", "M"));
        assertThat(SizeNames.ofLayers(List.of("8 Front", "10 Front", "words")))
                .isEqualTo(Map.of("8 Front", "8", "10 Front", "10"));
        assertThat(SizeNames.in(List.of("1 Front", "2 Back", "3 Sleeve"))).isEmpty();
        assertThat(SizeNames.in(List.of("1 Front", "2 Front"))).as("counted").isEmpty();
        assertThat(SizeNames.in(List.of("1 Front 12", "1 Front 14")))
                .isEqualTo(Map.of("1 Front 12", "12", "1 Front 14", "14"));
        assertThat(SizeNames.in(List.of("12 cm", "14-38"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "12 Front,12,Front",
        "12_Front,12,Front",
        "Front_12,12,Front",
        "Front 12,12,Front",
        "Front (size 12),12,Front",
        "Size 12: Front,12,Front",
        "M-Sleeve,M,Sleeve",
        "Front 112,12,Front 112",
        "Frontm,M,Frontm",
        "12,12,12"
    })
    void aNameWithoutItsSize(String name, String size, String without) {
        assertThat(SizeNames.without(name, size)).isEqualTo(without);
    }

    @Test
    void aRunByItself() {
        assertThat(SizeNames.isRun("S-M-L")).isTrue();
        assertThat(SizeNames.isRun("sizes 8, 10 and 12")).isTrue();
        assertThat(SizeNames.isRun("XS \u2013 XXL")).isTrue();
        assertThat(SizeNames.isRun("Front S-M")).isFalse();
        assertThat(SizeNames.isRun("1/2")).isFalse();
        assertThat(SizeNames.isRun("12")).isFalse();
    }

    @Test
    void everyOfManyWordsIsTakenOffTheNamesItStandsIn() {
        for (int turn = 0; turn < 2; turn++) {
            for (int size = 1; size <= 450; size++) {
                String word = String.valueOf(size);
                assertThat(SizeNames.without("Front " + word, word)).isEqualTo("Front");
                assertThat(SizeNames.without(word + " - Front", word)).isEqualTo("Front");
                assertThat(SizeNames.without("Front (size " + word + ")", word)).isEqualTo("Front");
                assertThat(SizeNames.without("Front 1" + word, word)).isEqualTo("Front 1" + word);
                assertThat(SizeNames.without(word, word)).isEqualTo(word);
            }
        }
    }
}
