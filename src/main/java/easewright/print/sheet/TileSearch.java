package easewright.print.sheet;

import easewright.geom.Outline;
import easewright.print.sheet.Nest.Layout;
import easewright.print.sheet.TileGrid.Tile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Looks for the handiest of the plans that need about the fewest sheets: a long strip of joined paper lies on no table.
 * Strips of several widths are filled, and each again in less and less length.
 */
final class TileSearch {
    /** So far inside the sheets' border a line is printed in its full width, mm. */
    private static final double BORDER = 1;

    private static final double ENDLESS = 100_000;

    /** A handier plan may take this part more sheets than the fewest, and one in any case. */
    private static final double MORE = 0.1;

    /** Pieces are turned upside down only where more than this part of the paper is saved. */
    static final double WORTH_TURNING = 0.1;

    /** Up to so many pieces, every width is tried with patience. */
    private static final int FEW = 5;

    private static final int SOME = 12;

    /** With more pieces, so many widths of either way up the paper are looked at, and so many of them closely. */
    private static final int WIDTHS = 5;

    private static final int PROMISING = 3;

    /** Joining more is no pleasure, and a wrong scale is likelier than such a garment. */
    private static final int MOST_SHEETS = 300;

    private final TileGrid upright;
    private final List<Cutout> shapes;
    private final List<Found> found = new ArrayList<>();

    private TileSearch(TileGrid upright, List<Cutout> shapes) {
        this.upright = upright;
        this.shapes = shapes;
    }

    /** A plan, and how many sheets wide the strip was in which it was found. */
    private record Found(TilePlan plan, int across) {
        int sheets() {
            return plan.tiles().size();
        }

        TileGrid grid() {
            return plan.grid();
        }
    }

    static TilePlan plan(Job job) throws PrintProblem {
        PrintOrder order = job.order();
        TileGrid grid = new TileGrid(order.paper().width(), order.paper().height(), order.margin(), order.overlap());
        TileSearch search = new TileSearch(grid, job.cutouts(false));
        // By the area of the pieces at first, since planning thousands of sheets takes long.
        requireFew(search.least());
        search.look();
        TileSearch turning = new TileSearch(grid, job.cutouts(true));
        turning.add(search.cheapest().grid(), search.cheapest().across, ENDLESS, Effort.SOME);
        boolean promising =
                isWorth(turning.cheapest().sheets(), search.cheapest().sheets());
        TilePlan plan = search.handiest();
        if (promising) {
            turning.look();
            TilePlan turned = turning.handiest();
            plan = isWorth(turned.tiles().size(), plan.tiles().size()) ? turned : plan;
        }
        requireFew(plan.tiles().size());
        return plan;
    }

    private static boolean isWorth(int turned, int asDrawn) {
        return turned < (1 - WORTH_TURNING) * asDrawn;
    }

    private static void requireFew(int sheets) throws PrintProblem {
        if (sheets > MOST_SHEETS) {
            throw PrintProblem.of("print-too-many-sheets").with("count", sheets).with("most", MOST_SHEETS);
        }
    }

    /** Fewer sheets than this cannot do, by the area of the pieces. */
    private int least() {
        double area = shapes.stream()
                .mapToDouble(s -> Math.abs(Outline.polygon(s.corners()).signedArea()))
                .sum();
        return (int) Math.min(1e6, Math.ceil(area / (upright.areaWidth() * upright.areaHeight())));
    }

    /** Fills endless strips of several widths. */
    private void look() {
        for (TileGrid grid : List.of(upright, upright.turned())) {
            int from = narrowest(grid);
            int all = widest(grid) - from + 1;
            int tries = shapes.size() <= FEW ? all : Math.min(all, WIDTHS);
            for (int i = 0; i < tries; i++) {
                add(grid, from + (tries == 1 ? 0 : i * (all - 1) / (tries - 1)), ENDLESS, Effort.SOME);
            }
        }
    }

    /** Fills the strips again, in less and less length, and chooses. */
    private TilePlan handiest() {
        List<Found> first = found.stream()
                .sorted(Comparator.comparing(Found::plan, TilePlan.HANDIEST))
                .limit(shapes.size() <= FEW ? Integer.MAX_VALUE : shapes.size() <= SOME ? 2 * PROMISING : PROMISING)
                .toList();
        for (Found one : first) {
            lower(one, shapes.size() <= SOME ? Effort.MUCH : Effort.MORE);
        }
        int fewest = cheapest().sheets();
        int most = fewest + Math.max(1, (int) (fewest * MORE));
        return found.stream()
                .map(Found::plan)
                .filter(p -> p.tiles().size() <= most)
                .min(TilePlan.HANDIEST)
                .orElseThrow();
    }

    /** Looks for the least length by halves, as if what is enough for a layout were enough for every longer one. */
    private void lower(Found start, Effort effort) {
        TileGrid grid = start.grid();
        int down = start.plan.down();
        if (add(grid, start.across, ENDLESS, effort)) {
            down = Math.min(down, found.get(found.size() - 1).plan.down());
        }
        int low = Math.max(start.sheets() / start.across, grid.rowsWithin(grid.joinedWidth(start.across) / 2));
        while (down - low > 1 && grid.joinedHeight(down) > TilePlan.TABLE) {
            int middle = (low + down) / 2;
            if (add(grid, start.across, grid.joinedHeight(middle) - TilePlan.STRIP - BORDER, effort)) {
                down = found.get(found.size() - 1).plan.down();
            } else {
                low = middle;
            }
        }
    }

    private enum Effort {
        SOME,
        MORE,
        MUCH
    }

    /** Whether all pieces find a place there. */
    private boolean add(TileGrid grid, int across, double longest, Effort effort) {
        Nest nest = new Nest(shapes, usable(grid, across), longest, Job.GAP);
        List<Supplier<Nest.Price>> prices =
                List.of(() -> new Sheets(grid, 1e-3), () -> new Sheets(grid, 1e3), Nest.Length::new);
        Optional<Layout> best = prices.stream()
                .limit(effort == Effort.SOME ? 1 : prices.size())
                .map(price -> nest.best(price, l -> score(grid, l), effort == Effort.MUCH))
                .filter(l -> l.left().isEmpty())
                .min(Comparator.comparingDouble(l -> score(grid, l)));
        best.ifPresent(l -> found.add(new Found(TilePlan.of(grid, l), across)));
        return best.isPresent();
    }

    private static double score(TileGrid grid, Layout layout) {
        TilePlan plan = TilePlan.of(grid, layout);
        return layout.left().size() * 1e9 + plan.tiles().size() * 1e5 + plan.reach();
    }

    private Found cheapest() {
        return found.stream().min(Comparator.comparingInt(Found::sheets)).orElseThrow();
    }

    private static double usable(TileGrid grid, int across) {
        return grid.joinedWidth(across) - TilePlan.STRIP - BORDER;
    }

    private int narrowest(TileGrid grid) {
        double widest = shapes.stream().mapToDouble(s -> s.box(0).width()).max().orElse(0);
        int across = 1;
        while (usable(grid, across) < widest) {
            across++;
        }
        return across;
    }

    /** All side by side, but no wider than a table or, for a large pattern, than a square that it would fill. */
    private int widest(TileGrid grid) {
        double all =
                shapes.stream().mapToDouble(s -> s.box(0).width() + Job.GAP).sum();
        double area = shapes.stream()
                .mapToDouble(s -> s.box(0).width() * s.box(0).height())
                .sum();
        double widest = Math.max(TilePlan.TABLE, Math.sqrt(area));
        int across = narrowest(grid);
        while (grid.joinedWidth(across + 1) <= widest && usable(grid, across) < all) {
            across++;
        }
        return across;
    }

    /** A place costs the sheets that it adds; among those that add as many, the upper left one is best. */
    private static final class Sheets implements Nest.Price {
        /** Price of a sheet: more than any difference in place. */
        private static final double SHEET = 1e5;

        private final TileGrid grid;
        private final double sideways;
        private final Set<Tile> used = new HashSet<>();

        /** @param sideways what a step to the right costs, where one down costs 1 */
        Sheets(TileGrid grid, double sideways) {
            this.grid = grid;
            this.sideways = sideways;
        }

        @Override
        public double of(Footprint shape, double x, double y, double least) {
            int enough = (int) Math.min(1000, least / SHEET) + 1;
            int more = grid.more(shape, x + TilePlan.STRIP, y + TilePlan.STRIP, used, enough);
            return more * SHEET + (y + shape.height() + x * sideways) / (1 + sideways);
        }

        @Override
        public void paid(Footprint shape, double x, double y) {
            used.addAll(grid.needed(shape, x + TilePlan.STRIP, y + TilePlan.STRIP));
        }

        /** Every row of sheets up to the first empty one. */
        @Override
        public List<Double> starts() {
            List<Double> starts = new ArrayList<>(List.of(0.0));
            int last = used.stream().mapToInt(Tile::row).max().orElse(-1);
            for (int row = 1; row <= last + 1; row++) {
                starts.add(grid.own(new Tile(row, 0)).minY() + BORDER - TilePlan.STRIP);
            }
            return starts;
        }
    }
}
