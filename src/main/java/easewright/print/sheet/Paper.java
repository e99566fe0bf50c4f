package easewright.print.sheet;

import java.util.Locale;
import java.util.Optional;

/** Papers that pages are made for; sizes of the A series by ISO 216, Letter 8 1/2 by 11 in. */
public enum Paper {
    A4(210, 297, true),
    LETTER(215.9, 279.4, true),
    A3(297, 420, true),
    A1(594, 841, false),
    A0(841, 1189, false),
    /** A roll 36 in wide, the usual one of copy shops in the United States; length as needed. */
    ROLL(914.4, 0, false);

    private final double width;
    private final double height;
    private final boolean tiled;

    Paper(double width, double height, boolean tiled) {
        this.width = width;
        this.height = height;
        this.tiled = tiled;
    }

    /** Short side, mm. */
    public double width() {
        return width;
    }

    /** Long side, mm; 0 for a roll. */
    public double height() {
        return height;
    }

    /** Whether a pattern is spread over several sheets that are joined. */
    public boolean tiled() {
        return tiled;
    }

    /** Its name as people write it. */
    public String label() {
        String lower = name().toLowerCase(Locale.ROOT);
        return this == LETTER ? "Letter" : this == ROLL ? lower : name();
    }

    public static Optional<Paper> named(String word) {
        String wanted = word.strip().toUpperCase(Locale.ROOT);
        for (Paper paper : values()) {
            if (paper.name().equals(wanted)) {
                return Optional.of(paper);
            }
        }
        return Optional.empty();
    }
}
