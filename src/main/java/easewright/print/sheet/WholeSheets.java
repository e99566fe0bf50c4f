package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Picture;
import easewright.print.pdf.PdfBook;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import easewright.print.sheet.PrintJob.Prints;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A print on sheets, or on a roll, large enough for whole pieces: as many sheets as needed, and nothing to join. */
final class WholeSheets {
    private static final double STRIP = TilePlan.STRIP;
    private static final double BORDER = 1;
    /** How much larger than usual the block of information is set: a large sheet is read from farther away. */
    private static final double LARGE = 1.2;

    private final Job job;
    private final boolean turning;
    private final InfoBlock info;

    private WholeSheets(Job job, boolean turning) {
        this.job = job;
        this.turning = turning;
        Words words = job.words();
        List<String> notes = new ArrayList<>(List.of(
                words.of("print.plan.scale"),
                words.of(TestSquare.words(words.unit())),
                PieceKey.lines(job),
                PieceKey.way(job, turning)));
        notes.addAll(PieceKey.leftAndRight(job));
        this.info = new InfoBlock(job, notes, LARGE);
    }

    /** The pieces by their number in the job, and where they lie; the block of information is the last shape. */
    private record Sheet(double width, double height, Layout layout, List<Integer> pieces) {}

    /** Pieces lie as drawn, unless turning some upside down saves a sheet, or so much of the roll. */
    static Prints prints(Job job) throws PrintProblem {
        Paper paper = job.order().paper();
        WholeSheets asDrawn = new WholeSheets(job, false);
        WholeSheets turning = new WholeSheets(job, true);
        asDrawn.require(paper);
        List<Sheet> plain = asDrawn.best(paper);
        List<Sheet> turned;
        try {
            turned = turning.best(paper);
        } catch (PrintProblem fitsOnlyAsDrawn) {
            return asDrawn.prints(plain);
        }
        return length(turned) < (1 - TileSearch.WORTH_TURNING) * length(plain)
                ? turning.prints(turned)
                : asDrawn.prints(plain);
    }

    private static double length(List<Sheet> sheets) {
        return sheets.stream().mapToDouble(Sheet::height).sum();
    }

    private void require(Paper paper) throws PrintProblem {
        double margin = job.order().margin();
        double room = paper.width() - 2 * margin - STRIP - BORDER;
        if (!(margin >= 0) || room < info.box().width()) {
            throw PrintProblem.of("print-margin-too-wide")
                    .with("paper", paper.label())
                    .with("margin", margin)
                    .with("usual", PrintOrder.MARGIN);
        }
    }

    private Prints prints(List<Sheet> sheets) {
        List<Leaf> leaves = new ArrayList<>();
        List<Double> controls = new ArrayList<>();
        for (Sheet sheet : sheets) {
            leaves.add(leaf(sheet, controls));
        }
        return new Prints(
                leaves,
                job.pieces().stream().map(p -> p.piece().name()).toList(),
                sheets.size(),
                List.of(),
                sheets.get(0).width(),
                sheets.stream().mapToDouble(Sheet::height).max().orElseThrow(),
                controls,
                TestSquare.side(job.words().unit()));
    }

    private List<Sheet> best(Paper paper) throws PrintProblem {
        if (paper == Paper.ROLL) {
            return filled(paper.width(), PdfBook.LONGEST_MM, true);
        }
        List<Sheet> upright = null;
        PrintProblem refused = null;
        try {
            upright = filled(paper.width(), paper.height(), false);
        } catch (PrintProblem tooLarge) {
            refused = tooLarge;
        }
        try {
            List<Sheet> lying = filled(paper.height(), paper.width(), false);
            return upright == null || lying.size() < upright.size() ? lying : upright;
        } catch (PrintProblem tooLarge) {
            if (upright == null) {
                throw refused;
            }
            return upright;
        }
    }

    private List<Sheet> filled(double width, double longest, boolean cutToLength) throws PrintProblem {
        double margin = job.order().margin();
        double across = width - 2 * margin - STRIP - BORDER;
        double down = longest - 2 * margin - STRIP - BORDER;
        List<Integer> waiting =
                new ArrayList<>(IntStream.range(0, job.pieces().size()).boxed().toList());
        List<Sheet> sheets = new ArrayList<>();
        while (!waiting.isEmpty()) {
            List<Cutout> shapes = new ArrayList<>();
            waiting.forEach(i -> shapes.add(job.pieces().get(i).cutout(turning)));
            shapes.add(info.cutout());
            int block = shapes.size() - 1;
            Layout layout = new Nest(shapes, across, down, Job.GAP)
                    .best(
                            Nest.Length::new,
                            l -> (l.left().contains(block) ? 1e12 : 0)
                                    + l.left().size() * 1e7
                                    + left(shapes, l)
                                    + l.length(),
                            true);
            List<Integer> taken = layout.laid().stream()
                    .filter(l -> l.shape() != block)
                    .map(l -> waiting.get(l.shape()))
                    .toList();
            if (taken.isEmpty() || layout.left().contains(block)) {
                throw tooLarge(waiting.get(0));
            }
            double height = cutToLength ? layout.length() + 2 * margin + STRIP + BORDER : longest;
            sheets.add(new Sheet(width, height, layout, List.copyOf(waiting)));
            waiting.removeAll(taken);
        }
        return sheets;
    }

    /** Area that still waits for a sheet, cm²: large pieces left over cost more than small ones. */
    private static double left(List<Cutout> shapes, Layout layout) {
        double sum = 0;
        for (int shape : layout.left()) {
            Box box = shapes.get(shape).box(0);
            sum += box.width() * box.height() / 100;
        }
        return sum;
    }

    private PrintProblem tooLarge(int piece) {
        PaperPiece paper = job.pieces().get(piece);
        Box box = paper.cutout(false).box(0);
        return PrintProblem.of("print-piece-too-large")
                .with("piece", paper.piece().name())
                .with("width", box.width())
                .with("length", box.height())
                .with("paper", job.order().paper().label());
    }

    private Leaf leaf(Sheet sheet, List<Double> controls) {
        double margin = job.order().margin();
        Affine inside = Affine.translation(margin + STRIP, margin + STRIP);
        int block = sheet.pieces().size();
        List<Layer> layers = new ArrayList<>();
        for (Laid laid : sheet.layout().laid()) {
            Affine place = inside.after(laid.place());
            if (laid.shape() == block) {
                layers.add(Layer.of(info.at(place)));
            } else {
                PaperPiece paper = job.pieces().get(sheet.pieces().get(laid.shape()));
                Picture picture = job.picture(paper, place, 1);
                layers.add(new Layer(job.groups(paper), picture, Affine.IDENTITY, Optional.empty()));
            }
        }
        double in = margin + STRIP / 2;
        ControlLine across = ControlLine.of(
                new Point(margin + STRIP, in),
                false,
                sheet.width() - in,
                job.words().unit());
        ControlLine down = ControlLine.of(
                new Point(in, margin + STRIP),
                true,
                sheet.height() - in,
                job.words().unit());
        for (ControlLine control : List.of(across, down)) {
            layers.add(Layer.of(control.picture(job.words(), false)));
            controls.add(control.length());
        }
        return new Leaf(sheet.width(), sheet.height(), layers);
    }
}
