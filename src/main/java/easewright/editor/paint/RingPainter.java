package easewright.editor.paint;

import javafx.scene.canvas.GraphicsContext;

/**
 * Draws the body as a filled circle and the garment as a ring around it, the gap to scale: the lines lie outside of it, so
 * that what is seen between them is all of it.
 */
public final class RingPainter {
    private static final double BODY_LINE = 1.2;
    private static final double GARMENT_LINE = 2.2;

    private RingPainter() {}

    /**
     * @param size   of the square canvas, pixels
     * @param widest the radius that fills the canvas, the same for all rings shown together, mm
     * @param bodyMm radius of the body, mm; 0 where it is not known
     */
    public static void paint(GraphicsContext gc, double size, double widest, double bodyMm, double garmentMm, Ink ink) {
        gc.clearRect(0, 0, size, size);
        double middle = size / 2;
        double scale = (middle - 4) / widest;
        double body = bodyMm * scale;
        double garment = garmentMm * scale;
        if (bodyMm > 0) {
            gc.setFill(ink.body().deriveColor(0, 1, 1, 0.55));
            gc.fillOval(middle - body, middle - body, 2 * body, 2 * body);
            gc.setStroke(ink.body());
            gc.setLineWidth(BODY_LINE);
            ring(gc, middle, garmentMm < bodyMm ? body + BODY_LINE / 2 : body - BODY_LINE / 2);
        }
        gc.setStroke(garmentMm < bodyMm ? ink.moved() : ink.level());
        gc.setLineWidth(GARMENT_LINE);
        gc.setLineDashes(garmentMm < bodyMm ? new double[] {6, 4} : new double[0]);
        ring(gc, middle, garmentMm < bodyMm ? garment - GARMENT_LINE / 2 : garment + GARMENT_LINE / 2);
        gc.setLineDashes();
    }

    private static void ring(GraphicsContext gc, double middle, double radius) {
        gc.strokeOval(middle - radius, middle - radius, 2 * radius, 2 * radius);
    }
}
