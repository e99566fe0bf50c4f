package easewright.editor.paint;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws the whole name of a piece, and how often it is cut, on a plate beside the pointer, where the piece has no room for it. */
public final class NamePlate {
    /** How many letters stand in a row of a very long name. */
    private static final int LETTERS = 44;

    private static final double PITCH = 16;

    /** From the words to the rim of the plate, pixels. */
    private static final double AIR = 8;

    /** From the pointer, so that its sign covers no letter, and from the edge of the view, pixels. */
    private static final double AWAY = 18;

    private static final double EDGE = 6;

    private static final Font PLAIN = Font.font(12);

    private NamePlate() {}

    /**
     * Draws over what lies there.
     *
     * @param below  what stands below the name
     * @param x      of the pointer, pixels
     * @param y      the same
     * @param width  of the view, pixels
     * @param height the same
     */
    public static void paint(
            GraphicsContext gc, Ink ink, String name, String below, double x, double y, double width, double height) {
        Font font = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);
        List<String> rows = NameRows.even(name, (name.length() + LETTERS - 1) / LETTERS);
        double longest =
                rows.stream().mapToDouble(row -> Ruler.width(row, font)).max().orElse(0);
        double wide = Math.max(longest, Ruler.width(below, PLAIN)) + 2 * AIR;
        double high = (rows.size() + 1) * PITCH + AIR;
        double left = Math.max(EDGE, Math.min(width - wide - EDGE, x + AWAY));
        double top = y + AWAY + high > height - SeenTable.FOOT ? y - AWAY - high : y + AWAY;
        gc.setLineDashes();
        gc.setFill(ink.paper());
        gc.fillRoundRect(left, top, wide, high, AIR, AIR);
        gc.setStroke(ink.line());
        gc.setLineWidth(1);
        gc.strokeRoundRect(left, top, wide, high, AIR, AIR);
        gc.setFont(font);
        gc.setFill(ink.text());
        gc.setTextAlign(TextAlignment.LEFT);
        gc.setTextBaseline(VPos.CENTER);
        for (int i = 0; i < rows.size(); i++) {
            gc.fillText(rows.get(i), left + AIR, top + AIR / 2 + (i + 0.5) * PITCH);
        }
        gc.setFont(PLAIN);
        gc.setFill(ink.quiet());
        gc.fillText(below, left + AIR, top + AIR / 2 + (rows.size() + 0.5) * PITCH);
    }
}
