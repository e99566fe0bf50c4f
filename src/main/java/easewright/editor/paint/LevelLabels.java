package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
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

/**
 * Writes what the levels of one piece are called and how wide it is there: on its line, else beyond its ends or beside it,
 * else in fewer words. A dart, the grain and a fold are hidden by none as long as there is any other place.
 */
final class LevelLabels {
    /** How far from the middle of its line a label may stand, as parts of what there is, the best first. */
    private static final double[] PARTS = {0.25, 0.5, 0.75, 1};

    /** Along a line beside which it stands. */
    private static final double[] ALONG = {0.5, 0.28, 0.72};

    /** What lies so far from a level is on the paper beside it, or off it, pixels. */
    private static final double EDGE = 6;

    /** So much farther off the paper a label may stand, clear of the cutting line, pixels. */
    private static final double OUTWARD = 24;

    /** How far beside its line, as parts of what is just clear of a level one. */
    private static final double[] FARTHER = {1, 1.4, 1.9};

    /** How much farther off the end of its line, clear of the cutting line, pixels. */
    private static final double[] BEYOND = {0, 9, 18};

    /** A label much wider than its level says nothing of where it lies: the level has at least this share of its width. */
    private static final double LEAST_SHARE = 0.6;

    /** A level shorter than this goes without a label, pixels; and one that is worked at. */
    private static final double SHORT = 40;

    private static final double SHORTEST = 24;

    /** A long name is shortened to so many letters where there is no room for it. */
    private static final int LETTERS = 12;

    private static final Font AT_REST = Font.font(11.5);
    private static final Font AT_WORK = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom room;
    private final Set<String> labelled = new HashSet<>();

    LevelLabels(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.room = room;
    }

    boolean isAside() {
        return sight.aside();
    }

    /** Words on a plate, and where they might stand. */
    private final class Label {
        private final String words;
        private final boolean chosen;
        private final Line level;
        private final Line seen;
        private final double width;
        private final double height;

        Label(String words, boolean chosen, Line level, Line seen) {
            this.words = words;
            this.chosen = chosen;
            this.level = level;
            this.seen = seen;
            width = Ruler.width(words, font()) + 14;
            height = chosen ? 22 : 18;
        }

        private Font font() {
            return chosen ? AT_WORK : AT_REST;
        }

        boolean fitsItsLevel() {
            return level.length() * view.scale() > width * LEAST_SHARE;
        }

        /** Just off the paper from a level along its edge, or on its line, the best first. */
        List<Point> onLine() {
            List<Point> middles = new ArrayList<>();
            offPaper(level).ifPresent(out -> middles.addAll(beside(seen, out, width, height)));
            double roomy = seen.length() - width - 2 * EDGE;
            if (roomy > 0) {
                middles.addAll(along(seen, roomy / 2));
            }
            return middles;
        }

        /** Beyond either end of its line. */
        List<Point> offEnds() {
            double just = width / 2 + EDGE + (chosen ? LevelPainter.GRIP / 2 : 0);
            List<Point> middles = new ArrayList<>();
            for (double beyond : BEYOND) {
                Point out = along(seen).times(just + beyond);
                middles.add(seen.end().plus(out));
                middles.add(seen.start().minus(out));
            }
            if (chosen) {
                // In the hollow of an armhole there may be room where there is none beside its level.
                Point out = along(seen).times(just);
                for (double down : new double[] {-height - EDGE, height + EDGE}) {
                    middles.add(seen.end().plus(out).plus(new Point(0, down)));
                    middles.add(seen.start().minus(out).plus(new Point(0, down)));
                }
            }
            return middles;
        }

        /** Below its line and above it. */
        List<Point> besideLine() {
            Point down = offPaper(level).orElse(new Point(0, 1));
            double just = chosen ? (height + LevelPainter.GRIP) / 2 + 1 : height / 2 + 4;
            List<Point> middles = new ArrayList<>();
            for (double away : FARTHER) {
                for (double part : ALONG) {
                    middles.add(seen.at(part).plus(down.times(just * away)));
                    middles.add(seen.at(part).minus(down.times(just * away)));
                }
            }
            return middles;
        }

        void write(Point at) {
            plate(at, width, height, chosen);
            gc.setFont(font());
            gc.setTextAlign(TextAlignment.CENTER);
            gc.setTextBaseline(VPos.CENTER);
            gc.setFill(chosen ? ink.levelText() : ink.level());
            gc.fillText(words, at.x(), at.y());
        }
    }

    private Optional<Label> label(TableScene.LevelSight level, String words) {
        Optional<Line> line = LevelPainter.widest(level)
                .filter(widest -> widest.length() * view.scale() > SHORT)
                .or(() -> LevelPainter.extent(level)
                        .filter(all -> all.length() * view.scale() > (level.chosen() ? SHORTEST : SHORT)));
        return line.flatMap(l -> room.seen(view.toScreen(l.start()), view.toScreen(l.end()))
                .filter(seen -> seen.length() > 0)
                .map(seen -> new Label(words, level.chosen(), l, seen)));
    }

    private Stream<TableScene.LevelSight> atWork() {
        return sight.levels().stream().filter(TableScene.LevelSight::chosen);
    }

    /** Whether the level at work has room for its name and width together; takes it. */
    boolean hasRoomForAll() {
        return atWork().allMatch(level -> label(level, level.label())
                .map(l -> l.fitsItsLevel()
                        && room.takeClear(l.onLine(), l.width, l.height).isPresent())
                .orElse(true));
    }

    /**
     * The width of the level at work.
     *
     * @param brief without its name, alike on all pieces
     */
    void atWork(boolean brief) {
        atWork().forEach(level -> label(level, brief ? level.brief() : level.label())
                .ifPresent(l -> clear(l).or(() -> over(l)).ifPresent(l::write)));
    }

    private Optional<Point> clear(Label l) {
        return room.takeClear(l.onLine(), l.width, l.height)
                .or(() -> room.takeClear(l.offEnds(), l.width, l.height))
                .or(() -> room.takeClear(l.besideLine(), l.width, l.height));
    }

    /** Over lines of its own piece, a dart last of all; of a much narrower piece it would seem to be of the next one. */
    private Optional<Point> over(Label l) {
        if (!l.fitsItsLevel()) {
            return Optional.empty();
        }
        List<Point> middles = new ArrayList<>(l.onLine());
        middles.addAll(l.besideLine());
        return room.take(middles, l.width, l.height);
    }

    /** On a large piece the names and widths of the other levels, where they are clear of everything. */
    void clearOthers() {
        if (sight.piece().outline().box().width() * view.scale() >= MarkPainter.LEAST_ROOM) {
            atRest().forEach(level -> label(level, level.label())
                    .filter(Label::fitsItsLevel)
                    .ifPresent(l -> write(level, l, room.takeClear(l.onLine(), l.width, l.height))));
        }
    }

    /** The names and widths of the other levels, or their names alone, where they have room; nearer there is more. */
    void others() {
        for (TableScene.LevelSight level : atRest()) {
            String shortened = NameRows.shortened(level.level(), LETTERS);
            List<String> ways = List.of(level.label(), level.level(), shortened);
            for (int i = 0; i < ways.size() && !labelled.contains(level.level()); i++) {
                label(level, ways.get(i)).ifPresent(l -> write(level, l, free(l)));
            }
        }
    }

    private List<TableScene.LevelSight> atRest() {
        return sight.levels().stream()
                .filter(level -> !level.chosen() && !labelled.contains(level.level()))
                .toList();
    }

    /** Takes the best place where it hides nothing. */
    private Optional<Point> free(Label l) {
        Optional<Point> onLine = l.fitsItsLevel() ? room.takeClear(l.onLine(), l.width, l.height) : Optional.empty();
        return onLine.or(
                () -> Stream.concat(l.offEnds().stream(), l.fitsItsLevel() ? l.besideLine().stream() : Stream.of())
                        .filter(middle -> room.takeClear(middle, l.width, l.height))
                        .findFirst());
    }

    private void write(TableScene.LevelSight level, Label label, Optional<Point> at) {
        at.ifPresent(middle -> {
            label.write(middle);
            labelled.add(level.level());
        });
    }

    private static Point along(Line line) {
        return line.end().minus(line.start()).unit();
    }

    /** On the line, its middle first, then by turns to either side as far as the label stays on it, pixels. */
    private static List<Point> along(Line seen, double reach) {
        Point middle = seen.at(0.5);
        Point along = along(seen);
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
}
