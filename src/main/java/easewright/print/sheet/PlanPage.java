package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.print.Cautions.Caution;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The first page of a tiled print: what it is, the test square, how to join the sheets, and a map of them. */
final class PlanPage {
    private static final double TITLE = 9;
    private static final double TEXT = 3.2;
    private static final double SMALL = 2.7;
    private static final double GUTTER = 8;

    private final Job job;
    private final Words words;
    private final TilePlan plan;
    private final Joins joins;
    private final ControlLines controls;
    private final Pencil pencil = new Pencil();

    PlanPage(Job job, TilePlan plan, Joins joins, ControlLines controls) {
        this.job = job;
        this.words = job.words();
        this.plan = plan;
        this.joins = joins;
        this.controls = controls;
    }

    Leaf leaf() {
        PrintOrder order = job.order();
        double width = order.paper().width() - 2 * order.margin();
        double height = order.paper().height() - 2 * order.margin();
        double top = open(title(width), width);
        double side = TestSquare.side(words.unit());
        pencil.add(TestSquare.of(words.unit()).transformed(Affine.translation(0, top)));
        double right = side + GUTTER;
        TextColumn steps = new TextColumn(pencil, right, top - 1, width - right);
        steps.heading(words.of("print.plan.first")).numbered(steps(), TEXT);
        double below = Math.max(top + side, steps.bottom()) + 7;
        PlanMap map = map(width, below, height, false);
        boolean numbered = !map.namesAll();
        if (numbered) {
            map = map(width, below, height, true);
        }
        pencil.add(map.picture());
        foot(width, height, numbered);
        Affine inside = Affine.translation(order.margin(), order.margin());
        Layer layer = new Layer(List.of(), pencil.picture(), inside, Optional.empty());
        return new Leaf(order.paper().width(), order.paper().height(), List.of(layer));
    }

    private double title(double width) {
        Lettering face = Lettering.of(true);
        double size = Math.max(TITLE / 2, TITLE * Math.min(1, 0.999 * width / face.width(job.title(), TITLE)));
        pencil.writeBold(face.fitted(job.title(), size, width), 0, 8, size, Tone.BLACK);
        pencil.write(job.byline(), 0, 14.5, 3.8, Tone.DARK);
        int all = plan.across() * plan.down();
        String what = words.of(
                !isJoined()
                        ? "print.plan.what-one"
                        : all == plan.tiles().size() ? "print.plan.what" : "print.plan.what-some",
                Map.of(
                        "count", plan.tiles().size(),
                        "all", all,
                        "paper", job.order().paper().label(),
                        "across", plan.across(),
                        "down", plan.down(),
                        "width", plan.grid().joinedWidth(plan.across()),
                        "height", plan.grid().joinedHeight(plan.down())));
        Lettering plain = Lettering.of(false);
        double room = width - plain.width(job.byline(), 3.8) - 6;
        // In a line of its own where it would have to be small to stand beside the other.
        boolean own = plain.width(what, 3.4) > room;
        double letters = Math.min(3.8, 3.8 * (own ? width : room) / plain.width(what, 3.8));
        double foot = own ? 19.5 : 14.5;
        pencil.write(
                what, new Point(own ? 0 : width, foot), letters, own ? Anchor.START : Anchor.END, 0, false, Tone.DARK);
        pencil.line(0, foot + 3.5, width, foot + 3.5, Pen.RULE);
        return foot + 9.5;
    }

    /** What does not fit yet, before anything else: who joins the sheets first has lost the paper. Gives its lower border. */
    private double open(double top, double width) {
        List<String> open = StillOpen.of(job);
        if (open.isEmpty()) {
            return top;
        }
        TextColumn said = new TextColumn(pencil, 0, top - 2, width).heading(words.of("print.open"));
        open.forEach(line -> said.paragraph(line, TEXT, Tone.BLACK));
        return said.bottom() + 5;
    }

    private List<String> steps() {
        List<String> steps =
                new ArrayList<>(List.of(words.of("print.plan.scale"), words.of(TestSquare.words(words.unit()))));
        if (isJoined()) {
            steps.addAll(List.of(words.of("print.plan.trim"), words.of("print.plan.join")));
        }
        steps.addAll(List.of(control(), PieceKey.lines(job)));
        return steps;
    }

    private boolean isJoined() {
        return plan.tiles().size() > 1;
    }

    /** Where sheets lie far from the long lines, the last of the short ones tells on which. */
    private String control() {
        Map<String, Object> said = new HashMap<>(Map.of(
                "across", controls.across().said(words), "down", controls.down().said(words)));
        List<ControlLine> far = controls.far();
        if (far.isEmpty()) {
            return words.of(isJoined() ? "print.plan.control" : "print.plan.control-one", said);
        }
        List<Object> lines = new ArrayList<>();
        for (ControlLine line : far) {
            Map<String, Object> one = Map.of("length", line.said(words), "sheet", sheet(line.to()));
            lines.add(words.of("print.plan.control." + (line.down() ? "down" : "across"), one));
        }
        said.put("far", lines);
        return words.of("print.plan.control-far", said);
    }

    /** The number of the sheet on whose own part a place lies. */
    private int sheet(Point place) {
        return plan.tiles().stream()
                .filter(t -> plan.grid().own(t).contains(place))
                .findFirst()
                .map(joins::number)
                .orElseThrow();
    }

    /** The map between what stands above and below it on the page. */
    private PlanMap map(double width, double below, double height, boolean numbered) {
        double foot = height - set(new Pencil(), 0, width, letters(width, height, numbered), numbered) - 3;
        return new PlanMap(job, plan, joins, controls, new Box(0, below, width, foot - 6), numbered);
    }

    /** Cautions are read by those whom they protect: small only where they would push the map off the page. */
    private double letters(double width, double height, boolean numbered) {
        return set(new Pencil(), 0, width, TEXT, numbered) <= height / 3 ? TEXT : SMALL;
    }

    /**
     * Pieces and cautions, set upwards from the foot of the page.
     *
     * @param numbered the pieces have numbers before their names, as on the map
     */
    private void foot(double width, double height, boolean numbered) {
        double size = letters(width, height, numbered);
        double top = height - set(new Pencil(), 0, width, size, numbered);
        set(pencil, top, width, size, numbered);
        pencil.line(0, top - 3, width, top - 3, Pen.RULE);
    }

    /** Pieces across the page, cautions in two columns below; gives the height of it all. */
    private double set(Pencil on, double top, double width, double size, boolean numbered) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < job.pieces().size(); i++) {
            PaperPiece paper = job.pieces().get(i);
            Piece piece = paper.piece();
            String name = numbered ? PlanMap.number(i, words) + " " + piece.name() : piece.name();
            names.add(words.of(
                    "print.plan.piece",
                    Map.of("piece", name, "cutting", PieceLabel.cutting(piece, paper.pair(), words))));
        }
        double below = new TextColumn(on, 0, top, width)
                .heading(words.of("print.plan.pieces"))
                .paragraph(String.join("   ", names), TEXT, Tone.BLACK)
                .paragraph(PieceKey.way(job, plan.laid()), TEXT, Tone.BLACK)
                .gap(2)
                .heading(words.of("print.plan.care"))
                .bottom();
        double column = (width - GUTTER) / 2;
        TextColumn left = new TextColumn(on, 0, below, column);
        TextColumn right = new TextColumn(on, column + GUTTER, below, column);
        List<String> cautions = new ArrayList<>();
        for (Caution caution : job.cautions()) {
            if (!caution.code().equals("test-square")) {
                cautions.add(words.of("caution." + caution.code(), caution.values()));
            }
        }
        cautions.addAll(PieceKey.sides(job));
        for (String caution : cautions) {
            (left.bottom() <= right.bottom() ? left : right).paragraph(caution, size, Tone.BLACK);
        }
        return Math.max(left.bottom(), right.bottom()) - top;
    }
}
