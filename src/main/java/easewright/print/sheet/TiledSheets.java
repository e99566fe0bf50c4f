package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.PrintJob.Prints;
import easewright.print.sheet.PrintJob.SheetAt;
import easewright.print.sheet.TileGrid.Tile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A print on small sheets that are joined: a page with the plan and the test square, then the sheets. */
final class TiledSheets {
    private static final double LEAST_AREA = 60;
    private static final double DIAMOND = 3.5;
    /** How far the marks of a piece, or of a control line, reach beyond its own line at most, mm. */
    private static final double REACH = 6;

    private final Job job;
    private final PrintOrder order;

    TiledSheets(Job job) {
        this.job = job;
        this.order = job.order();
    }

    /** What is drawn on the plane, with the box that holds it. */
    private record Drawn(Layer layer, Box box) {}

    Prints prints() throws PrintProblem {
        require();
        TilePlan plan = TilePlan.of(job);
        Joins joins = Joins.of(plan.tiles());
        List<ControlLine> controls = controls(plan);
        List<Drawn> drawn = drawn(plan, controls);
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(new PlanPage(job, plan, joins, controls).leaf());
        for (Tile tile : plan.tiles()) {
            leaves.add(sheet(plan, joins, drawn, tile));
        }
        return new Prints(
                leaves,
                job.pieces().stream().map(p -> p.piece().name()).toList(),
                plan.tiles().size(),
                plan.tiles().stream().map(t -> new SheetAt(t.row(), t.column())).toList(),
                controls.stream().map(ControlLine::length).toList(),
                TestSquare.side(job.words().unit()));
    }

    private void require() throws PrintProblem {
        double room = Math.min(order.paper().width(), order.paper().height()) - 2 * order.margin();
        if (!(order.margin() >= 0) || room < LEAST_AREA + TestSquare.INCHES) {
            throw PrintProblem.of("print-margin-too-wide")
                    .with("paper", order.paper().label())
                    .with("margin", order.margin())
                    .with("usual", PrintOrder.MARGIN);
        }
        if (!(order.overlap() >= 0) || order.overlap() > room / 3) {
            throw PrintProblem.of("print-overlap-too-wide")
                    .with("paper", order.paper().label())
                    .with("overlap", order.overlap())
                    .with("usual", PrintOrder.OVERLAP)
                    .with("most", Math.floor(room / 3));
        }
    }

    private List<Drawn> drawn(TilePlan plan, List<ControlLine> controls) {
        List<Drawn> drawn = new ArrayList<>();
        for (Laid laid : plan.laid()) {
            PaperPiece paper = job.pieces().get(laid.shape());
            Picture picture = job.picture(paper, laid.place(), 1);
            drawn.add(new Drawn(
                    new Layer(job.groups(paper), picture, Affine.IDENTITY, Optional.empty()),
                    Box.around(laid.corners()).grown(REACH)));
        }
        for (ControlLine control : controls) {
            Box box = Box.around(List.of(control.from(), control.to())).grown(REACH);
            drawn.add(
                    new Drawn(Layer.of(control.picture(job.words(), plan.tiles().size() > 1)), box));
        }
        return drawn;
    }

    private List<ControlLine> controls(TilePlan plan) {
        TileGrid grid = plan.grid();
        Tile first = plan.tiles().iterator().next();
        Tile right = first;
        while (plan.tiles().contains(right.right())) {
            right = right.right();
        }
        Tile foot = first;
        while (plan.tiles().contains(foot.below())) {
            foot = foot.below();
        }
        Box own = grid.own(first);
        double in = TilePlan.STRIP / 2;
        Point across = new Point(own.minX() + TilePlan.STRIP, own.minY() + in);
        Point down = new Point(own.minX() + in, own.minY() + TilePlan.STRIP);
        return List.of(
                ControlLine.of(
                        across, false, grid.area(right).maxX() - in, job.words().unit()),
                ControlLine.of(
                        down, true, grid.area(foot).maxY() - in, job.words().unit()));
    }

    private Leaf sheet(TilePlan plan, Joins joins, List<Drawn> drawn, Tile tile) {
        TileGrid grid = plan.grid();
        Box area = grid.area(tile);
        Affine onPage = Affine.translation(grid.margin() - area.minX(), grid.margin() - area.minY());
        Box seen = new Box(
                grid.margin(), grid.margin(), grid.margin() + grid.areaWidth(), grid.margin() + grid.areaHeight());
        List<Layer> layers = new ArrayList<>();
        layers.add(Layer.of(numeral(seen, joins.number(tile))));
        for (Drawn one : drawn) {
            if (overlap(one.box(), area)) {
                Layer whole = one.layer();
                layers.add(new Layer(whole.groups(), whole.picture(), onPage, Optional.of(seen)));
            }
        }
        layers.add(Layer.of(edges(plan, joins, tile, seen)));
        return new Leaf(grid.pageWidth(), grid.pageHeight(), layers);
    }

    private static boolean overlap(Box a, Box b) {
        return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
    }

    private static Picture numeral(Box seen, int number) {
        Point at = new Point(seen.centre().x(), seen.centre().y() + 14);
        return new Pencil()
                .write(String.valueOf(number), at, 40, Anchor.MIDDLE, 0, true, Tone.PALE)
                .picture();
    }

    /** Where the sheet is cut and where its neighbours lie, with the letters of the joins. */
    private Picture edges(TilePlan plan, Joins joins, Tile tile, Box seen) {
        Pencil pencil = new Pencil();
        double stepX = seen.minX() + plan.grid().stepX();
        double stepY = seen.minY() + plan.grid().stepY();
        joins.left(tile).ifPresent(join -> {
            pencil.line(seen.minX(), seen.minY(), seen.minX(), seen.maxY(), Pen.TRIM);
            sign(pencil, join, new Point(seen.minX(), seen.centre().y()), false, true);
        });
        joins.above(tile).ifPresent(join -> {
            pencil.line(seen.minX(), seen.minY(), seen.maxX(), seen.minY(), Pen.TRIM);
            sign(pencil, join, new Point(seen.centre().x(), seen.minY()), true, true);
        });
        joins.right(tile).ifPresent(join -> {
            pencil.line(stepX, seen.minY(), stepX, seen.maxY(), Pen.JOIN);
            Point at = new Point(stepX, seen.centre().y());
            sign(pencil, join, at, false, false);
            neighbour(pencil, joins.number(tile.right()), at.plus(new Point(3.4, 26)), -Math.PI / 2);
        });
        joins.below(tile).ifPresent(join -> {
            pencil.line(seen.minX(), stepY, seen.maxX(), stepY, Pen.JOIN);
            Point at = new Point(seen.centre().x(), stepY);
            sign(pencil, join, at, true, false);
            neighbour(pencil, joins.number(tile.below()), at.plus(new Point(26, 3.4)), 0);
        });
        String foot = job.words()
                .of(
                        "print.sheet",
                        Map.of(
                                "number", joins.number(tile),
                                "count", plan.tiles().size(),
                                "name", order.name()));
        double lift = joins.below(tile).isPresent() ? plan.grid().overlap() : 0;
        pencil.write(foot, seen.minX() + TilePlan.STRIP + 3, seen.maxY() - lift - 2.4, 2.8, Tone.MID);
        return pencil.picture();
    }

    private void neighbour(Pencil pencil, int number, Point at, double turn) {
        String text = job.words().of("print.lay", Map.of("number", number));
        pencil.write(text, at, 2.4, Anchor.MIDDLE, turn, false, Tone.MID);
    }

    /** A diamond on the line of a join with its letter on both sides; each sheet shows what lies on its own part. */
    private void sign(Pencil pencil, String join, Point at, boolean across, boolean halfOnly) {
        double r = Math.min(DIAMOND, Math.max(1, order.overlap() / 2));
        Point along = across ? new Point(r, 0) : new Point(0, r);
        Point inward = across ? new Point(0, r) : new Point(r, 0);
        List<Point> corners = halfOnly
                ? List.of(at.minus(along), at.plus(inward), at.plus(along))
                : List.of(at.minus(along), at.plus(inward), at.plus(along), at.minus(inward));
        pencil.fill(Outline.polygon(corners), Tone.DARK);
        Point letter = inward.unit().times(r + 3.4).plus(new Point(0, 1.5));
        Point before = inward.unit().times(-r - 3.4).plus(new Point(0, 1.5));
        pencil.write(join, at.plus(halfOnly ? letter : before), 4.2, Anchor.MIDDLE, 0, true, Tone.DARK);
    }
}
