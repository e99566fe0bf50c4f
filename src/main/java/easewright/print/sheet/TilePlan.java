package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import easewright.print.sheet.TileGrid.Tile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * The pieces spread over sheets that are joined.
 *
 * @param laid on the plane of the joined sheets
 */
record TilePlan(TileGrid grid, List<Laid> laid, Set<Tile> tiles) {
    /** Strip along the top and the left of the plane for the control lines, mm. */
    static final double STRIP = 10;

    /** So long may joined sheets be and still lie on a table, mm (a table for six is about 80 by 120 cm: from memory). */
    static final double TABLE = 1200;

    /** So much less must joined sheets reach beyond a table for one more sheet to be worth it, mm. */
    private static final double WORTH_A_SHEET = 100;

    /** What a length that no control line proves costs, where as much beyond a table costs 1. */
    private static final double UNPROVED = 0.5;

    /** Sheets, what reaches beyond a table and what is not proved first; then what is nearest to a square. */
    static final Comparator<TilePlan> HANDIEST = Comparator.comparingDouble(TilePlan::cost)
            .thenComparing(p -> Math.ceil(p.reach() / 10))
            .thenComparing(TilePlan::joins)
            .thenComparing(TilePlan::lowest);

    static TilePlan of(TileGrid grid, Layout layout) {
        List<Laid> laid = new ArrayList<>();
        Set<Tile> tiles = new TreeSet<>();
        for (Laid one : layout.laid()) {
            Laid moved = below(one);
            laid.add(moved);
            Box box = Box.around(moved.corners());
            tiles.addAll(grid.needed(Footprint.of(moved.corners()), box.minX(), box.minY()));
        }
        return new TilePlan(grid, laid, tiles);
    }

    /** Clear of the strip. */
    private static Laid below(Laid laid) {
        Affine shift = Affine.translation(STRIP, STRIP);
        return new Laid(
                laid.shape(),
                shift.after(laid.place()),
                laid.corners().stream().map(shift::apply).toList());
    }

    int across() {
        return tiles.stream().mapToInt(Tile::column).max().orElse(0) + 1;
    }

    int down() {
        return tiles.stream().mapToInt(Tile::row).max().orElse(0) + 1;
    }

    /** The longer side of the joined sheets, mm. */
    double reach() {
        return Math.max(grid.joinedWidth(across()), grid.joinedHeight(down()));
    }

    private double cost() {
        return WORTH_A_SHEET * tiles.size() + Math.max(0, reach() - TABLE) + UNPROVED * unproved();
    }

    /** What the control lines along the first row and the first column fall short of the joined sheets' sides, mm. */
    private double unproved() {
        Tile first = tiles.iterator().next();
        int across = last(first, Tile::right).column() - first.column() + 1;
        int down = last(first, Tile::below).row() - first.row() + 1;
        return (across() - across) * grid.stepX() + (down() - down) * grid.stepY();
    }

    /** The last of an unbroken row of sheets. */
    Tile last(Tile from, UnaryOperator<Tile> next) {
        Tile last = from;
        while (tiles.contains(next.apply(last))) {
            last = next.apply(last);
        }
        return last;
    }

    private long joins() {
        return tiles.stream().filter(t -> tiles.contains(t.right())).count()
                + tiles.stream().filter(t -> tiles.contains(t.below())).count();
    }

    private double lowest() {
        return laid.stream().mapToDouble(Laid::bottom).max().orElse(0);
    }
}
