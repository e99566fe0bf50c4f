package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws one piece: paper, lines, darts, notches, grain and name. Levels lie above all pieces. */
final class PiecePainter {
    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final Piece piece;

    PiecePainter(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.piece = sight.piece();
    }

    void paint() {
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.ROUND);
        gc.setLineDashes();
        paper();
        ghost();
        riders();
        darts();
        lines();
        edges();
        moved();
        notches();
        grain();
        name();
    }

    private void paper() {
        List<Segment> outline = piece.outline().segments();
        gc.setFill(ink.shadow());
        path(new Viewport(view.scale(), view.x() + 2.5, view.y() + 3.5), outline);
        gc.fill();
        gc.setFill(ink.paper());
        path(view, outline);
        gc.fill();
        if (sight.pointed()) {
            gc.setStroke(ink.movedWash());
            gc.setLineWidth(10);
            gc.stroke();
        }
    }

    /** What was before, dashed, and the cloth gained or lost as a wash between then and now. */
    private void ghost() {
        if (sight.ghost().isEmpty()) {
            return;
        }
        Outline before = sight.ghost().get();
        gc.setFill(ink.movedWash());
        gc.setFillRule(FillRule.EVEN_ODD);
        gc.beginPath();
        Tracer.trace(gc, view, piece.outline().segments(), true);
        Tracer.trace(gc, view, before.segments(), true);
        gc.fill();
        gc.setFillRule(FillRule.NON_ZERO);
        stroke(ink.ghost(), 1.2, 5, 4);
        path(view, before.segments());
        gc.stroke();
    }

    private void riders() {
        stroke(ink.quiet(), 1);
        for (Rider rider : piece.riders()) {
            gc.beginPath();
            Tracer.trace(gc, view, rider.segments(), false);
            gc.stroke();
        }
    }

    private void darts() {
        for (Dart dart : piece.darts()) {
            List<Point> corners = dart.corners();
            gc.setFill(ink.gridStrong().deriveColor(0, 1, 1, 0.45));
            gc.beginPath();
            for (int i = 0; i < corners.size(); i++) {
                Point p = view.toScreen(corners.get(i));
                if (i == 0) {
                    gc.moveTo(p.x(), p.y());
                } else {
                    gc.lineTo(p.x(), p.y());
                }
            }
            gc.closePath();
            gc.fill();
            stroke(ink.line(), 1, 6, 3);
            leg(dart.mouth1(), dart.point());
            leg(dart.mouth2(), dart.point());
            dart.otherPoint().ifPresent(other -> {
                leg(dart.mouth1(), other);
                leg(dart.mouth2(), other);
            });
            Point tip = view.toScreen(dart.point());
            gc.setLineDashes();
            gc.strokeOval(tip.x() - 2.5, tip.y() - 2.5, 5, 5);
        }
    }

    private void leg(Point mouth, Point tip) {
        gc.strokeLine(view.screenX(mouth.x()), view.screenY(mouth.y()), view.screenX(tip.x()), view.screenY(tip.y()));
    }

    private void lines() {
        stroke(ink.line(), piece.drawn() == LineKind.CUTTING ? 1.2 : 1.8);
        path(view, piece.outline().segments());
        gc.stroke();
        sight.stitch().ifPresent(line -> {
            stroke(ink.line(), 1.3, 7, 4);
            path(view, line.segments());
            gc.stroke();
        });
    }

    private void edges() {
        boolean clockwise = piece.outline().signedArea() > 0;
        for (Edge edge : piece.edges()) {
            List<Segment> run = edge.on(piece.outline()).segments();
            if (edge.role() == EdgeRole.FOLD) {
                fold(run, clockwise);
            } else if (edge.isProtected()) {
                guards(run, clockwise);
            }
        }
    }

    /** Short pins across the inside of a protected edge. */
    private void guards(List<Segment> run, boolean clockwise) {
        stroke(ink.guard(), 1.4);
        double pin = 6;
        Tracer.walk(run, 16 / view.scale(), (place, tangent) -> {
            Point in = inward(tangent, clockwise);
            Point at = view.toScreen(place);
            gc.strokeLine(at.x(), at.y(), at.x() + in.x() * pin, at.y() + in.y() * pin);
        });
    }

    /** The trade's fold sign: a line along the edge whose bent ends point at it. */
    private void fold(List<Segment> run, boolean clockwise) {
        Point from = run.get(0).start();
        Point to = run.get(run.size() - 1).end();
        if (from.distance(to) * view.scale() < 60) {
            return;
        }
        Point along = to.minus(from).unit();
        Point in = inward(along, clockwise);
        double room = 13;
        Point a = view.toScreen(from.towards(to, 0.22));
        Point b = view.toScreen(from.towards(to, 0.78));
        Point a2 = a.plus(in.times(room));
        Point b2 = b.plus(in.times(room));
        stroke(ink.line(), 2.4, 12, 4, 2, 4);
        gc.strokeLine(view.screenX(from.x()), view.screenY(from.y()), view.screenX(to.x()), view.screenY(to.y()));
        stroke(ink.line(), 1.2);
        gc.strokePolyline(
                new double[] {a.x() + in.x() * 3, a2.x(), b2.x(), b.x() + in.x() * 3},
                new double[] {a.y() + in.y() * 3, a2.y(), b2.y(), b.y() + in.y() * 3},
                4);
        arrowHead(a.plus(in.times(2)), in.times(-1), ink.line());
        arrowHead(b.plus(in.times(2)), in.times(-1), ink.line());
    }

    private void moved() {
        if (sight.moved().isEmpty()) {
            return;
        }
        stroke(ink.moved(), 3.2);
        gc.setLineCap(StrokeLineCap.ROUND);
        gc.beginPath();
        Tracer.trace(gc, view, sight.moved(), false);
        gc.stroke();
        gc.setLineCap(StrokeLineCap.BUTT);
    }

    private void notches() {
        boolean clockwise = piece.outline().signedArea() > 0;
        gc.setFill(ink.line());
        for (Notch notch : piece.notches()) {
            var place = piece.outline().nearest(notch.at());
            Point tangent = piece.outline()
                    .segments()
                    .get(place.place().segment())
                    .tangent(place.place().t());
            Point in = inward(tangent, clockwise);
            Point at = view.toScreen(place.point());
            gc.fillPolygon(
                    new double[] {at.x() - tangent.x() * 4.5, at.x() + tangent.x() * 4.5, at.x() + in.x() * 9},
                    new double[] {at.y() - tangent.y() * 4.5, at.y() + tangent.y() * 4.5, at.y() + in.y() * 9},
                    3);
        }
    }

    private void grain() {
        if (piece.grain().isEmpty()) {
            return;
        }
        Grain grain = piece.grain().get();
        Point from = view.toScreen(grain.from());
        Point to = view.toScreen(grain.to());
        if (from.distance(to) < 24) {
            return;
        }
        stroke(ink.quiet(), 1.2);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        Point along = to.minus(from).unit();
        arrowHead(to, along, ink.quiet());
        arrowHead(from, along.times(-1), ink.quiet());
    }

    private void arrowHead(Point tip, Point direction, Color color) {
        Point side = direction.quarterTurned();
        Point back = tip.minus(direction.times(8));
        gc.setFill(color);
        gc.fillPolygon(
                new double[] {tip.x(), back.x() + side.x() * 3.5, back.x() - side.x() * 3.5},
                new double[] {tip.y(), back.y() + side.y() * 3.5, back.y() - side.y() * 3.5},
                3);
    }

    private void name() {
        Box box = piece.outline().box();
        double widthPx = box.width() * view.scale();
        if (widthPx < 46) {
            return;
        }
        Point at = view.toScreen(namePlace(box));
        double size = Math.max(12, Math.min(20, widthPx / 10));
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFont(Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, size));
        words(piece.name(), ink.text(), at.x(), at.y() - size * 0.55, widthPx - 12);
        gc.setFont(Font.font(Math.max(11, size * 0.68)));
        words(sight.subtitle(), ink.quiet(), at.x(), at.y() + size * 0.6, widthPx - 12);
    }

    /** Words with a rim of paper, so that a line below does not cross them out. */
    private void words(String text, Color color, double x, double y, double room) {
        stroke(ink.paper(), 5);
        gc.strokeText(text, x, y, room);
        gc.setFill(color);
        gc.fillText(text, x, y, room);
    }

    /** Inside the piece and as far as may be from its levels. */
    private Point namePlace(Box box) {
        Point best = box.centre();
        double bestRoom = -1;
        for (int i = 0; i < 39; i++) {
            // Down the middle first; to either side only where that gives more room.
            double x = box.minX() + box.width() * new double[] {0.5, 0.35, 0.65}[i / 13];
            double y = box.minY() + box.height() * (i % 13 + 2) / 16;
            Point candidate = new Point(x, y);
            if (!piece.outline().contains(candidate)) {
                continue;
            }
            double room = Math.min(y - box.minY(), box.maxY() - y);
            for (TableScene.LevelSight level : sight.levels()) {
                for (Line span : level.spans()) {
                    room = Math.min(room, Math.abs(span.start().y() - y));
                }
            }
            for (Dart dart : piece.darts()) {
                room = Math.min(room, Box.around(dart.corners()).distance(candidate));
            }
            if (room > bestRoom * (i < 13 ? 1 : 1.5)) {
                bestRoom = room;
                best = candidate;
            }
        }
        return middleOfStretch(best);
    }

    private Point middleOfStretch(Point p) {
        double left = p.x();
        double right = p.x();
        for (var crossing : piece.outline().crossings(p, new Point(1, 0))) {
            if (crossing.along() < 0) {
                left = crossing.point().x();
            } else if (crossing.along() > 0) {
                right = crossing.point().x();
                break;
            }
        }
        return new Point((left + right) / 2, p.y());
    }

    private static Point inward(Point tangent, boolean clockwise) {
        Point normal = tangent.quarterTurned();
        return clockwise ? normal : normal.times(-1);
    }

    private void path(Viewport through, List<Segment> segments) {
        gc.beginPath();
        Tracer.trace(gc, through, segments, true);
    }

    private void stroke(Color color, double width, double... dashes) {
        gc.setStroke(color);
        gc.setLineWidth(width);
        gc.setLineDashes(dashes);
    }
}
