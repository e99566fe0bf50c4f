package easewright.print.sheet;

import java.time.LocalDate;
import java.util.List;

/**
 * What is to be printed, and on what.
 *
 * @param name      what to call the pattern
 * @param paper     the paper; left out of account for a projector
 * @param projector one page with thick lines and a grid to set the projector by, in place of paper
 * @param margin    what the printer cannot reach at each side, mm
 * @param overlap   how far joined sheets lie over each other, mm
 * @param pieces    names or ids of the pieces wanted; empty: all
 * @param size      the size wanted of a pattern drawn in several; empty: all
 * @param date      as printed on the labels
 */
public record PrintOrder(
        String name,
        Paper paper,
        boolean projector,
        double margin,
        double overlap,
        List<String> pieces,
        String size,
        LocalDate date) {
    /** Home printers reach to within some 6 mm of the edge; 10 mm are safe (common practice). */
    public static final double MARGIN = 10;

    public static final double OVERLAP = 10;

    public PrintOrder {
        pieces = List.copyOf(pieces);
    }

    /** All pieces, with the usual margin and overlap. */
    public static PrintOrder on(Paper paper, String name, LocalDate date) {
        return new PrintOrder(name, paper, false, MARGIN, OVERLAP, List.of(), "", date);
    }

    public PrintOrder withMargin(double mm) {
        return new PrintOrder(name, paper, projector, mm, overlap, pieces, size, date);
    }

    public PrintOrder withOverlap(double mm) {
        return new PrintOrder(name, paper, projector, margin, mm, pieces, size, date);
    }

    public PrintOrder withPieces(List<String> names) {
        return new PrintOrder(name, paper, projector, margin, overlap, names, size, date);
    }

    public PrintOrder withSize(String wanted) {
        return new PrintOrder(name, paper, projector, margin, overlap, pieces, wanted, date);
    }

    public PrintOrder forProjector() {
        return new PrintOrder(name, paper, true, margin, overlap, pieces, size, date);
    }
}
