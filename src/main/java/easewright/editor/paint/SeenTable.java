package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much of the table is seen, and what may come to lie over it.
 *
 * @param box pixels
 */
record SeenTable(Box box) {
    /** A plate keeps so far from the rim, where the keys' focus is shown, pixels. */
    private static final double RIM = 5;

    /** How much of the view buttons and messages take at its foot, pixels. */
    static final double FOOT = 56;

    /** How much of what tells the meanings of lines takes at its head, pixels. */
    private static final double HEAD = 44;

    boolean isSeen(Box place) {
        return box.contains(place);
    }

    /** Whether a plate stands clear of the rim. */
    boolean isClearOfRim(Point middle, double width, double height) {
        return box.contains(LabelRoom.around(middle, width + 2 * RIM, height + 2 * RIM));
    }

    /** Whether words stand above the foot of the view, where buttons and messages lie over the table. */
    boolean isAboveFoot(Point middle, double height) {
        return middle.y() + height / 2 <= box.maxY() - FOOT;
    }

    /** The same, and below its head, where the meanings of lines lie over it. */
    boolean isOpenlySeen(Point middle, double height) {
        return middle.y() - height / 2 >= box.minY() + HEAD && isAboveFoot(middle, height);
    }

    /** What is seen of a box; empty if nothing is. */
    Optional<Box> seen(Box of) {
        return of.shared(box);
    }

    /** What is seen of a straight line; empty if nothing is. */
    Optional<Line> seen(Point from, Point to) {
        return Stretch.within(box, from, to);
    }

    /**
     * The middle of what is seen of a box, and those of the squares into which it is parted.
     *
     * @param best by which the nearest comes first, where it is seen itself; else the middle of what is seen
     */
    List<Point> spread(Box of, int columns, int rows, Point best) {
        Optional<Box> shared = seen(of);
        if (shared.isEmpty()) {
            return List.of();
        }
        Box seen = shared.get();
        List<Point> middles = new ArrayList<>();
        middles.add(seen.centre());
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                middles.add(new Point(
                        seen.minX() + seen.width() * (column + 0.5) / columns,
                        seen.minY() + seen.height() * (row + 0.5) / rows));
            }
        }
        Point by = box.contains(best) ? best : seen.centre();
        middles.sort(Comparator.comparingDouble(by::distance));
        return middles;
    }
}
