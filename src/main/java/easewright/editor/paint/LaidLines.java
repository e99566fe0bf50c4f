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
        if (grid == null && all.size() < MANY) {
            return !meetsOne(middle, width + 2 * AIR, height + 2 * AIR, turn);
        }
        if (grid == null) {
            grid = new LineGrid();
        }
        while (laid < all.size()) {
            grid.put(all.get(laid++));
        }
        return !grid.meets(middle, width + 2 * AIR, height + 2 * AIR, turn);
    }

    private boolean meetsOne(Point middle, double width, double height, double turn) {
        for (DrawnLine line : all) {
            if (line.meets(middle, width, height, turn)) {
                return true;
            }
        }
        return false;
    }
}
