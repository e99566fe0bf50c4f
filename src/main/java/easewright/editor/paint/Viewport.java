package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;

/**
 * How the table is seen: how many pixels a millimetre takes, and the pixel at which the table's origin lies.
 * Immutable.
 */
public record Viewport(double scale, double x, double y) {
    /** From a whole nest of sizes on a laptop screen to a tenth of a millimetre as wide as a finger. */
    public static final double SMALLEST = 0.02;

    public static final double LARGEST = 60;

    /**
     * @throws IllegalArgumentException if the scale is not above 0
     */
    public Viewport {
        if (!(scale > 0) || !Double.isFinite(scale) || !Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("No such view: " + scale + ", " + x + ", " + y);
        }
    }

    /** The view that shows the whole box, centred, with a margin in pixels all round. */
    public static Viewport fitting(Box box, double width, double height, double margin) {
        double roomX = Math.max(width - 2 * margin, 1);
        double roomY = Math.max(height - 2 * margin, 1);
        double scale = clamp(Math.min(roomX / Math.max(box.width(), 1), roomY / Math.max(box.height(), 1)));
        Point centre = box.centre();
        return new Viewport(scale, width / 2 - centre.x() * scale, height / 2 - centre.y() * scale);
    }

    public double screenX(double mm) {
        return x + mm * scale;
    }

    public double screenY(double mm) {
        return y + mm * scale;
    }

    public Point toScreen(Point table) {
        return new Point(screenX(table.x()), screenY(table.y()));
    }

    public Point toTable(double screenX, double screenY) {
        return new Point((screenX - x) / scale, (screenY - y) / scale);
    }

    /** Zoomed so that the place under the pixel stays under it. */
    public Viewport zoomedAt(double factor, double screenX, double screenY) {
        double next = clamp(scale * factor);
        double real = next / scale;
        return new Viewport(next, screenX - (screenX - x) * real, screenY - (screenY - y) * real);
    }

    /** Moved so that the place comes to lie at the pixel. */
    public Viewport withAt(Point table, double screenX, double screenY) {
        return new Viewport(scale, screenX - table.x() * scale, screenY - table.y() * scale);
    }

    public Viewport movedBy(double dx, double dy) {
        return new Viewport(scale, x + dx, y + dy);
    }

    private static double clamp(double wanted) {
        return Math.max(SMALLEST, Math.min(LARGEST, wanted));
    }
}
