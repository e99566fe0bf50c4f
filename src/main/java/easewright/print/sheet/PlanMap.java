package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.TileGrid.Tile;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The small map of the sheets on the first page, with the pieces on them. */
final class PlanMap {
    private final Job job;
    private final TilePlan plan;
    private final Joins joins;
    private final ControlLines controls;
    private final boolean numbered;
    private final Pencil pencil = new Pencil();
    /** What the numbers of the sheets and the letters of the joins take of the map. */
    private final List<Box> taken = new ArrayList<>();
    /** The sides of the sheets on the map. */
    private final List<Box> borders = new ArrayList<>();

    private boolean named;

    /**
     * @param room     on the page, mm
     * @param numbered a piece has its number before its name, or alone where the name has no room
     */
    PlanMap(Job job, TilePlan plan, Joins joins, ControlLines controls, Box room, boolean numbered) {
        this.job = job;
        this.plan = plan;
        this.joins = joins;
        this.controls = controls;
        this.numbered = numbered;
        draw(room);
    }

    Picture picture() {
        return pencil.picture();
    }

    /** Whether the whole name of every piece stands on it. */
    boolean namesAll() {
        return named;
    }

    /** The number of a piece, unlike those of the sheets. */
    static String number(int piece, Words words) {
        return words.of("print.plan.piece.number", Map.of("number", piece + 1));
    }

    /** How large the map of the sheets is in a room on the page, to one. */
    static double scale(TilePlan plan, Box room) {
        TileGrid grid = plan.grid();
        return Math.min(
                room.width() / grid.joinedWidth(plan.across()),
                Math.max(10, room.height()) / grid.joinedHeight(plan.down()));
    }

    private void draw(Box room) {
        TileGrid grid = plan.grid();
        double width = grid.joinedWidth(plan.across());
        double height = grid.joinedHeight(plan.down());
        double scale = scale(plan, room);
        double free = Math.max(0, room.height() - height * scale);
        Affine small = Affine.translation(room.minX() + (room.width() - width * scale) / 2, room.minY() + free / 2)
                .after(Affine.scaling(scale, scale));
        for (Laid laid : plan.laid()) {
            PaperPiece paper = job.pieces().get(laid.shape());
            Outline outline =
                    paper.cut().outline().transformed(small.after(laid.place().after(paper.upright())));
            pencil.fill(outline, Tone.PALE).around(outline, Pen.INNER);
        }
        for (Tile tile : plan.tiles()) {
            Box area = shrunk(grid.area(tile), small);
            pencil.box(area, Pen.JOIN);
            borders.add(new Box(area.minX(), area.minY(), area.minX(), area.maxY()));
            borders.add(new Box(area.maxX(), area.minY(), area.maxX(), area.maxY()));
            borders.add(new Box(area.minX(), area.minY(), area.maxX(), area.minY()));
            borders.add(new Box(area.minX(), area.maxY(), area.maxX(), area.maxY()));
        }
        controls.all().forEach(line -> pencil.line(small.apply(line.from()), small.apply(line.to()), Pen.CONTROL));
        for (Tile tile : plan.tiles()) {
            Box area = shrunk(grid.area(tile), small);
            double size = Math.min(4.5, Math.min(area.width(), area.height()) / 3.5);
            String number = String.valueOf(joins.number(tile));
            // Inside of what is glued below the sheet before it, and on white: what is drawn on the pieces does not
            // cross it.
            Box own = shrunk(grid.own(tile), small);
            double left = Math.max(area.minX(), own.minX()) + size * 0.4;
            double base = Math.max(area.minY(), own.minY()) + size * 1.25;
            double wide = Lettering.of(true).width(number, size);
            Box ground = new Box(left, base - size * 0.8, left + wide, base).grown(size * 0.15);
            pencil.fill(ground, Tone.WHITE);
            pencil.writeBold(number, left, base, size, Tone.MID);
            taken.add(ground);
            double letter = Math.min(3, size / 2);
            Point drop = new Point(0, letter * 0.35);
            joins.right(tile)
                    .ifPresent(j -> sign(j, new Point(area.maxX(), area.centre().y()).plus(drop), letter));
            joins.below(tile).ifPresent(j -> sign(j, new Point(area.centre().x(), area.maxY()).plus(drop), letter));
        }
        List<MapNames.Named> pieces = new ArrayList<>();
        for (Laid laid : plan.laid()) {
            String name = job.pieces().get(laid.shape()).piece().name();
            Optional<String> number = numbered ? Optional.of(number(laid.shape(), job.words())) : Optional.empty();
            pieces.add(new MapNames.Named(
                    name, number, laid.corners().stream().map(small::apply).toList()));
        }
        named = new MapNames(pencil, taken, borders).write(pieces);
    }

    private void sign(String letter, Point at, double size) {
        Point middle = at.minus(new Point(0, size * 0.35));
        pencil.fill(Pencil.circle(middle, size * 0.75), Tone.WHITE);
        taken.add(Box.around(List.of(middle)).grown(size * 0.75));
        pencil.write(letter, at, size, Anchor.MIDDLE, 0, true, Tone.DARK);
    }

    private static Box shrunk(Box box, Affine small) {
        return Box.around(List.of(
                small.apply(new Point(box.minX(), box.minY())), small.apply(new Point(box.maxX(), box.maxY()))));
    }
}
