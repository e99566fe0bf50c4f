package easewright.backdrop;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;

/**
 * Makes outlines of large dark areas. A shape whose drawing says nothing of its colour is black: a piece drawn so would
 * hide all that lies on it.
 */
final class LightFills {
    /** Arrow heads, notches and letters are smaller than this across or down, mm. */
    private static final double LARGE = 25;

    /** Darker than this an area is no ground for words: as a share of white. */
    private static final double DARK = 0.6;

    /** Of the outline that takes the place of an area, mm. */
    private static final double LINE = 0.4;

    private LightFills() {}

    /** @param root with millimetres for its measure */
    static void lighten(GraphicsNode root) {
        ShapeNodes.each(root, LightFills::lighten);
    }

    private static void lighten(ShapeNode node) {
        AffineTransform toMm = node.getGlobalTransform();
        Rectangle2D box = toMm.createTransformedShape(node.getShape()).getBounds2D();
        double scale = Math.sqrt(Math.abs(toMm.getDeterminant()));
        if (Math.min(box.getWidth(), box.getHeight()) >= LARGE && scale > 0) {
            node.setShapePainter(lightened(node.getShapePainter(), node.getShape(), (float) (LINE / scale)));
        }
    }

    private static ShapePainter lightened(ShapePainter painter, Shape shape, float line) {
        if (painter instanceof CompositeShapePainter several) {
            CompositeShapePainter lighter = new CompositeShapePainter(shape);
            for (int i = 0; i < several.getShapePainterCount(); i++) {
                lighter.addShapePainter(lightened(several.getShapePainter(i), shape, line));
            }
            return lighter;
        }
        if (painter instanceof FillShapePainter fill && fill.getPaint() instanceof Color color && isDark(color)) {
            StrokeShapePainter outline = new StrokeShapePainter(shape);
            outline.setStroke(new BasicStroke(line));
            outline.setPaint(color);
            return outline;
        }
        return painter;
    }

    /** Judged on white paper. */
    private static boolean isDark(Color color) {
        double ink = 1 - (0.30 * color.getRed() + 0.59 * color.getGreen() + 0.11 * color.getBlue()) / 255;
        return 1 - ink * color.getAlpha() / 255 < DARK;
    }
}
