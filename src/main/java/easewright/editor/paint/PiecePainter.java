package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** Draws one piece: its paper, then lines, darts and its signs. Levels and names lie above all pieces. */
final class PiecePainter {
    /** Signs keep their size in pixels: on a piece smaller than this many across and down they would hide it. */
    private static final double LEAST_FOR_SIGNS = 24;

    /** How thick the line is that a change moves while it is tried, pixels. */
    static final double MOVED = 3.2;

    /** The same once it is kept. */
    static final double DONE = 2;

    /** How thick the line is along which the piece is sewn, by which its width is measured, and that along which it is cut, pixels. */
    private static final double STITCH = 1.8;

    private static final double CUT = 1.2;

    /** Dash and gap of the line along which the piece is sewn, pixels. */
    private static final double[] STITCHES = {9, 4};

    /** How thick the line is where the piece was, and its dots and gaps, finer than stitches, pixels. */
    static final double BEFORE = 1.4;

    static final double[] DOTS = {2, 3};

    /** Lines drawn inside a piece, such as where a band is folded: thin, and plain enough to be followed by lamplight. */
    private static final double INNER = 1.3;

    /** So much of the colour of a line is laid over the line as it was drawn: its own colour shows, and it is plain enough. */
    static final double OVER_DRAWN = 0.8;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final Piece piece;
    private final Pen pen;
    private final boolean trying;
    private final DrawnWords words;
    private final DrawnLines kept;

    /**
     * @param trying a change is being tried
     * @param words  of the drawing itself that are to be seen
     * @param kept   lines as they lie on the screen
     */
    PiecePainter(
            GraphicsContext gc,
            Viewport view,
            Ink ink,
            TableScene.PieceSight sight,
            boolean trying,
            DrawnWords words,
            DrawnLines kept) {
        this.words = words;
        this.kept = kept;
        this.trying = trying;
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.piece = sight.piece();
        this.pen = new Pen(gc, view);
    }

    /**
     * All but the paper.
     *
     * @param drawn whether the drawing itself is on the paper, with the lines inside the piece as they were drawn
     */
    void lines(boolean drawn) {
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.ROUND);
        gc.setLineDashes();
        ghost();
        if (!bearsSigns()) {
            outlines();
            moved();
            return;
        }
        EdgeSigns signs = new EdgeSigns(pen, ink, sight);
        riders(drawn && piece.original().isEmpty());
        darts();
        outlines();
        signs.edges();
        signs.trial();
        moved();
        signs.notches();
        signs.grain(words.boxes(sight));
    }

    /** Notes where its lines and signs lie, for words that are to keep clear of them. */
    void keepClear(LabelRoom room) {
        kept.along(piece.outline().segments()).forEach(line -> room.putPaper(piece.id(), line));
        sight.stitch().ifPresent(s -> kept.along(s.segments()).forEach(room::put));
        List<List<Segment>> runs = new ArrayList<>();
        if (bearsSigns()) {
            sight.riders().forEach(r -> kept.along(r.segments()).forEach(room::putFaint));
            for (Dart dart : piece.darts()) {
                runs.add(List.of(new Line(dart.mouth1(), dart.point()), new Line(dart.point(), dart.mouth2())));
                dart.otherPoint()
                        .ifPresent(o -> runs.add(List.of(new Line(dart.mouth1(), o), new Line(o, dart.mouth2()))));
            }
            new EdgeSigns(pen, ink, sight).keepClear(room);
        }
        runs.forEach(run -> DrawnLine.along(run, view).forEach(room::putDear));
        keepClearOfTrial(room);
    }

    /** Names stand well clear of what a trial moves, as thick as it is drawn, and of where that was; a level ends on it. */
    private void keepClearOfTrial(LabelRoom room) {
        if (trying) {
            DrawnLine.along(sight.moved(), view, MOVED / 2).forEach(room::put);
            DrawnLine.along(sight.moved(), view, MOVED).forEach(room::putFaint);
            sight.ghost().ifPresent(was -> kept.along(was.segments()).forEach(room::putFaint));
            sight.former().forEach(was -> kept.along(was.segments()).forEach(room::putFaint));
        }
    }

    TableScene.PieceSight sight() {
        return sight;
    }

    boolean isAside() {
        return sight.aside();
    }

    private boolean bearsSigns() {
        Box box = piece.outline().box();
        return Math.max(box.width(), box.height()) * view.scale() >= LEAST_FOR_SIGNS;
    }

    void paper() {
        gc.setLineDashes();
        ScreenPath outline = kept.path(piece.outline().segments());
        List<ScreenPath> paper = new ArrayList<>(cuttingLines());
        paper.add(outline);
        gc.setFill(ink.shadow());
        for (ScreenPath line : paper) {
            gc.beginPath();
            line.lay(gc, 2.5, 3.5, true);
            gc.fill();
        }
        gc.setFill(ink.paper());
        for (ScreenPath line : paper) {
            closed(line);
            gc.fill();
        }
        if (sight.pointed()) {
            gc.setStroke(ink.movedWash());
            gc.setLineWidth(10);
            gc.stroke();
        }
    }

    /** Drawn around a piece that is drawn as it is sewn: the paper goes as far. */
    private List<ScreenPath> cuttingLines() {
        return sight.riders().stream()
                .filter(this::isCuttingLine)
                .map(r -> kept.path(r.segments()))
                .toList();
    }

    private boolean isCuttingLine(Rider line) {
        return line.kind() == Rider.Kind.PARALLEL && piece.drawn() != LineKind.CUTTING;
    }

    /** What was before, dotted, and the cloth gained or lost as a wash between then and now. */
    private void ghost() {
        pen.set(ink.ghost(), BEFORE, DOTS);
        sight.former().forEach(line -> {
            gc.beginPath();
            kept.path(line.segments()).lay(gc, 0, 0, false);
            gc.stroke();
        });
        if (sight.ghost().isEmpty()) {
            return;
        }
        Outline before = sight.ghost().get();
        gc.setFill(ink.movedWash());
        gc.setFillRule(FillRule.EVEN_ODD);
        gc.beginPath();
        kept.path(piece.outline().segments()).lay(gc, 0, 0, true);
        kept.path(before.segments()).lay(gc, 0, 0, true);
        gc.fill();
        gc.setFillRule(FillRule.NON_ZERO);
        pen.set(ink.ghost(), BEFORE, DOTS);
        closed(kept.path(before.segments()));
        gc.stroke();
    }

    /**
     * @param drawn whether the lines lie on the paper as they were drawn, with the colours they have there
     */
    private void riders(boolean drawn) {
        pen.set(drawn ? ink.quiet().deriveColor(0, 1, 1, OVER_DRAWN) : ink.quiet(), INNER);
        sight.riders().stream().filter(r -> !isCuttingLine(r)).forEach(r -> {
            gc.beginPath();
            kept.path(r.segments()).lay(gc, 0, 0, false);
            gc.stroke();
        });
        for (ScreenPath line : cuttingLines()) {
            if (!sight.former().isEmpty()) {
                // Where it stayed, its dots of before are not to be seen under it.
                pen.set(ink.paper(), STITCH);
                gc.beginPath();
                line.lay(gc, 0, 0, false);
                gc.stroke();
            }
            pen.set(ink.line(), CUT);
            gc.beginPath();
            line.lay(gc, 0, 0, false);
            gc.stroke();
        }
    }

    private void darts() {
        for (Dart dart : piece.darts()) {
            gc.setFill(ink.quiet().deriveColor(0, 1, 1, 0.16));
            pen.fill(DartPaper.of(dart, piece.outline()));
            pen.set(ink.line(), 1, 6, 3);
            pen.line(dart.mouth1(), dart.point());
            pen.line(dart.mouth2(), dart.point());
            dart.otherPoint().ifPresent(other -> {
                pen.line(dart.mouth1(), other);
                pen.line(dart.mouth2(), other);
            });
            Point tip = view.toScreen(dart.point());
            gc.setLineDashes();
            gc.strokeOval(tip.x() - 2.5, tip.y() - 2.5, 5, 5);
        }
    }

    /** As on paper the line for the scissors is whole and that for the needle dashed, unless there is only the one. */
    private void outlines() {
        ScreenPath drawn = kept.path(piece.outline().segments());
        if (!piece.hasAllowance()) {
            pen.set(ink.line(), STITCH);
            closed(drawn);
            gc.stroke();
        } else if (piece.drawn() == LineKind.STITCHING) {
            stitched(drawn);
        } else {
            pen.set(ink.line(), CUT);
            closed(drawn);
            gc.stroke();
            sight.stitch().ifPresent(line -> stitched(kept.path(line.segments())));
        }
    }

    private void stitched(ScreenPath line) {
        closed(line);
        if (sight.ghost().isPresent() || piece.drawn() == LineKind.CUTTING) {
            // What was before, or the same line as it was drawn, is not to be seen in the gaps.
            pen.set(ink.paper(), STITCH);
            gc.stroke();
        }
        pen.set(ink.line(), STITCH, STITCHES);
        gc.stroke();
    }

    private void closed(ScreenPath outline) {
        gc.beginPath();
        outline.lay(gc, 0, 0, true);
    }

    /** What was moved and kept is the line of the piece by now, and no thicker than the rest of it. */
    private void moved() {
        if (sight.moved().isEmpty()) {
            return;
        }
        pen.set(ink.moved(), trying ? MOVED : DONE);
        gc.setLineCap(StrokeLineCap.ROUND);
        pen.stroke(sight.moved());
        gc.setLineCap(StrokeLineCap.BUTT);
    }
}
