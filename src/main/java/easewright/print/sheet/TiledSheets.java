package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.PrintJob.Prints;
import easewright.print.sheet.PrintJob.SheetAt;
import easewright.print.sheet.TileGrid.Tile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A print on small sheets that are joined: a page with the plan and the test square, then the sheets. */
final class TiledSheets {
    private static final double LEAST_AREA = 60;
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
        TilePlan plan = TileSearch.plan(job);
        Joins joins = Joins.of(plan.tiles());
        List<Drawn> drawn = pieces(plan);
        Lines lines = new Lines();
        drawn.forEach(d -> lines.add(d.layer().picture()));
        ControlLines controls = ControlLines.of(plan, job.words().unit());
        draw(controls.all(), plan, drawn, lines);
        controls = controls.withFar(plan, lines, job.words().unit());
        draw(controls.far(), plan, drawn, lines);
        SheetEdges edges = new SheetEdges(job, plan, joins, lines);
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(new PlanPage(job, plan, joins, controls).leaf());
        for (Tile tile : plan.tiles()) {
            leaves.add(sheet(plan, joins, drawn, edges, tile));
        }
        return new Prints(
                leaves,
                job.pieces().stream().map(p -> p.piece().name()).toList(),
                plan.tiles().size(),
                plan.tiles().stream().map(t -> new SheetAt(t.row(), t.column())).toList(),
                plan.grid().joinedWidth(plan.across()),
                plan.grid().joinedHeight(plan.down()),
                controls.all().stream().map(ControlLine::length).toList(),
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

    private List<Drawn> pieces(TilePlan plan) {
        List<Drawn> drawn = new ArrayList<>();
        for (Laid laid : plan.laid()) {
            PaperPiece paper = job.pieces().get(laid.shape());
            Picture picture = job.picture(paper, laid.place(), 1, plan.grid().joins(Box.around(laid.corners())));
            drawn.add(new Drawn(
                    new Layer(job.groups(paper), picture, Affine.IDENTITY, Optional.empty()),
                    Box.around(laid.corners()).grown(REACH)));
        }
        return drawn;
    }

    private void draw(List<ControlLine> controls, TilePlan plan, List<Drawn> drawn, Lines lines) {
        for (ControlLine control : controls) {
            boolean joined = plan.tiles().size() > 1;
            Picture picture = control.picture(job.words(), joined);
            drawn.add(new Drawn(Layer.of(picture), control.box().grown(REACH)));
            lines.add(picture);
        }
    }

    private Leaf sheet(TilePlan plan, Joins joins, List<Drawn> drawn, SheetEdges edges, Tile tile) {
        TileGrid grid = plan.grid();
        Box area = grid.area(tile);
        Affine onPage = Affine.translation(grid.margin() - area.minX(), grid.margin() - area.minY());
        Box seen = new Box(
                grid.margin(), grid.margin(), grid.margin() + grid.areaWidth(), grid.margin() + grid.areaHeight());
        List<Layer> layers = new ArrayList<>();
        layers.add(Layer.of(numeral(seen, joins.number(tile))));
        for (Drawn one : drawn) {
            if (one.box().overlaps(area)) {
                Layer whole = one.layer();
                layers.add(new Layer(whole.groups(), whole.picture(), onPage, Optional.of(seen)));
            }
        }
        layers.add(new Layer(List.of(), edges.picture(tile), onPage, Optional.of(seen)));
        return new Leaf(grid.pageWidth(), grid.pageHeight(), layers);
    }

    private static Picture numeral(Box seen, int number) {
        Point at = new Point(seen.centre().x(), seen.centre().y() + 14);
        return new Pencil()
                .write(String.valueOf(number), at, 40, Anchor.MIDDLE, 0, true, Tone.PALE)
                .picture();
    }
}
