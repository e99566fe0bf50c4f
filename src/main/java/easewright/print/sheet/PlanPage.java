package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.print.Cautions.Caution;
import easewright.print.StillOpen;
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
    /** So many pieces stand on a line each; more would push the cautions off the page. */
    private static final int LISTED = 8;

    private static final double TEXT = 3.2;
    private static final double SMALL = 2.7;
    private static final double GUTTER = 8;

    /** A map is laid otherwise than usual where it becomes so many times as large. */
    private static final double CLEARLY = 1.2;

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
        Rest rest = new Rest(width, height, top + side, steps.bottom());
        PlanMap map = map(rest, false);
        boolean numbered = !map.namesAll();
        if (numbered) {
            map = map(rest, true);
        }
        pencil.add(map.picture());
        Below below = below(rest, numbered);
        set(pencil, below.top(), below.width(), below.letters(), numbered);
        pencil.line(0, below.top() - 3, below.width(), below.top() - 3, Pen.RULE);
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
        List<String> open = StillOpen.of(job.reading(), job.drawn(), job.words());
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
                "across", controls.across().length(), "down", controls.down().length()));
        List<ControlLine> far = controls.far();
        if (far.isEmpty()) {
            return words.of(isJoined() ? "print.plan.control" : "print.plan.control-one", said);
        }
        List<Object> lines = new ArrayList<>();
        for (ControlLine line : far) {
            Map<String, Object> one = Map.of("length", line.length(), "sheet", sheet(line.to()));
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

    /**
     * What is left of the page, mm from its head.
     *
     * @param square lower border of the square
     * @param steps  lower border of the steps beside it
     */
    private record Rest(double width, double height, double square, double steps) {}

    /**
     * Where the map lies, and where what is said of the pieces is set.
     *
     * @param top     upper border of what is said, which begins at the left border of the page
     * @param letters height of its letters
     */
    private record Below(Box map, double top, double width, double letters) {}

    private PlanMap map(Rest rest, boolean numbered) {
        return new PlanMap(job, plan, joins, controls, below(rest, numbered).map(), numbered);
    }

    /** One below the other across the page; or with a tall map, which would be small so, beside each other. */
    private Below below(Rest rest, boolean numbered) {
        Below across = across(rest, numbered);
        return beside(rest, numbered)
                .filter(b -> PlanMap.scale(plan, b.map()) > CLEARLY * PlanMap.scale(plan, across.map()))
                .orElse(across);
    }

    /** Cautions are read by those whom they protect: small only where they would push the map off the page. */
    private Below across(Rest rest, boolean numbered) {
        double width = rest.width();
        double letters = set(new Pencil(), 0, width, TEXT, numbered) <= rest.height() / 3 ? TEXT : SMALL;
        double top = rest.height() - set(new Pencil(), 0, width, letters, numbered);
        double head = Math.max(rest.square(), rest.steps()) + 7;
        return new Below(new Box(0, head, width, Math.max(head, top - 9)), top, width, letters);
    }

    /** What is said below the square, the map below the steps; empty where there is no room for the words. */
    private Optional<Below> beside(Rest rest, boolean numbered) {
        double side = TestSquare.side(words.unit());
        double top = rest.square() + 10;
        Box map = new Box(side + GUTTER, rest.steps() + 5, rest.width(), Math.max(rest.steps() + 5, rest.height()));
        return set(new Pencil(), top, side, TEXT, numbered) <= rest.height() - top
                ? Optional.of(new Below(map, top, side, TEXT))
                : Optional.empty();
    }

    /**
     * Pieces, and below them cautions, in two columns where that is as wide as the page; gives the height of it all.
     *
     * @param numbered the pieces have numbers before their names, as on the map
     */
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
        TextColumn said = new TextColumn(on, 0, top, width).heading(words.of("print.plan.pieces"));
        if (names.size() <= LISTED) {
            said.lines(names, TEXT);
        } else {
            said.paragraph(String.join("   ", names), TEXT, Tone.BLACK);
        }
        double below = said.paragraph(PieceKey.way(job, plan.laid()), TEXT, Tone.BLACK)
                .gap(2)
                .heading(words.of("print.plan.care"))
                .bottom();
        boolean two = width > TestSquare.side(words.unit());
        double column = two ? (width - GUTTER) / 2 : width;
        TextColumn left = new TextColumn(on, 0, below, column);
        TextColumn right = two ? new TextColumn(on, column + GUTTER, below, column) : left;
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
