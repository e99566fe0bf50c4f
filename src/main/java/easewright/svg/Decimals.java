package easewright.svg;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as plain decimals, never with an exponent. */
final class Decimals {
    private static final double[] TEN = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};

    /** Of a decimal with no more digits than this, no other is the same double. */
    private static final double FEW_DIGITS = 1e15;

    /** So far from the middle between two numbers no rounding of a product can take the wrong one. */
    private static final double OFF_THE_MIDDLE = 1e-3;

    /** Beyond this, a product's rounding comes near to {@link #OFF_THE_MIDDLE}. */
    private static final double SMALL = 1e11;

    private Decimals() {}

    /** The shortest decimal that reads back as the very same number; a negative zero keeps its sign. */
    static String exact(double value) {
        if (value == 0) {
            return 1 / value < 0 ? "-0" : "0";
        }
        for (int places = 0; places < TEN.length; places++) {
            double whole = Math.rint(value * TEN[places]);
            if (Math.abs(whole) < FEW_DIGITS && whole / TEN[places] == value) {
                return plain((long) whole, places);
            }
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
        if (isQuick(value, places)) {
            return plain((long) Math.rint(value * TEN[places]), places);
        }
        BigDecimal decimal = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
        return plain(decimal);
    }

    /** The number that the {@link #rounded} text reads back as. */
    static double readBack(double value, int places) {
        return isQuick(value, places)
                ? Math.rint(value * TEN[places]) / TEN[places]
                : Double.parseDouble(rounded(value, places));
    }

    /** Whether plain arithmetic rounds as exact arithmetic would. */
    private static boolean isQuick(double value, int places) {
        if (places >= TEN.length) {
            return false;
        }
        double scaled = Math.abs(value * TEN[places]);
        return scaled < SMALL && Math.abs(scaled - Math.floor(scaled) - 0.5) > OFF_THE_MIDDLE;
    }

    private static String plain(long scaled, int places) {
        long unit = (long) TEN[places];
        long size = Math.abs(scaled);
        StringBuilder out = new StringBuilder(24);
        if (scaled < 0) {
            out.append('-');
        }
        out.append(size / unit);
        long rest = size % unit;
        if (rest > 0) {
            out.append('.');
            for (long digit = unit / 10; rest > 0; digit /= 10) {
                out.append((char) ('0' + rest / digit));
                rest %= digit;
            }
        }
        return out.toString();
    }

    private static String plain(BigDecimal decimal) {
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
