package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** Lines of one kind as they lie on the screen, pixels, of which words are to keep clear. */
final class LaidLines {
    /** Between words and a line, pixels. */
    static final double AIR = 1.5;

    /** Fewer are looked at one by one. */
    private static final int MANY = 12;

    private final List<DrawnLine> all = new ArrayList<>();
    /** Made when there are many lines to be asked about. */
    private LineGrid grid;
    /** How many of them lie in the grid by now. */
    private int laid;
    /** The one that the last place met: places are tried one beside the other, and the next mostly meets it as well. */
    private DrawnLine met;

    void put(DrawnLine line) {
        all.add(line);
    }

    void putAll(LaidLines others) {
        all.addAll(others.all);
    }

    /** Those that come into a part. */
    LaidLines within(Box part) {
        LaidLines within = new LaidLines();
        for (DrawnLine line : all) {
            if (line.comesInto(part)) {
                within.all.add(line);
            }
        }
        return within;
    }

    /** Whether none of them comes so near to words that are turned about their middle, radians. */
    boolean isClear(Point middle, double width, double height, double turn) {
        return all.isEmpty() || isClear(airy(middle, width, height, turn));
    }

    /** A place for words that are turned about their middle, radians, with the air around them. */
    static DrawnLine.Place airy(Point middle, double width, double height, double turn) {
        return DrawnLine.Place.of(middle, width + 2 * AIR, height + 2 * AIR, turn);
    }

    /**
     * @param airy with the air around it
     */
    boolean isClear(DrawnLine.Place airy) {
        if (grid == null && all.size() < MANY) {
            return !meetsOne(airy);
        }
        if (grid == null) {
            grid = new LineGrid();
        }
        while (laid < all.size()) {
            grid.put(all.get(laid++));
        }
        return !grid.meets(airy);
    }

    private boolean meetsOne(DrawnLine.Place place) {
        if (met != null && met.meets(place)) {
            return true;
        }
        for (DrawnLine line : all) {
            if (line.meets(place)) {
                met = line;
                return true;
            }
        }
        return false;
    }
}
