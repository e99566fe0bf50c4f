package easewright.svg;

/**
 * What the scale of a drawing may be, for a person to confirm.
 *
 * @param mmPerUnit mm per user unit of the root element
 * @param sign      what speaks for it
 * @param seen      the name, size or count that was seen, such as {@code 10 cm} beside a test square
 */
public record ScaleProposal(double mmPerUnit, Sign sign, String seen) {
    /** What speaks for a scale, best first. */
    public enum Sign {
        /** A square with its size written in or beside it. */
        TEST_SQUARE,
        /** The page then has the size of a usual sheet. */
        SHEET,
        /** One unit then is a millimetre: the page is a usual sheet in mm, or so many pixels to the unit. */
        MILLIMETRE,
        /** The program that wrote the file counts so many units to the inch. */
        PROGRAM,
        /** One of the usual counts: 72, 90 or 96 units to the inch. */
        USUAL
    }
}
