package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws the levels of one piece as measured: a line from stitching line to stitching line with its width. */
final class LevelPainter {
    /** Where on its line a level's label may stand, the best place first. */
    private static final List<Double> ALONG = List.of(0.5, 0.38, 0.62, 0.27, 0.73);

    /** How far beside its line, as parts of what is just clear of a level one. */
    private static final double[] FARTHER = {1, 1.4, 1.9};

    /** What a grip takes with some air around it, pixels. */
    private static final double GRIP = 2 * OverlayPainter.GRIP + 6;

    private static final Font AT_WORK = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);

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
            if (level.chosen() && !level.spans().isEmpty()) {
                Point end = farthest(level, level.spans().get(0).start());
                Point other = farthest(level, end);
                room.put(LabelRoom.around(view.toScreen(end), GRIP, GRIP));
                room.put(LabelRoom.around(view.toScreen(other), GRIP, GRIP));
            }
        }
    }

    private static Point farthest(TableScene.LevelSight level, Point from) {
        return level.spans().stream()
                .flatMap(span -> Stream.of(span.start(), span.end()))
                .max(Comparator.comparingDouble(from::distance))
                .orElse(from);
    }

    private static Optional<Line> widest(TableScene.LevelSight level) {
        return level.spans().stream().max(Comparator.comparingDouble(Line::length));
    }

    /** Whether the level at work is too short here for its name and width. */
    boolean isNarrow() {
        return sight.levels().stream()
                .filter(TableScene.LevelSight::chosen)
                .anyMatch(level -> widest(level)
                        .filter(widest -> width(level.label(), AT_WORK) > widest.length() * view.scale() - GRIP)
                        .isPresent());
    }

    /**
     * The width of the level at work.
     *
     * @param brief without its name, alike on all pieces
     */
    void atWork(boolean brief) {
        labels(true, brief);
    }

    /** The names and widths of the other levels where they have room. */
    void others() {
        labels(false, false);
    }

    private void labels(boolean chosen, boolean brief) {
        for (TableScene.LevelSight level : sight.levels()) {
            if (level.chosen() == chosen) {
                widest(level)
                        .filter(widest -> widest.length() * view.scale() > 40)
                        .ifPresent(widest -> label(widest, level, brief ? level.brief() : level.label()));
            }
        }
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

    private void label(Line span, TableScene.LevelSight level, String words) {
        Font font = level.chosen() ? AT_WORK : Font.font(11.5);
        double width = width(words, font);
        if (width > span.length() * view.scale() * 1.15 && !level.chosen()) {
            return;
        }
        double height = level.chosen() ? 22 : 18;
        List<Point> middles = new ArrayList<>(ALONG.stream()
                .map(t -> view.toScreen(span.start().towards(span.end(), t)))
                .toList());
        if (level.chosen()) {
            // Where the piece is too narrow for it: off the paper above it, or below the line, or above it.
            Point middle = middles.get(0);
            double aside = (height + GRIP) / 2 + 1;
            Point above = view.toTable(middle.x(), middle.y() - aside);
            double first = sight.piece().outline().contains(above) ? aside : -aside;
            for (double away : FARTHER) {
                middles.add(middle.plus(new Point(0, first * away)));
                middles.add(middle.minus(new Point(0, first * away)));
            }
        }
        Optional<Point> free = room.take(middles, width, height);
        if (free.isEmpty() && !level.chosen()) {
            return;
        }
        Point middle = free.orElse(middles.get(0));
        Color ground = level.chosen() ? ink.level() : ink.paper();
        gc.setFill(ground);
        gc.fillRoundRect(middle.x() - width / 2, middle.y() - height / 2, width, height, height, height);
        if (!level.chosen()) {
            gc.setStroke(ink.level());
            gc.setLineWidth(1);
            gc.strokeRoundRect(middle.x() - width / 2, middle.y() - height / 2, width, height, height, height);
        }
        gc.setFont(font);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(level.chosen() ? ink.levelText() : ink.level());
        gc.fillText(words, middle.x(), middle.y());
    }

    /** How wide words are with the plate they stand on, pixels. */
    private static double width(String words, Font font) {
        Text ruler = new Text(words);
        ruler.setFont(font);
        return ruler.getLayoutBounds().getWidth() + 14;
    }
}
