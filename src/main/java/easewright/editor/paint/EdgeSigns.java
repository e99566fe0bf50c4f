package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;

/** Draws what is marked on a piece besides its lines: protected edges, the fold, notches, the grain. */
public final class EdgeSigns {
    /** A grain arrow shorter than this would be all heads, pixels. */
    private static final double LEAST_GRAIN = 24;

    /** How thick the line of a fold is, pixels. */
    private static final double FOLD = 2.4;

    /** So near to a notch no pin stands, pixels. */
    private static final double BESIDE_NOTCH = 9;

    /** Within a wider allowance a notch stands at the stitching line, on paper as well, mm. */
    private static final double FARTHEST_CUT = 20;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final Piece piece;
    private final Pen pen;
    private final boolean clockwise;
    private final Optional<Outline> cut;

    EdgeSigns(Pen pen, Ink ink, TableScene.PieceSight sight) {
        this.gc = pen.gc();
        this.view = pen.view();
        this.ink = ink;
        this.sight = sight;
        this.piece = sight.piece();
        this.pen = pen;
        this.clockwise = piece.outline().signedArea() > 0;
        this.cut = piece.notches().isEmpty() ? Optional.empty() : sight.cuttingLine();
    }

    void edges() {
        for (Edge edge : piece.edges()) {
            if (edge.role() == EdgeRole.FOLD) {
                List<Segment> run = edge.on(piece.outline()).segments();
                fold(run);
                // What is protected and stays looks the same all round the piece.
                if (sight.trial().kept().contains(run)) {
                    guards(run);
                }
            } else if (hasPins(edge)) {
                guards(edge.on(piece.outline()).segments());
            }
        }
    }

    /** Whether an edge has pins whatever is done: one that is protected; a fold has its own sign. */
    public static boolean hasPins(Edge edge) {
        return edge.isProtected() && edge.role() != EdgeRole.FOLD;
    }

    /** Short pins across the inside of a protected edge. */
    private void guards(List<Segment> run) {
        pen.set(ink.guard(), 1.4);
        double length = 6;
        Tracer.walk(run, 16 / view.scale(), (place, tangent) -> {
            Point in = inward(tangent);
            Point at = view.toScreen(place);
            if (isClearOfNotches(at)) {
                gc.strokeLine(at.x(), at.y(), at.x() + in.x() * length, at.y() + in.y() * length);
            }
        });
    }

    /** A pin beside a notch would make one blot of the two. */
    boolean isClearOfNotches(Point at) {
        return piece.notches().stream().noneMatch(n -> view.toScreen(n.at()).distance(at) < BESIDE_NOTCH);
    }

    /** The trade's fold sign: a line along the edge whose bent ends point at it. */
    private void fold(List<Segment> run) {
        Point from = run.get(0).start();
        Point to = run.get(run.size() - 1).end();
        if (!isLongForFold(run)) {
            return;
        }
        Point in = inward(to.minus(from).unit());
        List<Point> sign = foldSign(run);
        // Nothing is sewn there: stitches are not to be seen in the gaps.
        pen.set(ink.paper(), FOLD);
        pen.line(from, to);
        pen.set(ink.line(), FOLD, 12, 4, 2, 4);
        pen.line(from, to);
        pen.set(ink.line(), 1.2);
        gc.strokePolyline(
                sign.stream().mapToDouble(Point::x).toArray(),
                sign.stream().mapToDouble(Point::y).toArray(),
                sign.size());
        pen.arrowHead(sign.get(0).minus(in), in.times(-1), ink.line());
        pen.arrowHead(sign.get(3).minus(in), in.times(-1), ink.line());
    }

    private boolean isLongForFold(List<Segment> run) {
        return run.get(0).start().distance(run.get(run.size() - 1).end()) * view.scale() >= 60;
    }

    /** The corners of the fold sign, pixels. */
    private List<Point> foldSign(List<Segment> run) {
        Point from = run.get(0).start();
        Point to = run.get(run.size() - 1).end();
        Point in = inward(to.minus(from).unit());
        Point a = view.toScreen(from.towards(to, 0.22));
        Point b = view.toScreen(from.towards(to, 0.78));
        return List.of(a.plus(in.times(3)), a.plus(in.times(13)), b.plus(in.times(13)), b.plus(in.times(3)));
    }

    /** Notes where the signs stand, for words that are to keep clear of them. */
    void keepClear(LabelRoom room) {
        for (Edge edge : piece.edges()) {
            if (edge.role() == EdgeRole.FOLD) {
                List<Segment> run = edge.on(piece.outline()).segments();
                if (isLongForFold(run)) {
                    room.putDear(DrawnLine.through(foldSign(run)));
                }
            }
        }
        for (Notch notch : piece.notches()) {
            List<Point> corners = notchSign(notch);
            room.put(DrawnLine.through(List.of(corners.get(0), corners.get(2), corners.get(1))));
        }
        piece.grain()
                .map(g -> List.of(view.toScreen(g.from()), view.toScreen(g.to())))
                .filter(ends -> ends.get(0).distance(ends.get(1)) >= LEAST_GRAIN)
                .ifPresent(ends -> {
                    room.putDear(DrawnLine.through(ends));
                    Point half = ends.get(1)
                            .minus(ends.get(0))
                            .unit()
                            .quarterTurned()
                            .times(4);
                    for (Point end : ends) {
                        room.putDear(DrawnLine.through(List.of(end.plus(half), end.minus(half))));
                    }
                });
    }

    /**
     * While a change is tried: protected edges that stay are drawn firm, seams that drift apart get a zigzag, darts that
     * changed lie over what they were.
     */
    void trial() {
        pen.set(ink.ghost(), PiecePainter.BEFORE, PiecePainter.DOTS);
        pen.stroke(sight.trial().former());
        pen.set(ink.moved(), 2.2);
        pen.stroke(sight.trial().darts());
        pen.set(ink.guard(), 2.6);
        sight.trial().kept().forEach(pen::stroke);
        pen.set(ink.moved(), 1.6);
        sight.trial().drifts().forEach(this::zigzag);
    }

    private void zigzag(List<Segment> run) {
        List<Point> corners = MisfitPainter.zigzag(run, view, clockwise, 4, 9);
        double[] xs = corners.stream().mapToDouble(Point::x).toArray();
        double[] ys = corners.stream().mapToDouble(Point::y).toArray();
        gc.strokePolyline(xs, ys, xs.length);
    }

    void notches() {
        gc.setFill(ink.line());
        for (Notch notch : piece.notches()) {
            List<Point> sign = notchSign(notch);
            gc.fillPolygon(
                    sign.stream().mapToDouble(Point::x).toArray(),
                    sign.stream().mapToDouble(Point::y).toArray(),
                    sign.size());
        }
    }

    /**
     * The corners of a notch's sign, its foot first, pixels. It stands at the cutting line, as on paper, where that lies on
     * the table; at a wide hem it would be too far from what it is for.
     */
    List<Point> notchSign(Notch notch) {
        Outline on = cut.filter(c -> c.nearest(notch.at()).distance() <= FARTHEST_CUT)
                .orElse(piece.outline());
        var place = on.nearest(notch.at());
        Point tangent =
                on.segments().get(place.place().segment()).tangent(place.place().t());
        Point at = view.toScreen(place.point());
        Point side = tangent.times(4.5);
        return List.of(at.minus(side), at.plus(side), at.plus(inward(tangent).times(9)));
    }

    /**
     * The arrow of the grain, with gaps where words stand.
     *
     * @param words around what is written on the drawing, pixels
     */
    void grain(List<Box> words) {
        if (piece.grain().isEmpty()) {
            return;
        }
        Grain grain = piece.grain().get();
        Point from = view.toScreen(grain.from());
        Point to = view.toScreen(grain.to());
        if (from.distance(to) < LEAST_GRAIN) {
            return;
        }
        pen.set(ink.quiet(), 1.2);
        for (Stretch open : Stretch.outside(words, from, to)) {
            Point begins = from.towards(to, open.from());
            Point ends = from.towards(to, open.to());
            gc.strokeLine(begins.x(), begins.y(), ends.x(), ends.y());
        }
        Point along = to.minus(from).unit();
        pen.arrowHead(to, along, ink.quiet());
        pen.arrowHead(from, along.times(-1), ink.quiet());
    }

    private Point inward(Point tangent) {
        return MisfitPainter.inward(tangent, clockwise);
    }
}
