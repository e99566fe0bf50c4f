package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import easewright.print.sheet.TileGrid.Tile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A layout that spreads the pieces over as few sheets as were found.
 *
 * @param columns most sheets side by side
 * @param laid    on the plane of the joined sheets
 */
record TilePlan(TileGrid grid, int columns, List<Laid> laid, Set<Tile> tiles) {
    /** Strip along the top and the left of the plane for the control lines, mm. */
    static final double STRIP = 10;

    /** So far inside the sheets' border a line is printed in its full width, mm. */
    private static final double BORDER = 1;

    private static final double ENDLESS = 100_000;

    private static final int PROMISING = 2;
    private static final int MOST_ACROSS = 8;
    /** Widths tried beyond the narrowest. */
    private static final int MORE_ACROSS = 4;

    /** Joining more is no pleasure, and a wrong scale is likelier than such a garment. */
    static final int MOST_SHEETS = 300;

    static TilePlan of(Job job) throws PrintProblem {
        List<Cutout> shapes = job.cutouts();
        PrintOrder order = job.order();
        TileGrid upright = new TileGrid(order.paper().width(), order.paper().height(), order.margin(), order.overlap());
        requireFew(fewest(upright, shapes));
        List<TilePlan> plans = new ArrayList<>();
        for (TileGrid grid : List.of(upright, upright.turned())) {
            int most = most(grid, shapes);
            for (int across = least(grid, shapes); across <= most; across++) {
                plans.add(of(grid, shapes, across, false));
            }
        }
        plans.sort(Comparator.comparingDouble(TilePlan::cost));
        // Patience is spent on the most promising widths only.
        TilePlan best = plans.get(0);
        for (TilePlan plan : plans.subList(0, Math.min(PROMISING, plans.size()))) {
            TilePlan better = of(plan.grid, shapes, plan.columns, true);
            best = better.cost() < best.cost() ? better : best;
        }
        requireFew(best.tiles.size());
        return best;
    }

    private static void requireFew(int sheets) throws PrintProblem {
        if (sheets > MOST_SHEETS) {
            throw PrintProblem.of("print-too-many-sheets").with("count", sheets).with("most", MOST_SHEETS);
        }
    }

    /** Fewer sheets than this cannot do, by the area of the pieces: asked first, since planning thousands takes long. */
    private static int fewest(TileGrid grid, List<Cutout> shapes) {
        double area = shapes.stream()
                .mapToDouble(s -> Math.abs(Outline.polygon(s.corners()).signedArea()))
                .sum();
        return (int) Math.min(1e6, Math.ceil(area / (grid.areaWidth() * grid.areaHeight())));
    }

    private static double usable(TileGrid grid, int across) {
        return grid.joinedWidth(across) - STRIP - BORDER;
    }

    private static int least(TileGrid grid, List<Cutout> shapes) {
        double widest = shapes.stream().mapToDouble(s -> s.box(0).width()).max().orElse(0);
        int across = 1;
        while (usable(grid, across) < widest) {
            across++;
        }
        return across;
    }

    /** All side by side, but for a large pattern no wider than a floor. */
    private static int most(TileGrid grid, List<Cutout> shapes) {
        double all =
                shapes.stream().mapToDouble(s -> s.box(0).width() + Job.GAP).sum();
        int across = least(grid, shapes);
        int widest = Math.min(MOST_ACROSS, across + MORE_ACROSS);
        while (across < widest && usable(grid, across) < all) {
            across++;
        }
        return across;
    }

    private static TilePlan of(TileGrid grid, List<Cutout> shapes, int across, boolean patient) {
        Nest nest = new Nest(shapes, usable(grid, across), ENDLESS, Job.GAP);
        Layout layout =
                nest.best(() -> new Sheets(grid), l -> plan(grid, across, l).cost(), patient);
        return plan(grid, across, layout);
    }

    private static TilePlan plan(TileGrid grid, int across, Layout layout) {
        List<Laid> laid = new ArrayList<>();
        Set<Tile> tiles = new TreeSet<>();
        for (Laid one : layout.laid()) {
            Laid moved = below(one);
            laid.add(moved);
            Box box = Box.around(moved.corners());
            tiles.addAll(grid.needed(Footprint.of(moved.corners()), box.minX(), box.minY()));
        }
        return new TilePlan(grid, across, laid, tiles);
    }

    /** Clear of the strip. */
    private static Laid below(Laid laid) {
        Affine shift = Affine.translation(STRIP, STRIP);
        return new Laid(
                laid.shape(),
                shift.after(laid.place()),
                laid.corners().stream().map(shift::apply).toList());
    }

    /** Sheets first, then joins, then the paper's area. */
    private double cost() {
        long joins = tiles.stream().filter(t -> tiles.contains(t.right())).count()
                + tiles.stream().filter(t -> tiles.contains(t.below())).count();
        double lowest = laid.stream().mapToDouble(Laid::bottom).max().orElse(0);
        return tiles.size() * 1000.0 + joins + lowest * 1e-5;
    }

    int across() {
        return tiles.stream().mapToInt(Tile::column).max().orElse(0) + 1;
    }

    int down() {
        return tiles.stream().mapToInt(Tile::row).max().orElse(0) + 1;
    }

    /** A place costs the sheets that it adds; among those that add as many, the upper left one is best. */
    private static final class Sheets implements Nest.Price {
        /** Price of a sheet: more than any difference in place. */
        private static final double SHEET = 1e5;

        private final TileGrid grid;
        private final Set<Tile> used = new HashSet<>();

        Sheets(TileGrid grid) {
            this.grid = grid;
        }

        @Override
        public double of(Footprint shape, double x, double y, double least) {
            int enough = (int) Math.min(1000, least / SHEET) + 1;
            int more = grid.more(shape, x + STRIP, y + STRIP, used, enough);
            return more * SHEET + y + shape.height() + x * 1e-3;
        }

        @Override
        public void paid(Footprint shape, double x, double y) {
            used.addAll(grid.needed(shape, x + STRIP, y + STRIP));
        }

        /** Every row of sheets up to the first empty one. */
        @Override
        public List<Double> starts() {
            List<Double> starts = new ArrayList<>(List.of(0.0));
            int last = used.stream().mapToInt(Tile::row).max().orElse(-1);
            for (int row = 1; row <= last + 1; row++) {
                starts.add(grid.own(new Tile(row, 0)).minY() + BORDER - STRIP);
            }
            return starts;
        }
    }
}
