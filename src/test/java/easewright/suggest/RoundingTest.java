package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
    /** 5/8, 3/8 and 3/4 in lie beside half millimetres. */
    @ParameterizedTest
    @CsvSource({
        "15.875, 15.875",
        "15.87, 15.875",
        "15.88, 15.875",
        "9.525, 9.525",
        "19.05, 19.05",
        "12.7, 12.7",
        "16, 16",
        "15.95, 16",
        "15.92, 16",
        "9.5, 9.5",
        "19, 19",
        "10.04, 10",
        "11.3, 11.3"
    })
    void aDistanceIsWhatItHitsOrLiesNear(double mm, double meant) {
        assertThat(Rounding.meant(mm)).isCloseTo(meant, within(1e-9));
    }
}
