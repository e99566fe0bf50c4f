package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.print.sheet.TileGrid.Tile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a sheet is cut and where its neighbours lie, with the signs of the joins, on the plane of the joined sheets.
 * Signs and words stand beside the lines of the pieces where there is room.
 */
final class SheetEdges {
    private static final double DIAMOND = 3.5;
    private static final double LETTER = 4.2;

    /** How far a join's letter stands from its diamond, mm. */
    private static final double AWAY = 3.4;

    /** How far from the middle of its join a sign may stand, as parts of the join's length, the best first. */
    private static final double[] ALONG = {0, -0.08, 0.08, -0.16, 0.16, -0.24, 0.24, -0.32, 0.32, -0.4, 0.4};

    /** How far from the sign of its join the words about the neighbour may stand, mm, the best first. */
    private static final double[] BESIDE = {26, -26, 40, -40, 55, -55, 70, -70, 85, -85};

    private static final double WORDS = 2.4;
    private static final double FOOT = 2.8;

    private final Job job;
    private final TilePlan plan;
    private final Joins joins;
    private final Lines lines;

    SheetEdges(Job job, TilePlan plan, Joins joins, Lines lines) {
        this.job = job;
        this.plan = plan;
        this.joins = joins;
        this.lines = lines;
    }

    Picture picture(Tile tile) {
        Pencil pencil = new Pencil();
        Box area = plan.grid().area(tile);
        joins.left(tile).ifPresent(join -> {
            pencil.line(area.minX(), area.minY(), area.minX(), area.maxY(), Pen.TRIM);
            sign(pencil, join, at(tile.left(), false), false, true);
        });
        joins.above(tile).ifPresent(join -> {
            pencil.line(area.minX(), area.minY(), area.maxX(), area.minY(), Pen.TRIM);
            sign(pencil, join, at(tile.above(), true), true, true);
        });
        joins.right(tile).ifPresent(join -> {
            double x = plan.grid().area(tile.right()).minX();
            pencil.line(x, area.minY(), x, area.maxY(), Pen.JOIN);
            sign(pencil, join, at(tile, false), false, false);
            neighbour(pencil, tile, tile.right(), false);
        });
        joins.below(tile).ifPresent(join -> {
            double y = plan.grid().area(tile.below()).minY();
            pencil.line(area.minX(), y, area.maxX(), y, Pen.JOIN);
            sign(pencil, join, at(tile, true), true, false);
            neighbour(pencil, tile, tile.below(), true);
        });
        foot(pencil, tile, area);
        return pencil.picture();
    }

    /**
     * Where the sign of a join stands: on both sheets at the same place.
     *
     * @param below of the join with the sheet below, else with the one to the right
     */
    private Point at(Tile tile, boolean below) {
        Box area = plan.grid().area(tile);
        double line = below
                ? plan.grid().area(tile.below()).minY()
                : plan.grid().area(tile.right()).minX();
        for (double part : ALONG) {
            Point at = below
                    ? new Point(area.centre().x() + part * area.width(), line)
                    : new Point(line, area.centre().y() + part * area.height());
            if (lines.isClear(around(at, below))) {
                return at;
            }
        }
        return below
                ? new Point(area.centre().x(), line)
                : new Point(line, area.centre().y());
    }

    /** What a sign takes with its letters on both sides. */
    private Box around(Point at, boolean below) {
        double across = radius() + AWAY + LETTER;
        double wide = below ? radius() + 1 : across;
        double high = below ? across : radius() + 1;
        return new Box(at.x() - wide, at.y() - high, at.x() + wide, at.y() + high);
    }

    private double radius() {
        return Math.min(DIAMOND, Math.max(1, job.order().overlap() / 2));
    }

    /** Which sheet comes here, in the strip that it will cover. */
    private void neighbour(Pencil pencil, Tile tile, Tile next, boolean below) {
        String text = job.words().of("print.lay", Map.of("number", joins.number(next)));
        double half = Lettering.of(false).width(text, WORDS) / 2;
        Box area = plan.grid().area(tile);
        Point sign = at(tile, below);
        Point chosen = null;
        for (double along : BESIDE) {
            Point at = sign.plus(below ? new Point(along, AWAY) : new Point(AWAY, along));
            Box box = below
                    ? new Box(at.x() - half, at.y() - WORDS, at.x() + half, at.y())
                    : new Box(at.x() - WORDS, at.y() - half, at.x(), at.y() + half);
            boolean within = box.minX() > area.minX()
                    && box.maxX() < area.maxX()
                    && box.minY() > area.minY()
                    && box.maxY() < area.maxY();
            if (within && (chosen == null || lines.isClear(box))) {
                chosen = at;
                if (lines.isClear(box)) {
                    break;
                }
            }
        }
        if (chosen != null) {
            pencil.write(text, chosen, WORDS, Anchor.MIDDLE, below ? 0 : -Math.PI / 2, false, Tone.MID);
        }
    }

    /** Which sheet this is, in words, at its foot. */
    private void foot(Pencil pencil, Tile tile, Box area) {
        String text = job.words()
                .of(
                        "print.sheet",
                        Map.of(
                                "number", joins.number(tile),
                                "count", plan.tiles().size(),
                                "name", job.order().name()));
        double wide = Lettering.of(false).width(text, FOOT);
        double lift = joins.below(tile).isPresent() ? plan.grid().overlap() : 0;
        double y = area.maxY() - lift - FOOT * 0.85;
        Optional<Box> sign = joins.below(tile).map(join -> around(at(tile, true), true));
        double first = area.minX() + TilePlan.STRIP + 3;
        double last = area.maxX() - plan.grid().overlap() - wide;
        double x = first;
        while (x < last && !isClear(new Box(x, y - FOOT, x + wide, y), sign)) {
            x += FOOT;
        }
        pencil.write(text, x < last ? x : first, y, FOOT, Tone.MID);
    }

    private boolean isClear(Box words, Optional<Box> sign) {
        return lines.isClear(words) && sign.filter(words::overlaps).isEmpty();
    }

    /** A diamond on the line of a join with its letter on both sides; each sheet shows what lies on its own part. */
    private void sign(Pencil pencil, String join, Point at, boolean across, boolean halfOnly) {
        double r = radius();
        Point along = across ? new Point(r, 0) : new Point(0, r);
        Point inward = across ? new Point(0, r) : new Point(r, 0);
        List<Point> corners = halfOnly
                ? List.of(at.minus(along), at.plus(inward), at.plus(along))
                : List.of(at.minus(along), at.plus(inward), at.plus(along), at.minus(inward));
        pencil.fill(Outline.polygon(corners), Tone.DARK);
        Point letter = inward.unit().times(r + AWAY).plus(new Point(0, 1.5));
        Point before = inward.unit().times(-r - AWAY).plus(new Point(0, 1.5));
        pencil.write(join, at.plus(halfOnly ? letter : before), LETTER, Anchor.MIDDLE, 0, true, Tone.DARK);
    }
}
