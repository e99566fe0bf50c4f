package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Lays shapes side by side on a strip of a given width, without overlap and at least a gap apart. A heuristic: shapes
 * are laid one after the other, each where it costs least; several orders are tried and the best kept. It turns shapes
 * only as they allow, so the grain stays. The result fits, but a patient hand may find a shorter one.
 */
final class Nest {
    /** Aimed-at size of a square of the grid, mm; coarser where there are many shapes. */
    private static final double CELL = 7.5;

    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    private static final int MANY = 40;
    /** Orders tried at random besides the sorted ones: fewer for more shapes, since each then takes longer. */
    private static final int SHUFFLES = 16;

    private static final int FEW_SHUFFLES = 3;

    private final List<Cutout> shapes;
    private final double longest;
    private final double gap;
    private final double cell;
    private final int columns;
    private final List<List<Stencil>> stencils = new ArrayList<>();
    private final List<List<Footprint>> footprints = new ArrayList<>();

    /**
     * @param width   of the strip, mm
     * @param longest most length, mm
     * @param gap     least distance between shapes, mm
     */
    Nest(List<Cutout> shapes, double width, double longest, double gap) {
        this.shapes = List.copyOf(shapes);
        this.longest = longest;
        this.gap = gap;
        double aim = shapes.size() > MANY ? 2 * CELL : CELL;
        columns = (int) Math.max(1, Math.round((width + gap) / aim));
        cell = (width + gap) / columns;
        for (Cutout shape : shapes) {
            List<Stencil> ways = new ArrayList<>();
            List<Footprint> prints = new ArrayList<>();
            for (int turn = 0; turn < shape.turns().size(); turn++) {
                ways.add(Stencil.of(shape.turned(turn), cell, gap));
                prints.add(Footprint.of(shape.turned(turn)));
            }
            stencils.add(ways);
            footprints.add(prints);
        }
    }

    /**
     * Where one shape lies.
     *
     * @param shape its number in the list given
     * @param place from the shape's own coordinates onto the strip
     */
    record Laid(int shape, Affine place, List<Point> corners) {
        double bottom() {
            return corners.stream().mapToDouble(Point::y).max().orElse(0);
        }
    }

    /** What has been laid, in order of laying, and the numbers of the shapes that did not fit. */
    record Layout(List<Laid> laid, List<Integer> left) {
        double length() {
            return laid.stream().mapToDouble(Laid::bottom).max().orElse(0);
        }
    }

    /** What a place for a shape costs, given what lies already; less is better. */
    interface Price {
        /**
         * What it costs to lay the shape with its left side at x and its top at y.
         *
         * @param least what the best place found so far costs: a price that is higher need not be exact
         */
        double of(Footprint shape, double x, double y, double least);

        /** The place was taken. */
        void paid(Footprint shape, double x, double y);

        /** Where down the strip to start looking, mm: at each the next place that is free is tried. */
        default List<Double> starts() {
            return List.of(0.0);
        }
    }

    /** The shortest layout found. */
    Layout shortest() {
        return best(Length::new, l -> l.left().size() * 1e9 + l.length(), true);
    }

    /**
     * The best layout found.
     *
     * @param prices makes a fresh price for each try
     * @param score  of a whole layout; less is better
     * @param patient whether to try many orders rather than the few best ones
     */
    Layout best(Supplier<? extends Price> prices, Function<Layout, Double> score, boolean patient) {
        Layout best = null;
        double least = Double.POSITIVE_INFINITY;
        for (List<Integer> order : orders(patient)) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            Layout layout = laid(order, prices.get());
            double cost = score.apply(layout);
            if (cost < least - 1e-9) {
                least = cost;
                best = layout;
            }
        }
        return best;
    }

    private Set<List<Integer>> orders(boolean patient) {
        List<Box> boxes = shapes.stream().map(s -> s.box(0)).toList();
        Set<List<Integer>> orders = new LinkedHashSet<>();
        orders.add(sorted(i -> boxes.get(i).height()));
        orders.add(sorted(i -> boxes.get(i).width() * boxes.get(i).height()));
        orders.add(sorted(i -> boxes.get(i).width()));
        if (patient && shapes.size() <= MANY) {
            // The same shuffles on every run: a print must not differ from the preview.
            Random random = new Random(1);
            for (int i = 0; i < Math.max(FEW_SHUFFLES, SHUFFLES - shapes.size()); i++) {
                List<Integer> shuffled = sorted(s -> 0.0);
                Collections.shuffle(shuffled, random);
                orders.add(shuffled);
            }
        }
        return orders;
    }

    /** Largest first; shapes bound to the left border before all others. */
    private List<Integer> sorted(Function<Integer, Double> size) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer, Boolean>comparing(i -> !shapes.get(i).leftFirst())
                .thenComparing(Comparator.comparing(size).reversed()));
        return order;
    }

    private Layout laid(List<Integer> order, Price price) {
        Board board = new Board(columns, (int) Math.floor((longest + gap) / cell + 1e-9));
        List<Laid> laid = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int shape : order) {
            Spot spot = cheapest(board, shape, price);
            if (spot == null) {
                left.add(shape);
            } else {
                board.lay(stencils.get(shape).get(spot.turn), spot.column, spot.row);
                price.paid(footprints.get(shape).get(spot.turn), spot.column * cell, spot.row * cell);
                laid.add(at(shape, spot.turn, spot.column, spot.row));
            }
        }
        return new Layout(laid, left);
    }

    private record Spot(int turn, int column, int row, double cost) {}

    private Spot cheapest(Board board, int shape, Price price) {
        Spot best = null;
        Cutout cutout = shapes.get(shape);
        List<Double> starts = price.starts();
        for (int turn = 0; turn < cutout.turns().size(); turn++) {
            Stencil stencil = stencils.get(shape).get(turn);
            Footprint footprint = footprints.get(shape).get(turn);
            int rightmost = cutout.leftFirst() ? 0 : columns - stencil.columns();
            for (int column = 0; column <= rightmost; column++) {
                int last = -1;
                for (double start : starts) {
                    int row = board.lowest(stencil, column, Math.max(last + 1, Stencil.cells(start, cell)));
                    if (row < 0) {
                        break;
                    }
                    last = row;
                    double cost = price.of(footprint, column * cell, row * cell, best == null ? ENDLESS : best.cost);
                    if (best == null || cost < best.cost - 1e-9) {
                        best = new Spot(turn, column, row, cost);
                    }
                }
            }
        }
        return best;
    }

    private Laid at(int shape, int turn, int column, int row) {
        Cutout cutout = shapes.get(shape);
        Box box = cutout.box(turn);
        Affine place = Affine.translation(column * cell - box.minX(), row * cell - box.minY())
                .after(cutout.turns().get(turn));
        return new Laid(
                shape, place, cutout.corners().stream().map(place::apply).toList());
    }

    /** Higher up is better, then farther left. */
    static final class Length implements Price {
        @Override
        public double of(Footprint shape, double x, double y, double least) {
            return y + shape.height() + x * 1e-4;
        }

        @Override
        public void paid(Footprint shape, double x, double y) {
            // Only where a shape ends counts, not what lies there already.
        }
    }
}
