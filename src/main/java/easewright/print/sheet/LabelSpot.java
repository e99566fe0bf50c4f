package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;

/** Finds room for a label: a clear rectangle inside a piece, as near to its middle as may be. */
final class LabelSpot {
    private static final double CELL = 3;

    private final Box box;
    private final int columns;
    private final int rows;
    /** Number of squares that are not free above and left of a corner of the grid. */
    private final int[][] taken;

    /**
     * @param corners   the shape in which to stay
     * @param obstacles stretches to stay clear of, as pairs of ends
     * @param clear     how far to stay away from both, mm
     */
    LabelSpot(List<Point> corners, List<Point[]> obstacles, double clear) {
        box = Box.around(corners);
        columns = Stencil.cells(box.width(), CELL);
        rows = Stencil.cells(box.height(), CELL);
        boolean[][] free = new boolean[rows][columns];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                free[i][j] = inside(corners, middle(i, j));
            }
        }
        for (int k = 0; k < corners.size(); k++) {
            block(free, corners.get(k), corners.get((k + 1) % corners.size()), clear);
        }
        for (Point[] ends : obstacles) {
            block(free, ends[0], ends[1], clear);
        }
        taken = new int[rows + 1][columns + 1];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                taken[i + 1][j + 1] = taken[i][j + 1] + taken[i + 1][j] - taken[i][j] + (free[i][j] ? 0 : 1);
            }
        }
    }

    private Point middle(int row, int column) {
        return new Point(box.minX() + (column + 0.5) * CELL, box.minY() + (row + 0.5) * CELL);
    }

    private static boolean inside(List<Point> corners, Point p) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if (a.y() > p.y() != b.y() > p.y() && a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) > p.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    private void block(boolean[][] free, Point from, Point to, double clear) {
        int steps = (int) Math.max(1, Math.ceil(from.distance(to) / CELL));
        for (int k = 0; k <= steps; k++) {
            Point p = from.towards(to, (double) k / steps);
            int top = (int) Math.floor((p.y() - clear - box.minY()) / CELL);
            int bottom = (int) Math.floor((p.y() + clear - box.minY()) / CELL);
            int left = (int) Math.floor((p.x() - clear - box.minX()) / CELL);
            int right = (int) Math.floor((p.x() + clear - box.minX()) / CELL);
            for (int i = Math.max(0, top); i <= Math.min(rows - 1, bottom); i++) {
                for (int j = Math.max(0, left); j <= Math.min(columns - 1, right); j++) {
                    free[i][j] = false;
                }
            }
        }
    }

    /** The middle of a clear rectangle of the size, or null where there is none. */
    Point find(double width, double height) {
        int w = Stencil.cells(width, CELL);
        int h = Stencil.cells(height, CELL);
        Point best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + h <= rows; i++) {
            for (int j = 0; j + w <= columns; j++) {
                int blocked = taken[i + h][j + w] - taken[i][j + w] - taken[i + h][j] + taken[i][j];
                if (blocked == 0) {
                    Point at = new Point(box.minX() + (j + w / 2.0) * CELL, box.minY() + (i + h / 2.0) * CELL);
                    double away = at.distance(box.centre());
                    if (away < least) {
                        least = away;
                        best = at;
                    }
                }
            }
        }
        return best;
    }
}
