package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

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
    /** What is drawn this near to the border of a sheet's own part is shown on its neighbour too, mm. */
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

    /** The sheets on whose own part something of the shape lies. */
    Set<Tile> needed(List<Point> corners) {
        Box box = Box.around(corners).grown(NEAR);
        Set<Tile> needed = new TreeSet<>();
        for (int row = index(box.minY(), stepY()); row <= index(box.maxY(), stepY()); row++) {
            for (int column = index(box.minX(), stepX()); column <= index(box.maxX(), stepX()); column++) {
                Tile tile = new Tile(row, column);
                if (touches(corners, own(tile).grown(NEAR))) {
                    needed.add(tile);
                }
            }
        }
        return needed;
    }

    private int index(double at, double step) {
        return (int) Math.max(0, Math.floor(at / step));
    }

    private static boolean touches(List<Point> corners, Box box) {
        Point middle = box.centre();
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if (crosses(a, b, box)) {
                return true;
            }
            if (a.y() > middle.y() != b.y() > middle.y()
                    && a.x() + (b.x() - a.x()) * (middle.y() - a.y()) / (b.y() - a.y()) > middle.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether any part of the stretch lies in the box. */
    private static boolean crosses(Point a, Point b, Box box) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] range = {0, 1};
        return clipped(-dx, a.x() - box.minX(), range)
                && clipped(dx, box.maxX() - a.x(), range)
                && clipped(-dy, a.y() - box.minY(), range)
                && clipped(dy, box.maxY() - a.y(), range);
    }

    private static boolean clipped(double p, double q, double[] range) {
        if (p == 0) {
            return q >= 0;
        }
        double t = q / p;
        if (p < 0) {
            range[0] = Math.max(range[0], t);
        } else {
            range[1] = Math.min(range[1], t);
        }
        return range[0] <= range[1];
    }
}
