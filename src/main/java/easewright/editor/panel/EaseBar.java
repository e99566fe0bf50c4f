package easewright.editor.panel;

import easewright.editor.model.EaseScale;
import easewright.editor.paint.Ink;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * The small bar of a level: a hatched stretch below the least ease for wearing, a band for the class, a ring for the
 * wish and a solid mark for the ease there is.
 */
final class EaseBar extends Region {
    private final Canvas canvas = new Canvas();
    private EaseScale scale;
    private boolean dark;

    EaseBar() {
        getStyleClass().add("ease-bar");
        canvas.setManaged(false);
        getChildren().add(canvas);
        setMinHeight(18);
        setPrefHeight(18);
        widthProperty().addListener(o -> paint());
        heightProperty().addListener(o -> paint());
    }

    void show(EaseScale shown, boolean lamp) {
        scale = shown;
        dark = lamp;
        paint();
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
        double inset = 6;
        double room = w - 2 * inset;
        double y = h / 2;
        gc.setFill(ink.quiet().deriveColor(0, 1, 1, 0.35));
        gc.fillRoundRect(0, y - 2, w, 4, 4, 4);
        if (scale.showsBand()) {
            double a = inset + room * scale.share(scale.bandFrom().getAsDouble());
            double b = inset + room * scale.share(scale.bandTo().orElse(scale.to()));
            gc.setFill(ink.level().deriveColor(0, 1, 1, 0.45));
            gc.fillRoundRect(Math.max(0, Math.min(a, b - 8)), y - 4, Math.max(8, b - a), 8, 8, 8);
        }
        if (scale.least().isPresent()) {
            double x = inset + room * scale.share(scale.least().getAsDouble());
            gc.setStroke(ink.quiet());
            gc.setLineWidth(1.5);
            gc.strokeLine(x, y - 7, x, y + 7);
            gc.setLineWidth(1);
            for (double hatch = 0; hatch < x - 3; hatch += 5) {
                gc.strokeLine(hatch, y + 4, hatch + 4, y - 4);
            }
        }
        if (scale.wish().isPresent()) {
            double x = inset + room * scale.share(scale.wish().getAsDouble());
            gc.setStroke(ink.moved());
            gc.setLineWidth(2);
            gc.strokeOval(x - 5.5, y - 5.5, 11, 11);
        }
        if (scale.now().isPresent()) {
            double x = inset + room * scale.share(scale.now().getAsDouble());
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
