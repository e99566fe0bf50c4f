package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Draws a place that was chosen on the table: a cross in a ring, with what it is for beside it. */
public final class PlacePainter {
    private PlacePainter() {}

    /** Draws one place over what lies there. */
    public static void paint(GraphicsContext gc, Viewport view, Ink ink, Point place, String label) {
        Point at = view.toScreen(place);
        gc.setLineDashes();
        gc.setStroke(ink.paper());
        gc.setLineWidth(5);
        cross(gc, at);
        gc.setStroke(ink.moved());
        gc.setLineWidth(2);
        cross(gc, at);
        gc.setFont(Font.font(12));
        gc.setTextAlign(TextAlignment.LEFT);
        gc.setTextBaseline(VPos.CENTER);
        gc.setStroke(ink.paper());
        gc.setLineWidth(4);
        gc.strokeText(label, at.x() + 12, at.y() - 9);
        gc.setFill(ink.moved());
        gc.fillText(label, at.x() + 12, at.y() - 9);
    }

    /** Draws a cut from place to place. */
    public static void cut(GraphicsContext gc, Viewport view, Ink ink, Line cut) {
        Point from = view.toScreen(cut.start());
        Point to = view.toScreen(cut.end());
        gc.setLineDashes();
        gc.setStroke(ink.paper());
        gc.setLineWidth(4);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        gc.setStroke(ink.moved());
        gc.setLineWidth(1.6);
        gc.setLineDashes(9, 4, 2, 4);
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        gc.setLineDashes();
    }

    private static void cross(GraphicsContext gc, Point at) {
        gc.strokeOval(at.x() - 5, at.y() - 5, 10, 10);
        gc.strokeLine(at.x() - 9, at.y(), at.x() + 9, at.y());
        gc.strokeLine(at.x(), at.y() - 9, at.x(), at.y() + 9);
    }
}
