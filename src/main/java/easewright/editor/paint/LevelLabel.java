package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Words about a level in one row or two on a plate, and where they might stand. All in pixels. */
final class LevelLabel {
    /** How far from the middle of its line a label may stand, as parts of what there is, the best first. */
    private static final double[] PARTS = {0.25, 0.5, 0.75, 1};

    /** Along a line beside which it stands. */
    private static final double[] ALONG = {
        0.5, 0.39, 0.61, 0.28, 0.72, 0.33, 0.67, 0.305, 0.695, 0.44, 0.56, 0.22, 0.78, 0.17, 0.83
    };

    /** Between a label and what it keeps off. */
    private static final double EDGE = 6;

    /** So much farther off the paper a label may stand, clear of the cutting line. */
    private static final double OUTWARD = 24;

    /** How far beside its line, as parts of what is just clear of a level one. */
    private static final double[] FARTHER = {1, 1.4, 1.9};

    /** How much farther off the end of its line, clear of the cutting line. */
    private static final double[] BEYOND = {0, 9, 18};

    /** How much farther off the end of its line it may stand on a leader, and how far above or below, as parts of its height. */
    private static final double[] LED = {6, 22, 44, 72};

    private static final double[] STEPS = {-1.2, 1.2, -2.4, 2.4, -3.6, 3.6};

    /**
     * How far beyond the end of its line the middle of a label may lie that stands well above or below it, as parts of its
     * width: a leader straight down from the end would run along the seam; so it may only in a hollow such as an armhole.
     */
    private static final double[] UNDER = {0.5, 0.8, -0.5, -0.8, 0.2};

    /** A longer leader is not followed by the eye. */
    private static final double LONGEST = 120;

    /** A label much wider than its level says nothing of where it lies: the level has at least this share of its width. */
    private static final double LEAST_SHARE = 0.6;

    /** A label this near to its line needs no leader. */
    private static final double TOUCHING = 4;

    private static final double DOT = 2;

    private static final double PITCH = 14;

    private static final Font AT_REST = Font.font(11.5);
    private static final Font AT_WORK = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);
    private static final Font COMPACT = AT_REST;

    private final List<String> rows;
    private final boolean chosen;
    private final boolean compact;
    private final double length;
    private final Line seen;
    private final Optional<Point> off;
    private final double width;
    private final double height;

    /**
     * @param chosen  of the level at work
     * @param compact in smaller letters, with less air around them
     * @param length of the whole level
     * @param seen   what is seen of it
     * @param off    the way off the paper, up or down, from a level along the edge of its piece
     */
    LevelLabel(List<String> rows, boolean chosen, boolean compact, double length, Line seen, Optional<Point> off) {
        this.rows = List.copyOf(rows);
        this.chosen = chosen;
        this.compact = compact;
        this.length = length;
        this.seen = seen;
        this.off = off;
        double longest =
                rows.stream().mapToDouble(row -> Ruler.width(row, font())).max().orElse(0);
        width = longest + (compact ? 8 : 14);
        height = (chosen && !compact ? 22 : 18) + (rows.size() - 1) * pitch();
    }

    private double pitch() {
        return compact ? PITCH - 1 : PITCH;
    }

    private Font font() {
        return compact ? COMPACT : chosen ? AT_WORK : AT_REST;
    }

    List<String> rows() {
        return rows;
    }

    /** Of what is seen of its level. */
    Point middle() {
        return seen.at(0.5);
    }

    boolean isAtWork() {
        return chosen;
    }

    boolean isCompact() {
        return compact;
    }

    /** The same words in smaller letters, which fit wherever this stands. */
    LevelLabel inSmallLetters() {
        return new LevelLabel(rows, chosen, true, length, seen, off);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    boolean fitsItsLevel() {
        return length > width * LEAST_SHARE;
    }

    /** Just off the paper from a level along its edge, or on its line, the best first. */
    List<Point> onLine() {
        List<Point> middles = new ArrayList<>(offPaper());
        double roomy = seen.length() - width - 2 * EDGE;
        if (roomy > 0) {
            middles.addAll(along(roomy / 2));
        }
        return middles;
    }

    /** Just off the paper from a level along its edge, the nearest first. */
    List<Point> offPaper() {
        return off.map(this::offPaper).orElse(List.of());
    }

    /** Beyond either end of its line. */
    List<Point> offEnds() {
        double just = reach();
        List<Point> middles = new ArrayList<>();
        for (double beyond : BEYOND) {
            Point out = along().times(just + beyond);
            middles.add(seen.end().plus(out));
            middles.add(seen.start().minus(out));
        }
        if (chosen) {
            // In the hollow of an armhole there may be room where there is none beside its level.
            Point out = along().times(just);
            for (double down : new double[] {-height - EDGE, height + EDGE}) {
                middles.add(seen.end().plus(out).plus(new Point(0, down)));
                middles.add(seen.start().minus(out).plus(new Point(0, down)));
            }
        }
        return middles;
    }

    /** Beyond the ends of its line, and well above and below them, the nearest first: a leader tells where it belongs. */
    List<Point> onLeader() {
        List<Led> places = new ArrayList<>();
        for (double beyond : LED) {
            addAtEnds(reach() + beyond, 0, places);
        }
        for (double step : STEPS) {
            for (double under : UNDER) {
                addAtEnds(under * width + Math.signum(under) * EDGE, step * height, places);
            }
        }
        places.sort(Comparator.comparingDouble(Led::length));
        List<Point> middles = new ArrayList<>(places.size());
        places.forEach(led -> middles.add(led.middle()));
        return middles;
    }

    /** A place at the end of a leader of some length. */
    private record Led(Point middle, double length) {}

    private void addAtEnds(double beyond, double down, List<Led> places) {
        Point out = along().times(beyond);
        add(seen.end().plus(out).plus(new Point(0, down)), places);
        add(seen.start().minus(out).plus(new Point(0, down)), places);
    }

    private void add(Point middle, List<Led> places) {
        Point foot = seen.at(seen.nearest(middle));
        double length = LabelRoom.around(middle, width, height).distance(foot);
        if (length <= LONGEST) {
            places.add(new Led(middle, length));
        }
    }

    private double reach() {
        return width / 2 + EDGE + (chosen ? LevelPainter.GRIP / 2 : 0);
    }

    /** Below its line and above it. */
    List<Point> besideLine() {
        Point down = off.orElse(new Point(0, 1));
        double just = chosen ? (height + LevelPainter.GRIP) / 2 + 1 : height / 2 + 4;
        List<Point> middles = new ArrayList<>();
        for (double away : FARTHER) {
            addBeside(down.times(just * away), middles);
        }
        if (chosen) {
            // Nearer than grips allow, where none are.
            addBeside(down.times(height / 2 + 4), middles);
        }
        return middles;
    }

    private void addBeside(Point off, List<Point> middles) {
        for (double part : ALONG) {
            middles.add(seen.at(part).plus(off));
            middles.add(seen.at(part).minus(off));
        }
    }

    private Point along() {
        return seen.end().minus(seen.start()).unit();
    }

    /** On the line, its middle first, then by turns to either side as far as the label stays on it. */
    private List<Point> along(double reach) {
        Point middle = seen.at(0.5);
        Point along = along();
        List<Point> middles = new ArrayList<>(List.of(middle));
        for (double part : PARTS) {
            middles.add(middle.minus(along.times(reach * part)));
            middles.add(middle.plus(along.times(reach * part)));
        }
        return middles;
    }

    /** Just off the paper, the nearest place first. */
    private List<Point> offPaper(Point out) {
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

    /** From its line to the plate with this middle; empty where they touch. */
    Optional<Line> leader(Point middle) {
        Point foot = seen.at(seen.nearest(middle));
        double x = Math.max(middle.x() - width / 2, Math.min(middle.x() + width / 2, foot.x()));
        double y = Math.max(middle.y() - height / 2, Math.min(middle.y() + height / 2, foot.y()));
        Point rim = new Point(x, y);
        return foot.distance(rim) > TOUCHING ? Optional.of(new Line(foot, rim)) : Optional.empty();
    }

    /** Draws the plate with its words, and what leads to it. */
    void write(GraphicsContext gc, Ink ink, Point at) {
        leader(at).ifPresent(lead -> {
            gc.setLineDashes();
            gc.setStroke(ink.level());
            gc.setLineWidth(chosen ? 1.6 : 1);
            gc.strokeLine(
                    lead.start().x(),
                    lead.start().y(),
                    lead.end().x(),
                    lead.end().y());
            gc.setFill(ink.level());
            gc.fillOval(lead.start().x() - DOT, lead.start().y() - DOT, 2 * DOT, 2 * DOT);
        });
        plate(gc, ink, at);
        gc.setFont(font());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(chosen ? ink.levelText() : ink.level());
        for (int i = 0; i < rows.size(); i++) {
            gc.fillText(rows.get(i), at.x(), at.y() + (i - (rows.size() - 1) / 2.0) * pitch());
        }
    }

    private void plate(GraphicsContext gc, Ink ink, Point middle) {
        double left = middle.x() - width / 2;
        double top = middle.y() - height / 2;
        double round = height - (rows.size() - 1) * pitch();
        gc.setFill(chosen ? ink.level() : ink.paper());
        gc.fillRoundRect(left, top, width, height, round, round);
        if (!chosen) {
            gc.setStroke(ink.level());
            gc.setLineWidth(1);
            gc.strokeRoundRect(left, top, width, height, round, round);
        }
    }
}
