package easewright.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * One thing that the program says, held against a figure from outside.
 *
 * @param subject  what is measured
 * @param expected what the source says, as shown on the page
 * @param got      what the program says
 * @param differs  the difference, or empty for words
 * @param allowed  the largest difference that passes, or empty for words
 * @param share    the difference as a share of what is allowed; 0 for words that agree
 * @param holds    whether the check passes
 */
record Check(
        String subject,
        Source source,
        String expected,
        String got,
        String differs,
        String allowed,
        double share,
        boolean holds) {
    /** Below this share of what is allowed a difference is not told apart from rounding. */
    private static final double ROUNDING = 0.01;

    /**
     * A number.
     *
     * @param unit written after it; may be empty
     */
    static Check number(String subject, Source source, String unit, double expected, double got, double allowed) {
        double difference = got - expected;
        double share = Math.abs(difference) / allowed;
        int places = Math.max(0, (int) Math.ceil(-Math.log10(allowed) - 1e-9) + 1);
        return new Check(
                subject,
                source,
                plain(expected, places) + unit(unit),
                plain(got, places) + unit(unit),
                share < ROUNDING ? "under " + brief(ROUNDING * allowed) : brief(difference),
                brief(allowed),
                share,
                share <= 1);
    }

    /** Words, or counts of things, which must agree letter by letter. */
    static Check words(String subject, Source source, String expected, String got) {
        boolean same = expected.equals(got);
        return new Check(subject, source, expected, got, same ? "none" : "differs", "", same ? 0 : 2, same);
    }

    private static String unit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }

    private static String plain(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** Two significant digits. */
    private static String brief(double value) {
        BigDecimal rounded = new BigDecimal(value, new MathContext(2)).stripTrailingZeros();
        double size = Math.abs(value);
        return size >= 1e-3 && size < 1e4
                ? rounded.toPlainString()
                : String.format(Locale.ROOT, "%.1e", value).replace(".0e", "e").replace("e-0", "e-");
    }

    @Override
    public String toString() {
        return subject + ": expected " + expected + ", got " + got + ", difference " + differs + ", allowed " + allowed
                + " (" + source.name() + ")";
    }
}
