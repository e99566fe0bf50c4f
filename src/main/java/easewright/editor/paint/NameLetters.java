package easewright.editor.paint;

import easewright.geom.Point;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/**
 * Writes the name of one piece once its place is found. The letters have a rim of paper, so that what is faintly drawn
 * below does not stand between them.
 *
 * @param aside whether the piece is not what is worked at: it is written without a rim, in quiet letters
 * @param thin  how wide or high the piece is on the screen, whichever is less, pixels
 */
record NameLetters(GraphicsContext gc, Ink ink, boolean aside, double thin) {
    /** The rim of paper round letters, pixels. */
    private static final double RIM = 5;

    /** On a piece as thin as this the whole rim would lie over its lines, pixels. */
    private static final double SLIM = 22;

    /**
     * @param turn by which the rows are turned about their middle, radians
     */
    void write(NameSetting way, Point middle, double turn) {
        gc.setTextBaseline(VPos.CENTER);
        gc.setTextAlign(TextAlignment.CENTER);
        if (turn == 0) {
            way.rows().forEach(row -> write(row, middle));
        } else {
            gc.save();
            gc.translate(middle.x(), middle.y());
            gc.rotate(Math.toDegrees(turn));
            way.rows().forEach(row -> write(row, Point.ORIGIN));
            gc.restore();
        }
    }

    private void write(NameSetting.Row row, Point middle) {
        double x = middle.x() + row.x();
        double y = middle.y() + row.y();
        gc.setFont(row.font());
        if (!aside) {
            gc.setStroke(ink.paper());
            gc.setLineWidth(thin < SLIM ? RIM / 3 : RIM);
            gc.setLineDashes();
            gc.strokeText(row.words(), x, y);
        }
        gc.setFill(row.quiet() || aside ? ink.quiet() : ink.text());
        gc.fillText(row.words(), x, y);
    }
}
