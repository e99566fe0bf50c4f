package easewright.svg;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as plain decimals, never with an exponent. */
final class Decimals {
    private Decimals() {}

    /** The shortest decimal that reads back as the very same number; a negative zero keeps its sign. */
    static String exact(double value) {
        if (value == 0) {
            return 1 / value < 0 ? "-0" : "0";
        }
        BigDecimal decimal = new BigDecimal(Double.toString(value));
        // Double.toString of Java 17 gives one digit too many now and then.
        BigDecimal shorter = decimal.round(new MathContext(Math.max(1, decimal.precision() - 1)));
        if (shorter.doubleValue() == value) {
            decimal = shorter;
        }
        return plain(decimal);
    }

    /** The number rounded to so many places after the point, without trailing zeros; never {@code -0}. */
    static String rounded(double value, int places) {
        BigDecimal decimal = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
        return plain(decimal);
    }

    private static String plain(BigDecimal decimal) {
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
