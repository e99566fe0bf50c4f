package easewright.editor.paint;

import easewright.geom.Point;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Words round whose letters a rim of paper keeps the lines away that they lie on. */
final class RimmedWords {
    private RimmedWords() {}

    /**
     * @param middle of the words, pixels
     * @param rim    how wide the line is with which their letters are traced in the colour of the paper
     */
    static void paint(GraphicsContext gc, Ink ink, String words, Font font, Point middle, double rim, Color color) {
        gc.setFont(font);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setLineDashes();
        gc.setStroke(ink.paper());
        gc.setLineWidth(rim);
        gc.strokeText(words, middle.x(), middle.y());
        gc.setFill(color);
        gc.fillText(words, middle.x(), middle.y());
    }
}
