package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/** Draws what is marked on a piece besides its lines: protected edges, the fold, notches, the grain. */
final class EdgeSigns {
    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final Piece piece;
    private final Pen pen;
    private final boolean clockwise;

    EdgeSigns(Pen pen, Ink ink, TableScene.PieceSight sight) {
        this.gc = pen.gc();
        this.view = pen.view();
        this.ink = ink;
        this.sight = sight;
        this.piece = sight.piece();
        this.pen = pen;
        this.clockwise = piece.outline().signedArea() > 0;
    }

    void edges() {
        for (Edge edge : piece.edges()) {
            if (edge.role() == EdgeRole.FOLD) {
                fold(edge.on(piece.outline()).segments());
            } else if (edge.isProtected()) {
                guards(edge.on(piece.outline()).segments());
            }
        }
    }

    /** Short pins across the inside of a protected edge. */
    private void guards(List<Segment> run) {
        pen.set(ink.guard(), 1.4);
        double length = 6;
        Tracer.walk(run, 16 / view.scale(), (place, tangent) -> {
            Point in = inward(tangent);
            Point at = view.toScreen(place);
            gc.strokeLine(at.x(), at.y(), at.x() + in.x() * length, at.y() + in.y() * length);
        });
    }

    /** The trade's fold sign: a line along the edge whose bent ends point at it. */
    private void fold(List<Segment> run) {
        Point from = run.get(0).start();
        Point to = run.get(run.size() - 1).end();
        if (from.distance(to) * view.scale() < 60) {
            return;
        }
        Point in = inward(to.minus(from).unit());
        double room = 13;
        Point a = view.toScreen(from.towards(to, 0.22));
        Point b = view.toScreen(from.towards(to, 0.78));
        Point a2 = a.plus(in.times(room));
        Point b2 = b.plus(in.times(room));
        pen.set(ink.line(), 2.4, 12, 4, 2, 4);
        pen.line(from, to);
        pen.set(ink.line(), 1.2);
        gc.strokePolyline(
                new double[] {a.x() + in.x() * 3, a2.x(), b2.x(), b.x() + in.x() * 3},
                new double[] {a.y() + in.y() * 3, a2.y(), b2.y(), b.y() + in.y() * 3},
                4);
        pen.arrowHead(a.plus(in.times(2)), in.times(-1), ink.line());
        pen.arrowHead(b.plus(in.times(2)), in.times(-1), ink.line());
    }

    /**
     * While a change is tried: protected edges that stay are drawn firm, seams that drift apart get a zigzag, darts that
     * changed lie over what they were.
     */
    void trial() {
        pen.set(ink.ghost(), 1.2, 5, 4);
        pen.stroke(sight.trial().former());
        pen.set(ink.moved(), 2.2);
        pen.stroke(sight.trial().darts());
        pen.set(ink.guard(), 2.6);
        sight.trial().kept().forEach(pen::stroke);
        pen.set(ink.moved(), 1.6);
        sight.trial().drifts().forEach(this::zigzag);
    }

    private void zigzag(List<Segment> run) {
        List<Point> corners = new ArrayList<>();
        Tracer.walk(run, 5 / view.scale(), (place, tangent) -> {
            double reach = corners.size() % 2 == 0 ? 4 : 9;
            corners.add(view.toScreen(place).plus(inward(tangent).times(reach)));
        });
        double[] xs = corners.stream().mapToDouble(Point::x).toArray();
        double[] ys = corners.stream().mapToDouble(Point::y).toArray();
        gc.strokePolyline(xs, ys, xs.length);
    }

    void notches() {
        gc.setFill(ink.line());
        for (Notch notch : piece.notches()) {
            var place = piece.outline().nearest(notch.at());
            Point tangent = piece.outline()
                    .segments()
                    .get(place.place().segment())
                    .tangent(place.place().t());
            Point in = inward(tangent);
            Point at = view.toScreen(place.point());
            gc.fillPolygon(
                    new double[] {at.x() - tangent.x() * 4.5, at.x() + tangent.x() * 4.5, at.x() + in.x() * 9},
                    new double[] {at.y() - tangent.y() * 4.5, at.y() + tangent.y() * 4.5, at.y() + in.y() * 9},
                    3);
        }
    }

    void grain() {
        if (piece.grain().isEmpty()) {
            return;
        }
        Grain grain = piece.grain().get();
        Point from = view.toScreen(grain.from());
        Point to = view.toScreen(grain.to());
        if (from.distance(to) < 24) {
            return;
        }
        pen.set(ink.quiet(), 1.2);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        Point along = to.minus(from).unit();
        pen.arrowHead(to, along, ink.quiet());
        pen.arrowHead(from, along.times(-1), ink.quiet());
    }

    private Point inward(Point tangent) {
        Point normal = tangent.quarterTurned();
        return clockwise ? normal : normal.times(-1);
    }
}
