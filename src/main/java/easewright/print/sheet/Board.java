package easewright.print.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** A grid of squares, as wide as the paper or cloth and as long as needed, with what is laid on it. */
final class Board {
    private final int columns;
    private final int longest;
    private final List<BitSet> rows = new ArrayList<>();

    Board(int columns, int longest) {
        this.columns = columns;
        this.longest = longest;
    }

    /** The first row from {@code from} on in which the stencil fits at the column, or −1. */
    int lowest(Stencil stencil, int column, int from) {
        if (column + stencil.columns() > columns) {
            return -1;
        }
        int y = from;
        while (y + stencil.height() <= longest) {
            int blocked = blockedBelow(stencil, column, y);
            if (blocked < 0) {
                return y;
            }
            y = blocked;
        }
        return -1;
    }

    /**
     * −1 where the stencil fits, or else the next row that is worth a try: down to there the lowest row of the board
     * that is in the way stays in the way.
     */
    private int blockedBelow(Stencil stencil, int column, int y) {
        int foot = Math.min(stencil.height(), rows.size() - y) - 1;
        for (int i = foot; i >= 0; i--) {
            BitSet taken = rows.get(y + i);
            if (blocked(stencil.row(i), column, taken)) {
                int above = i - 1;
                while (above >= 0 && blocked(stencil.row(above), column, taken)) {
                    above--;
                }
                return y + i - above;
            }
        }
        return -1;
    }

    private static boolean blocked(int[] runs, int column, BitSet row) {
        for (int k = 0; k < runs.length; k += 2) {
            int taken = row.nextSetBit(column + runs[k]);
            if (taken >= 0 && taken <= column + runs[k + 1]) {
                return true;
            }
        }
        return false;
    }

    void lay(Stencil stencil, int column, int y) {
        while (rows.size() < y + stencil.height()) {
            rows.add(new BitSet(columns));
        }
        for (int i = 0; i < stencil.height(); i++) {
            int[] runs = stencil.row(i);
            for (int k = 0; k < runs.length; k += 2) {
                rows.get(y + i).set(column + runs[k], column + runs[k + 1] + 1);
            }
        }
    }
}
