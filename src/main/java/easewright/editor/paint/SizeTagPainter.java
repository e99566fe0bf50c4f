package easewright.editor.paint;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** Writes beside the lines of sizes that lie over each other which is which: a dot on the line, and its size off the piece. */
final class SizeTagPainter {
    private static final double DOT = 3.2;
    private static final double HIGH = 16;

    /** How far off its line a size may stand, the best first, pixels. */
    private static final double[] OFF = {24, 38, 54, -24, -38};

    private SizeTagPainter() {}

    /**
     * @param room for the words, which hide no others
     */
    static void paint(GraphicsContext gc, Viewport view, Ink ink, List<TableScene.SizeTag> tags, LabelRoom room) {
        Font font = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12);
        for (TableScene.SizeTag tag : tags) {
            Point at = view.toScreen(tag.at());
            double wide = Ruler.width(tag.size(), font);
            List<Point> middles = new ArrayList<>();
            for (double off : OFF) {
                middles.add(at.plus(tag.outward().times(off + Math.signum(off) * wide / 2)));
            }
            Point middle = middles.stream()
                    .filter(m -> room.take(LabelRoom.around(m, wide + 4, HIGH)))
                    .findFirst()
                    .orElse(middles.get(0));
            paint(gc, ink, tag.size(), font, at, middle);
        }
    }

    private static void paint(GraphicsContext gc, Ink ink, String size, Font font, Point at, Point middle) {
        gc.setLineDashes();
        gc.setStroke(ink.level());
        gc.setLineWidth(1.2);
        gc.strokeLine(at.x(), at.y(), middle.x(), middle.y());
        gc.setFill(ink.level());
        gc.fillOval(at.x() - DOT, at.y() - DOT, 2 * DOT, 2 * DOT);
        RimmedWords.paint(gc, ink, size, font, middle, 5, ink.level());
    }
}
