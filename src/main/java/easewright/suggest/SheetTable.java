package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether a piece is the table with a sheet's title: an upright rectangle parted across and down by lines, with words,
 * or letters drawn as shapes, in several of its cells. A band has its words in a row and is longer.
 */
final class SheetTable {
    /** A longer rectangle is a band or a belt. */
    private static final double LONGEST = 4.5;

    private static final int LEAST_CELLS = 3;

    /** It has no more than this part of the area of the largest piece. */
    private static final double LARGEST = 0.5;

    /** Lines shorter than this part no cells, mm. */
    private static final double SHORTEST = 10;

    /** A line is upright or level within this, mm. */
    private static final double ASKEW = 0.5;

    private final List<Line> level = new ArrayList<>();
    private final List<Line> upright = new ArrayList<>();
    private final List<Point> written = new ArrayList<>();

    private SheetTable(Piece piece, List<Caption> captions) {
        for (Rider rider : piece.riders()) {
            for (Pen pen : Pen.of(rider)) {
                if (pen.isLine()) {
                    add(Pen.chord(pen.runs().get(0)));
                } else if (pen.closed()) {
                    written.add(Box.around(
                                    pen.segments().stream().map(s -> s.start()).toList())
                            .centre());
                }
            }
        }
        captions.stream()
                .map(Caption::middle)
                .filter(piece.outline().box()::contains)
                .forEach(written::add);
    }

    private void add(Line line) {
        if (line.length() >= SHORTEST) {
            if (Math.abs(line.start().y() - line.end().y()) < ASKEW) {
                level.add(line);
            } else if (Math.abs(line.start().x() - line.end().x()) < ASKEW) {
                upright.add(line);
            }
        }
    }

    /**
     * @param largest area of the largest piece on the sheet, mm²
     */
    static boolean is(Piece piece, List<Caption> captions, double largest) {
        Box box = piece.outline().box();
        double area = Math.abs(piece.outline().signedArea());
        boolean rectangle = piece.outline().segments().size() == 4 && area > 0.99 * box.width() * box.height();
        double times = Math.max(box.width() / box.height(), box.height() / box.width());
        if (!rectangle
                || times > LONGEST
                || area > LARGEST * largest
                || !piece.edges().isEmpty()
                || Vocabulary.namesPart(piece.name())) {
            return false;
        }
        SheetTable table = new SheetTable(piece, captions);
        return !table.level.isEmpty()
                && !table.upright.isEmpty()
                && table.cells().size() >= LEAST_CELLS;
    }

    /** The cells in which something is written, by how many lines lie above and to the left of it. */
    private Set<List<Long>> cells() {
        Set<List<Long>> cells = new HashSet<>();
        for (Point p : written) {
            long above = level.stream()
                    .filter(l -> l.at(0.5).y() < p.y()
                            && isBetween(p.x(), l.start().x(), l.end().x()))
                    .count();
            long before = upright.stream()
                    .filter(l -> l.at(0.5).x() < p.x()
                            && isBetween(p.y(), l.start().y(), l.end().y()))
                    .count();
            cells.add(List.of(above, before));
        }
        return cells;
    }

    private static boolean isBetween(double value, double one, double other) {
        return value >= Math.min(one, other) && value <= Math.max(one, other);
    }
}
