package easewright.suggest;

import easewright.geom.Box;
import easewright.pattern.Caption;
import easewright.pattern.CutWords;
import easewright.pattern.Piece;
import java.util.List;

/**
 * Whether a piece is a frame around words about the whole sheet: a small upright rectangle with two lines or more in it
 * that speak of the garment, the pattern or its allowances, and of no part and no count.
 */
final class SheetLabel {
    private static final int LEAST_LINES = 2;

    /** It has no more than this part of the area of the largest piece. */
    private static final double LARGEST = 0.15;

    private SheetLabel() {}

    /**
     * @param largest area of the largest piece on the sheet, mm²
     */
    static boolean is(Piece piece, List<Caption> captions, double largest) {
        Box box = piece.outline().box();
        double area = Math.abs(piece.outline().signedArea());
        boolean frame = piece.outline().segments().size() == 4
                && area > 0.99 * box.width() * box.height()
                && area <= LARGEST * largest
                && piece.riders().isEmpty()
                && piece.edges().isEmpty();
        List<String> lines = frame
                ? captions.stream()
                        .filter(c -> box.contains(c.middle()))
                        .flatMap(c -> c.lines().stream())
                        .toList()
                : List.of();
        return lines.size() >= LEAST_LINES
                && lines.stream().noneMatch(l -> Vocabulary.namesPart(l) || saysCount(l))
                && lines.stream().anyMatch(SheetLabel::isOfTheSheet);
    }

    private static boolean saysCount(String line) {
        return CutWords.count(line).isPresent();
    }

    private static boolean isOfTheSheet(String line) {
        return Vocabulary.namesGarment(line)
                || Vocabulary.has(
                        line,
                        "pattern",
                        "block",
                        "draft",
                        "sheet",
                        "page",
                        "scale",
                        "seam allowance",
                        "copyright",
                        "version",
                        "for wovens",
                        "for knits");
    }
}
