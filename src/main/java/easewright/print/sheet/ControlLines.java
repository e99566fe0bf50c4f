package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.sheet.TileGrid.Tile;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lines that prove joined sheets: two long ones along the first row and the first column, and where sheets lie far
 * from both, short ones there, one across and one down.
 *
 * @param across along the first row
 * @param down   along the first column
 * @param far    short ones; empty where none is needed or there is no room
 */
record ControlLines(ControlLine across, ControlLine down, List<ControlLine> far) {
    /** A sheet whose middle lies farther than this from both long lines wants lines of its own, mm. */
    private static final double FAR = 600;

    /** Distance of the places that are tried, mm. */
    private static final double STEP = 10;

    /** Least length on each of two sheets for a line to prove their joining, mm. */
    private static final double HOLD = 30;

    /** So many of the farthest sheets are looked at. */
    private static final int FARTHEST = 6;

    ControlLines {
        far = List.copyOf(far);
    }

    /** The two long ones. */
    static ControlLines of(TilePlan plan, LengthUnit unit) {
        TileGrid grid = plan.grid();
        Tile first = plan.tiles().iterator().next();
        Box own = grid.own(first);
        double in = TilePlan.STRIP / 2;
        double right = grid.area(plan.last(first, Tile::right)).maxX() - in;
        double foot = grid.area(plan.last(first, Tile::below)).maxY() - in;
        return new ControlLines(
                ControlLine.of(new Point(own.minX() + TilePlan.STRIP, own.minY() + in), false, right, unit),
                ControlLine.of(new Point(own.minX() + in, own.minY() + TilePlan.STRIP), true, foot, unit),
                List.of());
    }

    List<ControlLine> all() {
        List<ControlLine> all = new ArrayList<>(List.of(across, down));
        all.addAll(far);
        return all;
    }

    /**
     * The same, with short ones where sheets lie far from the long ones.
     *
     * @param drawn what is on the sheets already
     */
    ControlLines withFar(TilePlan plan, Lines drawn, LengthUnit unit) {
        List<Tile> sheets = plan.tiles().stream()
                .filter(t -> away(plan, t) > FAR)
                .sorted(Comparator.comparingDouble((Tile t) -> -away(plan, t)))
                .limit(FARTHEST)
                .toList();
        List<ControlLine> added = new ArrayList<>();
        for (boolean down : sheets.isEmpty() ? new boolean[0] : new boolean[] {false, true}) {
            added.stream().map(ControlLine::box).forEach(drawn::add);
            new Search(plan, drawn, sheets, down).find(unit).ifPresent(added::add);
        }
        return new ControlLines(across, down, added);
    }

    private double away(TilePlan plan, Tile tile) {
        Point middle = plan.grid().area(tile).centre();
        return Math.min(across.distance(middle), down.distance(middle));
    }

    /** Looks for room for a short line. */
    private static final class Search {
        private final TilePlan plan;
        private final Lines drawn;
        private final List<Tile> sheets;
        private final boolean down;
        /** What the sheets show, a little within their borders. */
        private final List<Box> areas;

        private final List<Placed> pieces;

        /** A piece, and the upper left corner of its box. */
        private record Placed(Footprint shape, double x, double y) {}

        Search(TilePlan plan, Lines drawn, List<Tile> sheets, boolean down) {
            this.plan = plan;
            this.drawn = drawn;
            this.sheets = sheets;
            this.down = down;
            areas = plan.tiles().stream()
                    .map(t -> plan.grid().area(t).grown(-1))
                    .toList();
            pieces = plan.laid().stream()
                    .map(l -> new Placed(
                            Footprint.of(l.corners()),
                            Box.around(l.corners()).minX(),
                            Box.around(l.corners()).minY()))
                    .toList();
        }

        /** Best beside the pieces and over two sheets: the longer of two lengths first. */
        Optional<ControlLine> find(LengthUnit unit) {
            double[] lengths = unit == LengthUnit.INCH ? new double[] {8 * 25.4, 4 * 25.4} : new double[] {200, 100};
            for (boolean beside : new boolean[] {true, false}) {
                for (boolean joining : new boolean[] {true, false}) {
                    for (double length : lengths) {
                        for (Tile tile : sheets) {
                            Optional<ControlLine> line = on(tile, length, beside, joining);
                            if (line.isPresent()) {
                                return line;
                            }
                        }
                    }
                }
            }
            return Optional.empty();
        }

        /** Ends on the sheet; begins on the one before where it is to prove their joining. */
        private Optional<ControlLine> on(Tile tile, double length, boolean beside, boolean joining) {
            if (joining && !plan.tiles().contains(down ? tile.above() : tile.left())) {
                return Optional.empty();
            }
            Box own = plan.grid().own(tile);
            for (double y = own.maxY() - STEP; y > own.minY(); y -= STEP) {
                for (double x = own.maxX() - STEP; x > own.minX(); x -= STEP) {
                    Point from = down ? new Point(x, y - length) : new Point(x - length, y);
                    ControlLine line = new ControlLine(from, down, length);
                    double before = down ? own.minY() - from.y() : own.minX() - from.x();
                    boolean fits = joining ? before > HOLD && before < length - HOLD : before < 0;
                    if (fits && isFree(line.box(), beside)) {
                        return Optional.of(line);
                    }
                }
            }
            return Optional.empty();
        }

        private boolean isFree(Box box, boolean beside) {
            return isPrinted(box)
                    && drawn.isClear(box)
                    && (!beside || pieces.stream().noneMatch(p -> p.shape.touches(p.x, p.y, box)));
        }

        /** All of it is, where its corners are: it is smaller than a sheet. */
        private boolean isPrinted(Box box) {
            return corners(box).stream().allMatch(p -> areas.stream().anyMatch(a -> a.contains(p)));
        }

        private static List<Point> corners(Box box) {
            return List.of(
                    new Point(box.minX(), box.minY()),
                    new Point(box.maxX(), box.minY()),
                    new Point(box.minX(), box.maxY()),
                    new Point(box.maxX(), box.maxY()));
        }
    }
}
