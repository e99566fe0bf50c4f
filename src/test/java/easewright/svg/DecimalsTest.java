package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Decimals against exact arithmetic. */
class DecimalsTest {
    /** Plain and odd numbers of all sizes, many of them in the middle between two decimals. */
    private static double number(Random random) {
        return switch (random.nextInt(5)) {
            case 0 -> (random.nextInt(2_000_001) - 1_000_000) / Math.pow(10, random.nextInt(9));
            case 1 -> (2 * random.nextInt(1_000_000) + 1) / 2.0 / Math.pow(10, random.nextInt(7));
            case 2 -> random.nextGaussian() * Math.pow(10, random.nextInt(24) - 12);
            case 3 -> (random.nextInt(4000) - 2000) / 8.0;
            default -> Math.nextAfter(random.nextInt(3000) / 100.0, random.nextBoolean() ? 1e9 : -1e9);
        };
    }

    @Test
    void exactReadsBackAndNothingShorterDoes() {
        Random random = new Random(5);
        for (int i = 0; i < 60_000; i++) {
            double value = number(random);
            String text = Decimals.exact(value);
            assertThat(Double.parseDouble(text)).isEqualTo(value);
            assertThat(text).doesNotContain("E").doesNotEndWith(".").doesNotStartWith("+");
            BigDecimal decimal = new BigDecimal(text).stripTrailingZeros();
            if (decimal.signum() != 0 && decimal.precision() > 1) {
                BigDecimal shorter = decimal.round(new MathContext(decimal.precision() - 1));
                assertThat(shorter.doubleValue()).as(text).isNotEqualTo(value);
            }
            assertThat(text).as("no trailing zeros").isEqualTo(value == 0 ? text : decimal.toPlainString());
        }
        assertThat(Decimals.exact(-0.0)).isEqualTo("-0");
        assertThat(Decimals.exact(0.0)).isEqualTo("0");
    }

    @Test
    void roundedIsExactArithmeticRoundedToEven() {
        Random random = new Random(6);
        for (int i = 0; i < 60_000; i++) {
            double value = number(random);
            int places = random.nextInt(12);
            BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
            String wanted =
                    exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
            assertThat(Decimals.rounded(value, places))
                    .as("%s to %s places", value, places)
                    .isEqualTo(wanted);
            assertThat(Decimals.readBack(value, places)).isEqualTo(Double.parseDouble(wanted) + 0.0);
        }
    }
}
