package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws the levels of one piece as measured: a line from stitching line to stitching line with its width. */
final class LevelPainter {
    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;

    LevelPainter(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
    }

    void paint() {
        for (TableScene.LevelSight level : sight.levels()) {
            if (!level.chosen()) {
                paint(level);
            }
        }
        for (TableScene.LevelSight level : sight.levels()) {
            if (level.chosen()) {
                paint(level);
            }
        }
    }

    private void paint(TableScene.LevelSight level) {
        Line widest = null;
        for (Line span : level.spans()) {
            line(span, level);
            if (widest == null || span.length() > widest.length()) {
                widest = span;
            }
        }
        if (widest != null && widest.length() * view.scale() > 40) {
            label(widest, level);
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

    private void label(Line span, TableScene.LevelSight level) {
        Font font = level.chosen() ? Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5) : Font.font(11.5);
        Text ruler = new Text(level.label());
        ruler.setFont(font);
        double width = ruler.getLayoutBounds().getWidth() + 14;
        double room = span.length() * view.scale();
        if (width > room * 1.15 && !level.chosen()) {
            return;
        }
        Point middle = view.toScreen(span.start().towards(span.end(), 0.5));
        double height = level.chosen() ? 22 : 18;
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
        gc.fillText(level.label(), middle.x(), middle.y());
    }
}
