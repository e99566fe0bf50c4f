package easewright.text;

import java.util.Locale;
import java.util.Optional;

/** A unit in which lengths are shown and typed. */
public enum LengthUnit {
    MM("mm", 1),
    CM("cm", 10),
    INCH("in", 25.4);

    private final String symbol;
    private final double mm;

    LengthUnit(String symbol, double mm) {
        this.symbol = symbol;
        this.mm = mm;
    }

    public String symbol() {
        return symbol;
    }

    /** How many millimetres one of this unit is; exact. */
    public double mm() {
        return mm;
    }

    /** The unit a person means by a word such as {@code cm}, {@code inches} or a double-prime sign. */
    public static Optional<LengthUnit> named(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters" -> Optional.of(MM);
            case "cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters" -> Optional.of(CM);
            case "in", "in.", "inch", "inches", "\"", "″", "”", "“", "''", "′′", "’’" -> Optional.of(INCH);
            default -> Optional.empty();
        };
    }
}
