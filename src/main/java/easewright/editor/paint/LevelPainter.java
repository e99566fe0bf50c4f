package easewright.editor.paint;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** Draws the levels of one piece as measured: straight from stitching line to stitching line, or along an edge. */
final class LevelPainter {
    /** What a grip takes with some air around it, pixels. */
    static final double GRIP = 2 * OverlayPainter.GRIP + 6;

    /** How thick the line of the level at work is, that of another, and that of one which covers the line of an edge, pixels. */
    private static final double AT_WORK = 2.4;

    private static final double AT_REST = 1.2;

    private static final double ON_EDGE = 2;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom room;

    LevelPainter(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        this.room = room;
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
    }

    void lines() {
        for (boolean chosen : new boolean[] {false, true}) {
            for (TableScene.LevelSight level : sight.levels()) {
                if (level.chosen() == chosen) {
                    draw(level);
                }
            }
        }
    }

    /** The ends of the level at work, at which seams are taken hold of, are to be seen beside all words. */
    void ends() {
        for (TableScene.LevelSight level : sight.levels()) {
            if (level.chosen()) {
                extent(level).ifPresent(line -> {
                    room.put(LabelRoom.around(view.toScreen(line.start()), GRIP, GRIP));
                    room.put(LabelRoom.around(view.toScreen(line.end()), GRIP, GRIP));
                });
            }
        }
    }

    /** From one end of a level to the other, over the darts that part it. */
    static Optional<Line> extent(TableScene.LevelSight level) {
        return level.runs().stream().findFirst().map(run -> {
            Point end = farthest(level, run.start());
            Point other = farthest(level, end);
            return end.x() <= other.x() ? new Line(end, other) : new Line(other, end);
        });
    }

    private static Point farthest(TableScene.LevelSight level, Point from) {
        return level.runs().stream()
                .flatMap(run -> Stream.of(run.start(), run.end()))
                .max(Comparator.comparingDouble(from::distance))
                .orElse(from);
    }

    /** The straight line that stands for a level where words find their place: of a curve the one that touches its middle. */
    static Optional<Line> middle(TableScene.LevelSight level) {
        if (!level.shaped()) {
            return level.runs().stream()
                    .map(run -> new Line(run.start(), run.end()))
                    .max(Comparator.comparingDouble(Line::length))
                    .map(widest -> widest.start().x() <= widest.end().x() ? widest : (Line) widest.reversed());
        }
        return extent(level).map(all -> {
            Point middle = all.at(0.5);
            Point off = level.runs().stream()
                    .map(run -> run.nearest(middle).point())
                    .min(Comparator.comparingDouble(middle::distance))
                    .orElse(middle)
                    .minus(middle);
            return new Line(all.start().plus(off), all.end().plus(off));
        });
    }

    /** A level along an edge is drawn over it, just as it is measured, with a gap where a dart is closed. */
    private void draw(TableScene.LevelSight level) {
        Color color = level.counts() ? ink.level() : ink.quiet();
        double wide = level.chosen() ? AT_WORK : level.shaped() ? ON_EDGE : AT_REST;
        Pen pen = new Pen(gc, view);
        for (Curve run : level.runs()) {
            if (level.counts()) {
                pen.set(color, wide);
            } else {
                pen.set(color, wide, 3, 4);
            }
            pen.stroke(run.segments());
            pen.set(color, wide);
            Segment first = run.segments().get(0);
            Segment last = run.segments().get(run.segments().size() - 1);
            end(level, run.start(), first.tangent(0));
            end(level, run.end(), last.tangent(1));
        }
    }

    private void end(TableScene.LevelSight level, Point place, Point along) {
        Point at = view.toScreen(place);
        Point across = along.quarterTurned().times(level.chosen() ? 7 : 4);
        gc.strokeLine(at.x() - across.x(), at.y() - across.y(), at.x() + across.x(), at.y() + across.y());
    }

    /** Notes the lines, for words that are to leave them to be seen. */
    void keepClear() {
        for (TableScene.LevelSight level : sight.levels()) {
            for (Curve run : level.runs()) {
                DrawnLine.along(run.segments(), view).forEach(room::putFaint);
            }
        }
    }
}
