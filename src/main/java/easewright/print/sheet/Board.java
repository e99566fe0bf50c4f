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

    /** −1 where the stencil fits, or else the next row that is worth a try. */
    private int blockedBelow(Stencil stencil, int column, int y) {
        for (int i = stencil.height() - 1; i >= 0; i--) {
            if (y + i < rows.size() && blocked(stencil.row(i), column, rows.get(y + i))) {
                return y + 1;
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

    int columns() {
        return columns;
    }
}
