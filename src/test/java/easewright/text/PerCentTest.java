package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PerCentTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-8 %|-8",
                "-8%|-8",
                "−8\u00a0%|-8",
                "+2.5 %|2.5",
                "2,5%|2.5",
                ".5 %|0.5",
                "8 per cent|8",
                "8 Percent|8"
            })
    void readsWhatPeopleWrite(String text, double percent) {
        assertThat(PerCent.of(text)).hasValue(percent);
    }

    /** A comma before three digits may part thousands, and a length is none. */
    @ParameterizedTest
    @ValueSource(strings = {"", "8", "8 cm", "%", "- %", "8 %%", "1,500 %", "1000 %", "1/2 %", "8 % of it"})
    void leavesAllElseAlone(String text) {
        assertThat(PerCent.of(text)).isEmpty();
    }

    @Test
    void whatIsShownIsReadAgain() {
        for (int hundredths = -99_999; hundredths <= 99_999; hundredths += 37) {
            double percent = hundredths / 100.0;
            assertThat(PerCent.of(PerCent.shown(percent))).hasValue(percent);
        }
        assertThat(PerCent.shown(-8)).isEqualTo("−8\u00a0%");
        assertThat(PerCent.shown(-0.001)).isEqualTo("0\u00a0%");
    }
}
