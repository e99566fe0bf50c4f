package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws what comes and goes above the table: the places where a seam can be taken hold of, and the amount. */
public final class OverlayPainter {
    /** Half the size of a grip, in pixels. */
    public static final double GRIP = 9;

    /** How wide a level glows, pixels. */
    private static final double GLOW = 9;

    private OverlayPainter() {}

    /**
     * A place to take hold of.
     *
     * @param outward unit direction in which it is pulled
     * @param active  under the pointer, in the hand, or with the keyboard's focus
     */
    public record Grip(Point at, Point outward, boolean active) {}

    /**
     * Clears the canvas and draws the grips, and beside the first active one the words about the amount.
     *
     * @param glowing levels that a click would choose
     */
    public static void paint(
            GraphicsContext gc,
            double width,
            double height,
            Viewport view,
            Ink ink,
            List<Grip> grips,
            List<Line> glowing,
            String amount) {
        gc.clearRect(0, 0, width, height);
        gc.setLineDashes();
        gc.setStroke(ink.level().deriveColor(0, 1, 1, 0.3));
        gc.setLineWidth(GLOW);
        for (Line level : glowing) {
            Point from = view.toScreen(level.start());
            Point to = view.toScreen(level.end());
            gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        }
        for (Grip grip : grips) {
            grip(gc, view, ink, grip);
        }
        Optional<Grip> active = grips.stream().filter(Grip::active).findFirst();
        if (active.isPresent() && !amount.isEmpty()) {
            bubble(gc, width, view.toScreen(active.get().at()), ink, amount);
        }
    }

    /** A round button with two small arrows along the level. */
    private static void grip(GraphicsContext gc, Viewport view, Ink ink, Grip grip) {
        Point at = view.toScreen(grip.at());
        double r = grip.active() ? GRIP + 2 : GRIP;
        gc.setLineDashes();
        gc.setFill(grip.active() ? ink.moved() : ink.paper());
        gc.fillOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
        gc.setStroke(ink.moved());
        gc.setLineWidth(2);
        gc.strokeOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
        gc.setFill(grip.active() ? ink.paper() : ink.moved());
        arrow(gc, at, grip.outward(), 6);
        arrow(gc, at, grip.outward().times(-1), 6);
    }

    private static void arrow(GraphicsContext gc, Point at, Point direction, double reach) {
        Point side = direction.quarterTurned().times(3.2);
        Point tip = at.plus(direction.times(reach));
        Point foot = at.plus(direction.times(reach - 4));
        gc.fillPolygon(
                new double[] {tip.x(), foot.x() + side.x(), foot.x() - side.x()},
                new double[] {tip.y(), foot.y() + side.y(), foot.y() - side.y()},
                3);
    }

    private static void bubble(GraphicsContext gc, double width, Point at, Ink ink, String words) {
        Font font = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 13);
        Text ruler = new Text(words);
        ruler.setFont(font);
        double w = ruler.getLayoutBounds().getWidth() + 20;
        double h = 26;
        double x = Math.max(6, Math.min(width - w - 6, at.x() - w / 2));
        double y = at.y() - 52 < 6 ? at.y() + 24 : at.y() - 52;
        gc.setFill(ink.moved());
        gc.fillRoundRect(x, y, w, h, 10, 10);
        gc.setFill(ink.paper());
        gc.setFont(font);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.fillText(words, x + w / 2, y + h / 2);
    }
}
