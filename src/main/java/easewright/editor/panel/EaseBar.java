package easewright.editor.panel;

import easewright.editor.model.EaseScale;
import easewright.editor.paint.Ink;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/**
 * The small bar of a level: a tick where the garment is as wide as the body, a hatched stretch below the least ease for
 * moving in comfort, a band for the class, a ring for the wish and a diamond for the ease there is. Above it stand the figures of
 * its ends and of the least ease, as far as they have room.
 */
final class EaseBar extends Region {
    private static final double HEIGHT = 25;

    /** From the end of the bar to the end of its scale, pixels. */
    private static final double INSET = 6;

    /** How high the figures are, and how far apart at least, pixels. */
    private static final double LETTERS = 10;

    private static final double APART = 5;

    private final Canvas canvas = new Canvas();
    private EaseScale scale;
    private Words words;
    private boolean dark;

    EaseBar() {
        getStyleClass().add("ease-bar");
        canvas.setManaged(false);
        getChildren().add(canvas);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        widthProperty().addListener(o -> paint());
        heightProperty().addListener(o -> paint());
    }

    /**
     * @param said in whose unit the figures are
     */
    void show(EaseScale shown, boolean lamp, Words said) {
        scale = shown;
        dark = lamp;
        words = said;
        paint();
    }

    private double at(double mm) {
        return INSET + (getWidth() - 2 * INSET) * scale.share(mm);
    }

    /** The figures that have room, the most needed first. */
    private void figures(GraphicsContext gc, Ink ink) {
        gc.setFont(Font.font(LETTERS));
        gc.setFill(ink.quiet());
        gc.setTextBaseline(VPos.TOP);
        gc.setTextAlign(TextAlignment.CENTER);
        List<double[]> taken = new ArrayList<>();
        for (double mm : scale.figures()) {
            String figure = words.bare(words.coarse(mm));
            boolean least = scale.least().isPresent() && scale.least().getAsDouble() == mm;
            // What the figure at the end of the hatched stretch is, where there is room to say it.
            boolean said = least && figure(words.of("editor.ease.bar.least", Map.of("least", figure)), mm, gc, taken);
            if (!said) {
                figure(figure, mm, gc, taken);
            }
        }
    }

    /** Writes it where it stands, if there is room beside what is written. */
    private boolean figure(String figure, double mm, GraphicsContext gc, List<double[]> taken) {
        Text measured = new Text(figure);
        measured.setFont(gc.getFont());
        double half = measured.getLayoutBounds().getWidth() / 2;
        double x = Math.max(half, Math.min(getWidth() - half, at(mm)));
        boolean free = taken.stream().allMatch(t -> x + half + APART < t[0] || x - half - APART > t[1]);
        if (free) {
            taken.add(new double[] {x - half, x + half});
            gc.fillText(figure, x, -1);
        }
        return free;
    }

    /** Strokes that lean, from the beginning to exactly the end: what is bare looks as if it were allowed. Pixels. */
    static List<Line> hatching(double end) {
        List<Line> strokes = new ArrayList<>();
        for (double from = 0; from < end; from += 5) {
            double to = Math.min(from + 4, end);
            strokes.add(new Line(from, 4, to, 4 - 2 * (to - from)));
        }
        return strokes;
    }

    private void paint() {
        double w = getWidth();
        double h = getHeight();
        canvas.setWidth(w);
        canvas.setHeight(h);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, w, h);
        if (scale == null || w < 20) {
            return;
        }
        Ink ink = dark ? Ink.DARK : Ink.LIGHT;
        double y = h - 8;
        gc.setFill(ink.quiet().deriveColor(0, 1, 1, 0.35));
        gc.fillRoundRect(0, y - 2, w, 4, 4, 4);
        if (scale.showsBand()) {
            double a = at(scale.bandFrom().getAsDouble());
            double b = at(scale.bandTo().orElse(scale.to()));
            gc.setFill(ink.level().deriveColor(0, 1, 1, 0.45));
            gc.fillRoundRect(Math.max(0, Math.min(a, b - 8)), y - 4, Math.max(8, b - a), 8, 8, 8);
        }
        figures(gc, ink);
        gc.setStroke(ink.quiet());
        gc.setLineWidth(1.5);
        gc.strokeLine(at(0), y - 5, at(0), y + 5);
        if (scale.least().isPresent()) {
            double x = at(scale.least().getAsDouble());
            gc.strokeLine(x, y - 6, x, y + 7);
            gc.setLineWidth(1);
            hatching(x).forEach(s -> gc.strokeLine(s.getStartX(), y + s.getStartY(), s.getEndX(), y + s.getEndY()));
        }
        if (scale.wish().isPresent()) {
            double x = at(scale.marked(scale.wish().getAsDouble()));
            gc.setStroke(ink.moved());
            gc.setLineWidth(2);
            gc.strokeOval(x - 5.5, y - 5.5, 11, 11);
        }
        if (scale.now().isPresent()) {
            double x = at(scale.marked(scale.now().getAsDouble()));
            // Beyond the end of the bar it points there.
            int off = scale.beyond(scale.now().getAsDouble());
            gc.setFill(ink.text());
            gc.fillPolygon(
                    new double[] {x, off < 0 ? x : x + 4.5, x, off > 0 ? x : x - 4.5},
                    new double[] {y - 7, y, y + 7, y},
                    4);
        }
    }
}
