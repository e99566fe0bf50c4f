package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.pdf.PdfBook;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import easewright.print.sheet.PrintJob.Prints;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One page to be thrown onto the cloth: all pieces, thick lines, large writing, and a grid to set the projector by. */
final class ProjectorSheet {
    private static final double BOLD = 3;
    private static final double LARGE = 2.4;
    private static final double BORDER = 30;
    /** More room between pieces than on paper: nothing is saved by crowding light. */
    private static final double GAP = 15;

    /** A page much longer than wide, or the other way round, is awkward to push about under the projector. */
    private static final double WIDE = 1.5;

    /** Widths to try, as shares of that of a page of this shape which the pieces' boxes would fill. */
    private static final double[] SHARES = {0.8, 0.9, 1, 1.15, 1.3};

    private final Job job;
    private final double step;
    private final InfoBlock info;

    ProjectorSheet(Job job) {
        this.job = job;
        step = job.words().unit() == LengthUnit.INCH ? 2 * 25.4 : 50;
        String grid = job.words().of("print.projector.grid", Map.of("step", step));
        info = new InfoBlock(job, List.of(grid), LARGE * 0.75);
    }

    Prints prints() throws PrintProblem {
        List<Cutout> shapes = new ArrayList<>(job.cutouts(false));
        shapes.add(info.cutout());
        Layout layout = best(shapes);
        double right = layout.laid().stream()
                .flatMap(l -> l.corners().stream())
                .mapToDouble(Point::x)
                .max()
                .orElse(0);
        double width = Math.ceil((right + 2 * BORDER) / step) * step;
        double height = Math.ceil((layout.length() + 2 * BORDER) / step) * step;
        List<Layer> layers = new ArrayList<>();
        layers.add(Layer.of(grid(width, height)));
        Affine inside = Affine.translation(BORDER, BORDER);
        for (Laid laid : layout.laid()) {
            Affine place = inside.after(laid.place());
            if (laid.shape() == shapes.size() - 1) {
                layers.add(Layer.of(info.at(place)));
            } else {
                PaperPiece paper = job.pieces().get(laid.shape());
                Picture picture = job.picture(paper, place, LARGE);
                layers.add(new Layer(job.groups(paper), picture, Affine.IDENTITY, Optional.empty()));
            }
        }
        return new Prints(
                List.of(new Leaf(width, height, layers, BOLD)),
                job.pieces().stream().map(p -> p.piece().name()).toList(),
                1,
                List.of(),
                width,
                height,
                List.of(width, height),
                TestSquare.side(job.words().unit()));
    }

    private Layout best(List<Cutout> shapes) throws PrintProblem {
        double most = PdfBook.LONGEST_MM - 2 * BORDER - step;
        double widest = shapes.stream().mapToDouble(s -> s.box(0).width()).max().orElse(0);
        double area = shapes.stream()
                .mapToDouble(s -> (s.box(0).width() + GAP) * (s.box(0).height() + GAP))
                .sum();
        Layout best = null;
        double least = Double.POSITIVE_INFINITY;
        boolean fits = widest <= most && shapes.stream().allMatch(s -> s.box(0).height() <= most);
        for (double share : fits ? SHARES : new double[0]) {
            double width = Math.min(most, Math.max(widest, share * Math.sqrt(area * WIDE)));
            Layout layout = new Nest(shapes, width, most, GAP).shortest();
            double length = Math.max(1, layout.length());
            double awkward = Math.max(width / length / WIDE, length * WIDE / width);
            double cost = width * length * Math.sqrt(awkward);
            if (layout.left().isEmpty() && cost < least) {
                least = cost;
                best = layout;
            }
        }
        if (best == null) {
            throw PrintProblem.of("print-projector-too-large").with("most", PdfBook.LONGEST_MM);
        }
        return best;
    }

    /** Squares of the step, a heavier line every fifth, and a frame. */
    private Picture grid(double width, double height) {
        Pencil pencil = new Pencil();
        int across = (int) Math.round(width / step);
        int down = (int) Math.round(height / step);
        for (int i = 1; i < across; i++) {
            pencil.line(i * step, 0, i * step, height, Pen.RULE);
        }
        for (int i = 1; i < down; i++) {
            pencil.line(0, i * step, width, i * step, Pen.RULE);
        }
        return pencil.box(new Box(0, 0, width, height).grown(-1), Pen.EDGE).picture();
    }
}
