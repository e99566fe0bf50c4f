package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws what comes and goes above the table: the places where a seam can be taken hold of, and the amount. */
public final class OverlayPainter {
    /** Half the size of a grip, in pixels. */
    public static final double GRIP = 9;

    /** How wide a level glows, pixels. */
    private static final double GLOW = 9;

    private OverlayPainter() {}

    /** Half the size of one for which there is no more room, pixels. */
    private static final double DOT = 4;

    /** Half the size of the foot of a stem, on the seam, pixels. */
    private static final double FOOT = 3.5;

    /** How far from a marked end its stem begins, off the piece and on it, pixels. */
    private static final double PAST_LINE = 3.5;

    private static final double PAST_NOTCH = 10.5;

    /**
     * A place to take hold of.
     *
     * @param end     of the level, pixels
     * @param off     from there to where it is drawn, pixels
     * @param outward unit direction in which it is pulled
     * @param small   there is room for a dot alone
     * @param marked  there is a corner or a notch at the end, which the stem leaves to be seen
     * @param active  under the pointer, in the hand, or with the keyboard's focus
     */
    public record Grip(Point end, Point off, Point outward, boolean small, boolean marked, boolean active) {
        /** The middle of what is drawn, pixels. */
        public Point at() {
            return end.plus(off);
        }

        /** Whether it is drawn beside the end of its level. */
        public boolean isBeside() {
            return off.norm() > 0;
        }
    }

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
            List<Segment> glowing,
            String amount) {
        gc.clearRect(0, 0, width, height);
        gc.setLineDashes();
        gc.setStroke(ink.level().deriveColor(0, 1, 1, 0.3));
        gc.setLineWidth(GLOW);
        if (!glowing.isEmpty()) {
            new Pen(gc, view).stroke(glowing);
        }
        grips.stream().filter(Grip::isBeside).forEach(grip -> stem(gc, ink, grip));
        grips.stream().filter(grip -> !grip.active()).forEach(grip -> grip(gc, ink, grip));
        Optional<Grip> active = grips.stream().filter(Grip::active).findFirst();
        active.ifPresent(grip -> grip(gc, ink, grip));
        if (active.isPresent() && !amount.isEmpty()) {
            bubble(gc, width, active.get().at(), ink, amount);
        }
    }

    /** From a grip to the end of the level that it moves. */
    private static void stem(GraphicsContext gc, Ink ink, Grip grip) {
        gc.setStroke(ink.moved());
        gc.setLineWidth(2);
        // Whatever was painted before: a canvas keeps how its lines end.
        gc.setLineCap(StrokeLineCap.BUTT);
        if (grip.marked()) {
            double past = grip.off().dot(grip.outward()) > -1 ? PAST_LINE : PAST_NOTCH;
            Point from = grip.end().plus(grip.off().unit().times(past));
            gc.strokeLine(from.x(), from.y(), grip.at().x(), grip.at().y());
            return;
        }
        gc.strokeLine(grip.end().x(), grip.end().y(), grip.at().x(), grip.at().y());
        gc.setFill(ink.moved());
        gc.fillOval(grip.end().x() - FOOT, grip.end().y() - FOOT, 2 * FOOT, 2 * FOOT);
    }

    /** A round button with two small arrows along the level, or a dot. */
    private static void grip(GraphicsContext gc, Ink ink, Grip grip) {
        Point at = grip.at();
        boolean dot = grip.small() && !grip.active();
        double r = dot ? DOT : grip.active() ? GRIP + 2 : GRIP;
        gc.setFill(grip.active() ? ink.moved() : ink.paper());
        gc.fillOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
        gc.setStroke(ink.moved());
        gc.setLineWidth(2);
        gc.strokeOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
        if (dot) {
            return;
        }
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
        double w = Ruler.width(words, font) + 20;
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
