package easewright.svg;

import java.util.Locale;
import java.util.Optional;

/**
 * A length as written in an attribute or style.
 *
 * @param unit in small letters; empty for a plain number
 */
record Length(double value, String unit) {
    static final double PX_PER_INCH = 96;
    static final double MM_PER_INCH = 25.4;

    /** An em where nothing is known of the font: the usual 16 px. */
    private static final double EM = 16;

    /** Reads one length and nothing else around it but white space. Units in any case, as CSS has them. */
    static Optional<Length> parse(String text) {
        NumberScanner in = new NumberScanner(text);
        in.skipSpace();
        double value = in.number();
        if (Double.isNaN(value)) {
            return Optional.empty();
        }
        String unit = text.substring(in.at()).strip().toLowerCase(Locale.ROOT);
        return switch (unit) {
            case "", "px", "mm", "cm", "in", "pt", "pc", "q", "%", "em", "rem", "ex" ->
                Optional.of(new Length(value, unit));
            default -> Optional.empty();
        };
    }

    /** Whether the unit is one of paper, not of the screen. */
    boolean physical() {
        return switch (unit) {
            case "mm", "cm", "in", "pt", "pc", "q" -> true;
            default -> false;
        };
    }

    boolean percent() {
        return unit.equals("%");
    }

    /**
     * The length in user units.
     *
     * @param whole what 100 % is
     */
    double units(double whole) {
        return switch (unit) {
            case "mm" -> value * PX_PER_INCH / MM_PER_INCH;
            case "cm" -> value * 10 * PX_PER_INCH / MM_PER_INCH;
            case "q" -> value / 4 * PX_PER_INCH / MM_PER_INCH;
            case "in" -> value * PX_PER_INCH;
            case "pt" -> value * PX_PER_INCH / 72;
            case "pc" -> value * PX_PER_INCH / 6;
            case "em", "rem" -> value * EM;
            case "ex" -> value * EM / 2;
            case "%" -> value / 100 * whole;
            default -> value;
        };
    }

    /** The length on paper, a pixel being 1/96 inch, mm. Not for percentages. */
    double mm() {
        return switch (unit) {
            case "mm" -> value;
            case "cm" -> value * 10;
            case "q" -> value / 4;
            case "in" -> value * MM_PER_INCH;
            case "pt" -> value * MM_PER_INCH / 72;
            case "pc" -> value * MM_PER_INCH / 6;
            default -> units(0) * MM_PER_INCH / PX_PER_INCH;
        };
    }
}
