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
import java.util.HashMap;
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

    /** Between a diamond and its letters, mm. */
    private static final double AIR = 1.6;

    /** How far from a join the base line of words in its strip lies, mm. */
    private static final double AWAY = 3.8;

    /** A sign may stand so far from the middle of its join, as a part of the join's length. */
    private static final double FARTHEST = 0.44;

    /** Distance of the places along a join that are tried, mm. */
    private static final double STEP = 3;

    /** How far along the join from its diamond a letter may stand, mm, the best first. */
    private static final double[] ASIDE = {0, 5.5, -5.5};

    /** How far from the sign of its join the words about the neighbour may stand, mm, the best first. */
    private static final double[] BESIDE = {26, -26, 40, -40, 55, -55, 70, -70, 85, -85};

    private static final double WORDS = 2.8;
    private static final double FOOT = 3.2;

    private final Job job;
    private final TilePlan plan;
    private final Joins joins;
    private final Lines lines;
    private final Map<String, Sign> signs = new HashMap<>();

    SheetEdges(Job job, TilePlan plan, Joins joins, Lines lines) {
        this.job = job;
        this.plan = plan;
        this.joins = joins;
        this.lines = lines;
    }

    Picture picture(Tile tile) {
        Pencil pencil = new Pencil();
        Box area = plan.grid().area(tile);
        Point corner = new Point(area.minX(), area.minY());
        joins.left(tile).ifPresent(join -> {
            trim(pencil, corner, new Point(area.minX(), area.maxY()), new Point(1, 0), sign(tile.left(), false));
            draw(pencil, join, sign(tile.left(), false), false, true);
        });
        joins.above(tile).ifPresent(join -> {
            trim(pencil, corner, new Point(area.maxX(), area.minY()), new Point(0, 1), sign(tile.above(), true));
            draw(pencil, join, sign(tile.above(), true), true, true);
        });
        joins.right(tile).ifPresent(join -> {
            double x = plan.grid().area(tile.right()).minX();
            pencil.line(x, area.minY(), x, area.maxY(), Pen.JOIN);
            draw(pencil, join, sign(tile, false), false, false);
            neighbour(pencil, tile, tile.right(), false);
        });
        joins.below(tile).ifPresent(join -> {
            double y = plan.grid().area(tile.below()).minY();
            pencil.line(area.minX(), y, area.maxX(), y, Pen.JOIN);
            draw(pencil, join, sign(tile, true), true, false);
            neighbour(pencil, tile, tile.below(), true);
        });
        foot(pencil, tile, area);
        return pencil.picture();
    }

    private void trim(Pencil pencil, Point from, Point to, Point inward, Sign sign) {
        pencil.line(from, to, Pen.TRIM);
        double room = radius() + 2 * AIR + LETTER;
        Scissors.draw(pencil, from, to, inward, lines, List.of(around(sign.at, room, room)));
    }

    /**
     * Where the sign of a join stands, on both sheets at the same place.
     *
     * @param at     middle of the diamond
     * @param before how far aside the letter stands on the left or upper sheet, mm
     * @param after  the same on the other sheet
     * @param crossed how much is drawn where it stands
     */
    private record Sign(Point at, double before, double after, int crossed) {}

    /** @param below of the join with the sheet below, else with the one to the right */
    private Sign sign(Tile tile, boolean below) {
        String join = (below ? joins.below(tile) : joins.right(tile)).orElseThrow();
        return signs.computeIfAbsent(join, j -> clearest(j, tile, below));
    }

    /** The nearest to the middle of the join of those that least stand on what is drawn. */
    private Sign clearest(String join, Tile tile, boolean below) {
        Box area = plan.grid().area(tile);
        Point middle = below
                ? new Point(area.centre().x(), plan.grid().area(tile.below()).minY())
                : new Point(plan.grid().area(tile.right()).minX(), area.centre().y());
        double most = FARTHEST * (below ? area.width() : area.height());
        Sign best = null;
        for (double along = 0; along < most; along += STEP) {
            for (double each : along == 0 ? new double[] {0} : new double[] {-along, along}) {
                Sign sign = at(middle.plus(below ? new Point(each, 0) : new Point(0, each)), join, below);
                if (best == null || sign.crossed < best.crossed) {
                    best = sign;
                }
            }
            if (best.crossed == 0) {
                break;
            }
        }
        return best;
    }

    private Sign at(Point at, String join, boolean below) {
        double before = leastCrossed(at, join, below, false);
        double after = leastCrossed(at, join, below, true);
        int crossed = lines.crossing(around(at, radius(), radius()))
                + lines.crossing(letterBox(at, join, below, false, before))
                + lines.crossing(letterBox(at, join, below, true, after));
        return new Sign(at, before, after, crossed);
    }

    private double leastCrossed(Point at, String join, boolean below, boolean after) {
        double best = 0;
        int least = Integer.MAX_VALUE;
        for (double aside : ASIDE) {
            int crossed = lines.crossing(letterBox(at, join, below, after, aside));
            if (crossed < least) {
                least = crossed;
                best = aside;
            }
        }
        return best;
    }

    /** Middle of a letter beside its diamond. */
    private Point letter(Point at, String join, boolean below, boolean after, double aside) {
        double half = below ? LETTER * 0.4 : width(join) / 2;
        double away = (radius() + AIR + half) * (after ? 1 : -1);
        return at.plus(below ? new Point(aside, away) : new Point(away, aside));
    }

    private static double width(String join) {
        return Lettering.of(true).width(join, LETTER);
    }

    private Box letterBox(Point at, String join, boolean below, boolean after, double aside) {
        return around(letter(at, join, below, after, aside), width(join) / 2, LETTER * 0.4);
    }

    private static Box around(Point at, double wide, double high) {
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
        Point sign = sign(tile, below).at;
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
            pencil.write(text, chosen, WORDS, Anchor.MIDDLE, below ? 0 : -Math.PI / 2, false, Tone.DARK);
        }
    }

    /** Which sheet this is, in words, at its foot; without the pattern's name where there is no room beside the lines. */
    private void foot(Pencil pencil, Tile tile, Box area) {
        double lift = joins.below(tile).isPresent() ? plan.grid().overlap() : 0;
        double y = area.maxY() - lift - FOOT * 0.85;
        Optional<Box> sign = joins.below(tile).map(join -> {
            Sign s = sign(tile, true);
            Box letter = letterBox(s.at, join, true, false, s.before);
            return around(s.at, radius() + 1, radius() + 1).union(letter.grown(1));
        });
        Map<String, Object> said = Map.of(
                "number", joins.number(tile),
                "count", plan.tiles().size(),
                "name", job.order().name());
        double first = area.minX() + TilePlan.STRIP + 3;
        String text = "";
        for (String key : List.of("print.sheet", "print.sheet.short")) {
            text = job.words().of(key, said);
            double wide = Lettering.of(false).width(text, FOOT);
            for (double x = first; x < area.maxX() - plan.grid().overlap() - wide; x += FOOT) {
                if (isClear(new Box(x, y - FOOT, x + wide, y), sign)) {
                    pencil.write(text, x, y, FOOT, Tone.DARK);
                    return;
                }
            }
        }
        pencil.write(text, first, y, FOOT, Tone.DARK);
    }

    private boolean isClear(Box words, Optional<Box> sign) {
        return lines.isClear(words) && sign.filter(words::overlaps).isEmpty();
    }

    /** A diamond on the line of a join with its letter on both sides; each sheet shows what lies on its own part. */
    private void draw(Pencil pencil, String join, Sign sign, boolean below, boolean after) {
        double r = radius();
        Point along = below ? new Point(r, 0) : new Point(0, r);
        Point inward = below ? new Point(0, r) : new Point(r, 0);
        List<Point> corners = after
                ? List.of(sign.at.minus(along), sign.at.plus(inward), sign.at.plus(along))
                : List.of(sign.at.minus(along), sign.at.plus(inward), sign.at.plus(along), sign.at.minus(inward));
        pencil.fill(Outline.polygon(corners), Tone.DARK);
        Point base = letter(sign.at, join, below, after, after ? sign.after : sign.before)
                .plus(new Point(0, LETTER * 0.36));
        pencil.write(join, base, LETTER, Anchor.MIDDLE, 0, true, Tone.DARK);
    }
}
