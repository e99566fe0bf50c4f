package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws the levels of one piece as measured: a line from stitching line to stitching line with its width. */
final class LevelPainter {
    /** How far from the middle of its line a level's label may stand, as parts of what there is, the best first. */
    private static final double[] PARTS = {0.25, 0.5, 0.75, 1};

    /** What lies so far from a level is on the paper beside it, or off it, pixels. */
    private static final double EDGE = 6;

    /** So much farther off the paper a label may stand, clear of the cutting line, pixels. */
    private static final double OUTWARD = 24;

    /** How far beside its line, as parts of what is just clear of a level one. */
    private static final double[] FARTHER = {1, 1.4, 1.9};

    /** A label much wider than its level says nothing of where it lies: the level has at least this share of its width. */
    private static final double LEAST_SHARE = 0.6;

    /** What a grip takes with some air around it, pixels. */
    static final double GRIP = 2 * OverlayPainter.GRIP + 6;

    private static final Font AT_REST = Font.font(11.5);
    private static final Font AT_WORK = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom room;
    private final Set<String> labelled = new HashSet<>();

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
        sight.levels().stream()
                .filter(TableScene.LevelSight::chosen)
                .forEach(level -> label(level, brief ? level.brief() : level.label(), false));
    }

    /** On a large piece the names and widths of the other levels, where they are clear of everything. */
    void clearOthers() {
        if (sight.piece().outline().box().width() * view.scale() >= MarkPainter.LEAST_ROOM) {
            others(true);
        }
    }

    /** The names and widths of the other levels, or their names alone, where they have room. */
    void others() {
        others(false);
    }

    private void others(boolean clear) {
        sight.levels().stream()
                .filter(level -> !level.chosen() && !labelled.contains(level.level()))
                .forEach(level -> label(level, level.label(), clear));
    }

    private void label(TableScene.LevelSight level, String words, boolean clear) {
        widest(level)
                .filter(widest -> widest.length() * view.scale() > 40)
                .ifPresent(widest -> label(widest, level, words, clear));
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

    private void label(Line span, TableScene.LevelSight level, String words, boolean clear) {
        Optional<Line> seen = room.seen(view.toScreen(span.start()), view.toScreen(span.end()));
        if (seen.isEmpty()) {
            return;
        }
        Font font = level.chosen() ? AT_WORK : AT_REST;
        double width = width(words, font);
        double height = level.chosen() ? 22 : 18;
        List<Point> middles = places(span, seen.get(), width, height, level.chosen());
        boolean wide = span.length() * view.scale() > width * LEAST_SHARE;
        Optional<Point> free = wide ? room.takeClear(middles, width, height) : Optional.empty();
        if (wide && !clear) {
            // A dart in the middle of the piece is not to be covered while there is room beside the paper.
            boolean besides = !level.chosen() && meetsDart(span);
            free = free.or(() -> besides ? offEnds(seen.get(), width, height) : Optional.empty())
                    .or(() -> room.take(middles, width, height));
        }
        if (free.isPresent()) {
            plate(free.get(), width, height, level.chosen());
            gc.setFont(font);
            gc.setTextAlign(TextAlignment.CENTER);
            gc.setTextBaseline(VPos.CENTER);
            gc.setFill(level.chosen() ? ink.levelText() : ink.level());
            gc.fillText(words, free.get().x(), free.get().y());
            labelled.add(level.level());
        } else if (!clear && !level.chosen() && !words.equals(level.level())) {
            label(span, level, level.level(), false);
        }
    }

    /** Where a label may stand, the best first, pixels. */
    private List<Point> places(Line span, Line seen, double width, double height, boolean chosen) {
        List<Point> middles = new ArrayList<>();
        Optional<Point> off = offPaper(span);
        off.ifPresent(out -> middles.addAll(beside(seen, out, width, height)));
        double roomy = seen.length() - width - 2 * EDGE;
        if (roomy > 0) {
            middles.addAll(along(seen, roomy / 2));
        }
        if (chosen) {
            // Where the piece is too narrow for it: off its sides, or below the line, or above it.
            Point beyond = seen.end().minus(seen.start()).unit().times((width + GRIP) / 2 + EDGE);
            middles.add(seen.end().plus(beyond));
            middles.add(seen.start().minus(beyond));
            Point down = off.orElse(new Point(0, 1));
            double aside = (height + GRIP) / 2 + 1;
            for (double away : FARTHER) {
                middles.add(seen.at(0.5).plus(down.times(aside * away)));
                middles.add(seen.at(0.5).minus(down.times(aside * away)));
            }
        }
        return middles;
    }

    private boolean meetsDart(Line span) {
        Box along = Box.around(List.of(span.start(), span.end()));
        return sight.piece().darts().stream()
                .anyMatch(dart -> Box.around(dart.corners()).overlaps(along));
    }

    /** Beside either end of the line where nothing at all is, its end first, pixels; takes it. */
    private Optional<Point> offEnds(Line seen, double width, double height) {
        Point out = seen.end().minus(seen.start()).unit().times(width / 2 + EDGE);
        return Stream.of(seen.end().plus(out), seen.start().minus(out))
                .filter(middle -> room.takeClear(middle, width, height))
                .findFirst();
    }

    /** On the line, its middle first, then by turns to either side as far as the label stays on it, pixels. */
    private static List<Point> along(Line seen, double reach) {
        Point middle = seen.at(0.5);
        Point along = seen.end().minus(seen.start()).unit();
        List<Point> middles = new ArrayList<>(List.of(middle));
        for (double part : PARTS) {
            middles.add(middle.minus(along.times(reach * part)));
            middles.add(middle.plus(along.times(reach * part)));
        }
        return middles;
    }

    /** The way off the paper, up or down, from a level along the edge of its piece: there its label hides no dart. */
    private Optional<Point> offPaper(Line span) {
        Point middle = view.toScreen(span.at(0.5));
        List<Point> ways = List.of(new Point(0, -1), new Point(0, 1));
        List<Point> off = ways.stream()
                .filter(way -> {
                    Point there = middle.plus(way.times(EDGE));
                    return !sight.piece().outline().contains(view.toTable(there.x(), there.y()));
                })
                .toList();
        return off.size() == 1 ? Optional.of(off.get(0)) : Optional.empty();
    }

    /** Just off the paper, the nearest place first, pixels. */
    private static List<Point> beside(Line seen, Point out, double width, double height) {
        Point run = seen.end().minus(seen.start());
        double slope = Math.abs(run.y()) / Math.max(Math.abs(run.x()), 1e-9);
        double clear = height / 2 + EDGE + Math.min(slope, 1) * width / 2;
        Point middle = seen.at(0.5);
        List<Point> middles = new ArrayList<>();
        for (double more = 0; more <= OUTWARD; more += EDGE) {
            middles.add(middle.plus(out.times(clear + more)));
        }
        return middles;
    }

    private void plate(Point middle, double width, double height, boolean chosen) {
        gc.setFill(chosen ? ink.level() : ink.paper());
        gc.fillRoundRect(middle.x() - width / 2, middle.y() - height / 2, width, height, height, height);
        if (!chosen) {
            gc.setStroke(ink.level());
            gc.setLineWidth(1);
            gc.strokeRoundRect(middle.x() - width / 2, middle.y() - height / 2, width, height, height, height);
        }
    }

    /** How wide words are with the plate they stand on, pixels. */
    private static double width(String words, Font font) {
        return Ruler.width(words, font) + 14;
    }
}
