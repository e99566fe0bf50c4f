package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.suggest.FoldBracket;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Draws one piece where it lies on the paper: lines, darts, notches, levels, grain, fold and label. */
final class PieceMarks {
    /** Depth of a notch where the allowance does not set it, mm (1/8 to 1/4 in: common practice). */
    private static final double NOTCH = 5;

    private final PaperPiece paper;
    private final Piece piece;
    private final Affine place;
    private final boolean upsideDown;
    private final Words words;
    private final double large;
    private final Pencil pencil = new Pencil();
    private final List<Point[]> obstacles = new ArrayList<>();

    /**
     * @param laid  from the upright piece onto the sheet
     * @param large how many times as large as usual the writing is
     */
    PieceMarks(PaperPiece paper, Affine laid, Words words, double large) {
        this.paper = paper;
        this.piece = paper.piece();
        this.place = laid.after(paper.upright());
        this.upsideDown = Cutout.isUpsideDown(laid);
        this.words = words;
        this.large = large;
    }

    /** @param joins stretches that the label should not lie across, as pairs of ends */
    Picture picture(List<Point[]> joins) {
        lines();
        levels();
        riders();
        darts();
        notches();
        grain();
        piece.edges().stream().filter(e -> e.role() == EdgeRole.FOLD).forEach(this::fold);
        paper.pair()
                .ifPresent(pair -> pair.folds()
                        .forEach(name -> piece.edge(name)
                                .ifPresent(e -> joined(e, pair.other(piece).name(), joins))));
        Outline room = paper.measures().stitch().outline();
        if (upsideDown) {
            List<Point> corners = room.transformed(place).corners(Cutout.STRAY);
            obstacles.addAll(TopArrow.draw(pencil, corners, words.of("print.top")));
        }
        new LabelWriter(
                        PieceLabel.enlarged(paper.label(upsideDown, words), large),
                        room.transformed(place).corners(Cutout.STRAY),
                        obstacles,
                        joins)
                .write(pencil);
        return pencil.picture();
    }

    private void lines() {
        boolean stitchDrawn = piece.riders().stream().anyMatch(r -> r.kind() == Rider.Kind.PARALLEL)
                && piece.drawn() == LineKind.CUTTING;
        if (paper.cut().stitched() && !stitchDrawn) {
            Outline stitch = piece.drawn() == LineKind.STITCHING
                    ? piece.outline()
                    : paper.measures().stitch().outline();
            pencil.around(stitch.transformed(place), Pen.STITCH);
        }
        pencil.around(paper.cut().outline().transformed(place), Pen.CUT);
    }

    private void levels() {
        for (LevelWidth width : paper.measures().levels()) {
            boolean straight =
                    piece.level(width.level()).flatMap(m -> m.through()).isPresent();
            if (straight) {
                width.spans().forEach(span -> level(width.level(), span));
            }
        }
    }

    private void level(String name, Span span) {
        Point a = place.apply(span.from());
        Point b = place.apply(span.to());
        Point left = a.x() <= b.x() ? a : b;
        Point right = a.x() <= b.x() ? b : a;
        line(left, right, Pen.LEVEL);
        Point along = right.minus(left).unit();
        Point at = left.plus(along.times(5)).plus(along.quarterTurned().times(-1.2));
        double turn = Math.atan2(along.y(), along.x());
        pencil.write(name, at, 3.6 * large, Anchor.START, turn, false, Tone.DARK);
        obstacles.add(
                new Point[] {at.plus(new Point(0, -2)), at.plus(along.times(12)).plus(new Point(0, -2))});
    }

    /** A line that the label keeps clear of. */
    private void line(Point from, Point to, Pen pen) {
        pencil.line(from, to, pen);
        obstacles.add(new Point[] {from, to});
    }

    private void riders() {
        DrawnByMarks marks = new DrawnByMarks(piece, paper.measures());
        for (Rider rider : FoldBracket.without(piece)) {
            boolean cutLine = rider.kind() == Rider.Kind.PARALLEL && piece.drawn() == LineKind.STITCHING;
            if (cutLine || marks.show(rider)) {
                continue;
            }
            Pen pen = rider.kind() == Rider.Kind.PARALLEL ? Pen.STITCH : Pen.INNER;
            List<Segment> run =
                    rider.segments().stream().map(s -> s.transformed(place)).toList();
            pencil.run(run, pen);
            if (rider.kind() == Rider.Kind.INNER) {
                run.forEach(s -> obstacles.add(new Point[] {s.start(), s.end()}));
            }
        }
    }

    private void darts() {
        for (Dart dart : piece.darts()) {
            for (Point tip : DrawnByMarks.tips(dart)) {
                line(place.apply(dart.mouth1()), place.apply(tip), Pen.DART);
                line(place.apply(dart.mouth2()), place.apply(tip), Pen.DART);
                pencil.around(Pencil.circle(place.apply(tip), 1.2), Pen.DART_POINT);
            }
        }
    }

    /** A notch is snipped at the cutting line, into half of the allowance at most (common practice). */
    private void notches() {
        Outline cut = paper.cut().outline();
        for (Notch notch : piece.notches()) {
            Nearest edge = cut.nearest(notch.at());
            double allowance = edge.distance();
            if (allowance > 4 * NOTCH) {
                // A wide hem allowance: the tick at the stitching line says more than one far away.
                edge = piece.outline().nearest(notch.at());
            }
            Outline on = allowance > 4 * NOTCH ? piece.outline() : cut;
            Point along = on.segments()
                    .get(edge.place().segment())
                    .tangent(edge.place().t());
            Point in = along.quarterTurned().times(on.signedArea() > 0 ? 1 : -1);
            double depth = allowance > 1 && allowance < 2 * NOTCH ? allowance / 2 : NOTCH;
            pencil.line(place.apply(edge.point()), place.apply(edge.point().plus(in.times(depth))), Pen.NOTCH);
        }
    }

    private void grain() {
        piece.grain().ifPresent(g -> {
            Point a = place.apply(g.from());
            Point b = place.apply(g.to());
            Point top = a.y() <= b.y() ? a : b;
            Point foot = a.y() <= b.y() ? b : a;
            line(top, foot, Pen.GRAIN);
            Point down = foot.minus(top).unit();
            pencil.arrowHead(foot, down, 5, Tone.BLACK).arrowHead(top, down.times(-1), 5, Tone.BLACK);
            Point up = down.times(-1);
            Point beside = foot.plus(up.times(9)).plus(up.quarterTurned().times(-1.4));
            pencil.write(words.of("print.grain"), beside, 3.6 * large, Anchor.START, angle(up), false, Tone.DARK);
        });
    }

    /** The trade's sign for a fold: a line beside the edge whose bent ends point at it. */
    private void fold(Edge edge) {
        Curve run = edge.on(piece.outline()).transformed(place);
        Point from = run.start();
        Point to = run.end();
        pencil.along(run, Pen.FOLD);
        if (from.distance(to) < 30) {
            return;
        }
        Point along = to.minus(from).unit();
        Point in = along.quarterTurned().times(piece.outline().signedArea() > 0 ? 1 : -1);
        double room = Math.min(12, from.distance(to) / 5);
        Point a = from.towards(to, 0.25);
        Point b = from.towards(to, 0.75);
        List<Segment> bracket = List.of(
                new Line(a.plus(in.times(1.5)), a.plus(in.times(room))),
                new Line(a.plus(in.times(room)), b.plus(in.times(room))),
                new Line(b.plus(in.times(room)), b.plus(in.times(1.5))));
        pencil.run(bracket, Pen.GRAIN);
        pencil.arrowHead(a.plus(in.times(0.8)), in.times(-1), 4, Tone.BLACK)
                .arrowHead(b.plus(in.times(0.8)), in.times(-1), 4, Tone.BLACK);
        obstacles.add(new Point[] {a.plus(in.times(room)), b.plus(in.times(room))});
        // Read from below, like all writing that stands on end.
        Point reading = along.y() > 0 ? along.times(-1) : along;
        Point beside = a.towards(b, 0.5)
                .plus(in.times(room / 2))
                .plus(reading.quarterTurned().times(1.3));
        pencil.write(words.of("print.fold"), beside, 4.2 * large, Anchor.MIDDLE, angle(reading), false, Tone.DARK);
    }

    /** Along the line where a fold was: that the other half is taped to it, said wherever there is room for it. */
    private void joined(Edge edge, String other, List<Point[]> joins) {
        Curve run = edge.on(piece.outline()).transformed(place);
        Point from = run.start();
        Point to = run.end();
        Point along = to.minus(from).unit();
        Point in = along.quarterTurned().times(piece.outline().signedArea() > 0 ? 1 : -1);
        Point reading = along.y() > 0 ? along.times(-1) : along;
        String said = words.of("print.join", Map.of("other", other));
        double size = 4.2 * large;
        double wide = Lettering.of(false).width(said, size);
        List<Point[]> others = new ArrayList<>(joins);
        others.addAll(obstacles);
        List<Point> middles = new ArrayList<>();
        double free = 0;
        for (double at = wide * 0.6; at <= from.distance(to) - wide * 0.6; at += size) {
            Point middle = from.plus(along.times(at)).plus(in.times(size * 1.2));
            Line text = new Line(middle.minus(along.times(wide * 0.55)), middle.plus(along.times(wide * 0.55)));
            if (at >= free && others.stream().noneMatch(j -> crosses(text, new Line(j[0], j[1])))) {
                middles.add(middle);
                free = at + 2.5 * wide;
            }
        }
        if (middles.isEmpty()) {
            middles.add(from.towards(to, 0.5).plus(in.times(size * 1.2)));
        }
        for (Point middle : middles) {
            pencil.write(
                    said,
                    middle.plus(reading.quarterTurned().times(size * 0.35)),
                    size,
                    Anchor.MIDDLE,
                    angle(reading),
                    false,
                    Tone.DARK);
            obstacles.add(new Point[] {middle.minus(along.times(wide / 2)), middle.plus(along.times(wide / 2))});
        }
    }

    private static boolean crosses(Line one, Line other) {
        return apart(one, other.start(), other.end()) && apart(other, one.start(), one.end());
    }

    /** Whether two places lie on either side of a line. */
    private static boolean apart(Line line, Point a, Point b) {
        Point across = line.end().minus(line.start()).quarterTurned();
        return across.dot(a.minus(line.start())) * across.dot(b.minus(line.start())) <= 0;
    }

    private static double angle(Point along) {
        return Math.atan2(along.y(), along.x());
    }
}
