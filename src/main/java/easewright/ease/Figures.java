package easewright.ease;

import java.util.Locale;
import java.util.OptionalDouble;

/** Reads the figures of a table file: plain decimals, and inches with fractions such as {@code 2 7/8}. */
final class Figures {
    private static final double MM_PER_INCH = 25.4;

    private Figures() {}

    /** The figure times the size of its unit. */
    static double read(String text, double unit) {
        double sum = 0;
        String words = text.strip();
        boolean negative = words.startsWith("-");
        for (String word : words.substring(negative ? 1 : 0).strip().split("\\s+")) {
            int slash = word.indexOf('/');
            sum += slash < 0
                    ? Double.parseDouble(word)
                    : Double.parseDouble(word.substring(0, slash)) / Double.parseDouble(word.substring(slash + 1));
        }
        if (!Double.isFinite(sum)) {
            throw new NumberFormatException("Not a figure: " + text);
        }
        return (negative ? -sum : sum) * unit;
    }

    static OptionalDouble readOptional(String text, double unit) {
        return text.isBlank() || text.strip().equals("-")
                ? OptionalDouble.empty()
                : OptionalDouble.of(read(text, unit));
    }

    /** Millimetres in one unit of the table; 1 for percent. */
    static double unit(String word) {
        switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "mm":
            case "percent":
                return 1;
            case "cm":
                return 10;
            case "in":
                return MM_PER_INCH;
            default:
                throw new IllegalArgumentException("Not a unit: " + word);
        }
    }
}
