package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * How a plane is cut into sheets. Each sheet shows {@link #areaWidth()} by {@link #areaHeight()}; neighbours both show
 * the strip in which they lie over each other.
 *
 * @param pageWidth  of a sheet of paper, mm
 * @param pageHeight of a sheet of paper, mm
 * @param margin     blank all round, mm
 * @param overlap    width of the strip that neighbours share, mm
 */
record TileGrid(double pageWidth, double pageHeight, double margin, double overlap) {
    /**
     * What is drawn this near to the border of a sheet's own part is shown on its neighbour too, mm: half the width of the
     * widest line, that of a fold, but for a hair that nobody misses. More would cost sheets.
     */
    private static final double NEAR = 0.4;

    /** One sheet's place in the plane. */
    record Tile(int row, int column) implements Comparable<Tile> {
        @Override
        public int compareTo(Tile other) {
            int byRow = Integer.compare(row, other.row);
            return byRow != 0 ? byRow : Integer.compare(column, other.column);
        }

        Tile right() {
            return new Tile(row, column + 1);
        }

        Tile below() {
            return new Tile(row + 1, column);
        }

        Tile left() {
            return new Tile(row, column - 1);
        }

        Tile above() {
            return new Tile(row - 1, column);
        }

        /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Tile t && row == t.row && column == t.column;
        }

        @Override
        public int hashCode() {
            return 31 * row + column;
        }
    }

    double areaWidth() {
        return pageWidth - 2 * margin;
    }

    double areaHeight() {
        return pageHeight - 2 * margin;
    }

    double stepX() {
        return areaWidth() - overlap;
    }

    double stepY() {
        return areaHeight() - overlap;
    }

    TileGrid turned() {
        return new TileGrid(pageHeight, pageWidth, margin, overlap);
    }

    /** Width of so many sheets joined. */
    double joinedWidth(int columns) {
        return columns * stepX() + overlap;
    }

    /** Height of so many sheets joined. */
    double joinedHeight(int rows) {
        return rows * stepY() + overlap;
    }

    /** How many sheets one below the other are no higher than this when joined. */
    int rowsWithin(double height) {
        return (int) Math.max(0, Math.floor((height - overlap) / stepY()));
    }

    /** All that a sheet shows of the plane. */
    Box area(Tile tile) {
        double x = tile.column() * stepX();
        double y = tile.row() * stepY();
        return new Box(x, y, x + areaWidth(), y + areaHeight());
    }

    /** What is the sheet's own: its area without what the sheets to the left and above show as well. */
    Box own(Tile tile) {
        Box area = area(tile);
        return new Box(
                area.minX() + (tile.column() > 0 ? overlap : 0),
                area.minY() + (tile.row() > 0 ? overlap : 0),
                area.maxX(),
                area.maxY());
    }

    /** Both borders of the strips of a box of the plane in which sheets lie over each other, as pairs of ends. */
    List<Point[]> joins(Box box) {
        List<Point[]> joins = new ArrayList<>();
        for (double at : borders(box.minX(), box.maxX(), stepX())) {
            joins.add(new Point[] {new Point(at, box.minY()), new Point(at, box.maxY())});
        }
        for (double at : borders(box.minY(), box.maxY(), stepY())) {
            joins.add(new Point[] {new Point(box.minX(), at), new Point(box.maxX(), at)});
        }
        return joins;
    }

    private List<Double> borders(double from, double to, double step) {
        List<Double> borders = new ArrayList<>();
        for (double at = step; at < to; at += step) {
            for (double border : new double[] {at, at + overlap}) {
                if (border > from && border < to) {
                    borders.add(border);
                }
            }
        }
        return borders;
    }

    /** The sheets on whose own part something of the shape lies, its box at x and y. */
    Set<Tile> needed(Footprint shape, double x, double y) {
        Set<Tile> needed = new TreeSet<>();
        visit(shape, x, y, Set.of(), tile -> !needed.add(tile));
        return needed;
    }

    /** How many sheets besides those used already the shape needs there; counting stops at {@code enough}. */
    int more(Footprint shape, double x, double y, Set<Tile> used, int enough) {
        int[] count = {0};
        visit(shape, x, y, used, tile -> ++count[0] >= enough);
        return count[0];
    }

    /** @param last told each sheet that is needed; says whether that is enough */
    private void visit(Footprint shape, double x, double y, Set<Tile> except, Predicate<Tile> last) {
        for (int row = index(y - overlap - NEAR, stepY()); row <= index(y + shape.height() + NEAR, stepY()); row++) {
            for (int column = index(x - overlap - NEAR, stepX());
                    column <= index(x + shape.width() + NEAR, stepX());
                    column++) {
                Tile tile = new Tile(row, column);
                if (!except.contains(tile) && shape.touches(x, y, own(tile).grown(NEAR)) && last.test(tile)) {
                    return;
                }
            }
        }
    }

    private static int index(double at, double step) {
        return (int) Math.max(0, Math.floor(at / step));
    }
}
