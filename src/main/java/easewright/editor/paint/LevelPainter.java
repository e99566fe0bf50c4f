package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;

/** Draws the levels of one piece as measured: a line from stitching line to stitching line. */
final class LevelPainter {
    /** What a grip takes with some air around it, pixels. */
    static final double GRIP = 2 * OverlayPainter.GRIP + 6;

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

    boolean isAside() {
        return sight.aside();
    }

    void lines() {
        for (boolean chosen : new boolean[] {false, true}) {
            for (TableScene.LevelSight level : sight.levels()) {
                if (level.chosen() == chosen) {
                    level.spans().forEach(span -> line(span, level));
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
        return level.spans().stream().findFirst().map(span -> {
            Point end = farthest(level, span.start());
            Point other = farthest(level, end);
            return end.x() <= other.x() ? new Line(end, other) : new Line(other, end);
        });
    }

    private static Point farthest(TableScene.LevelSight level, Point from) {
        return level.spans().stream()
                .flatMap(span -> Stream.of(span.start(), span.end()))
                .max(Comparator.comparingDouble(from::distance))
                .orElse(from);
    }

    /** The longest stretch of a level without a dart in it. */
    static Optional<Line> widest(TableScene.LevelSight level) {
        return level.spans().stream().max(Comparator.comparingDouble(Line::length));
    }

    private void line(Line span, TableScene.LevelSight level) {
        Point from = view.toScreen(span.start());
        Point to = view.toScreen(span.end());
        gc.setStroke(level.counts() ? ink.level() : ink.quiet());
        gc.setLineWidth(level.chosen() ? 2.4 : 1.2);
        if (level.counts()) {
            gc.setLineDashes();
        } else {
            gc.setLineDashes(3, 4);
        }
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        gc.setLineDashes();
        Point along = to.equals(from) ? new Point(1, 0) : to.minus(from).unit();
        Point across = along.quarterTurned().times(level.chosen() ? 7 : 4);
        gc.strokeLine(from.x() - across.x(), from.y() - across.y(), from.x() + across.x(), from.y() + across.y());
        gc.strokeLine(to.x() - across.x(), to.y() - across.y(), to.x() + across.x(), to.y() + across.y());
    }

    /** Notes the lines, for words that are to leave them to be seen. */
    void keepClear() {
        for (TableScene.LevelSight level : sight.levels()) {
            for (Line span : level.spans()) {
                room.putFaint(DrawnLine.along(List.of(span), view).get(0));
            }
        }
    }
}
