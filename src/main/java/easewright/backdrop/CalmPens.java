package easewright.backdrop;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.PathIterator;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;

/** Takes the dashes from lines on which they would number millions: painting such a line has no end. */
final class CalmPens {
    /** All the dashes of a drawing together. */
    private static final double MOST_DASHES = 300_000;

    private double dashes;

    private CalmPens() {}

    static void calm(GraphicsNode root) {
        CalmPens pens = new CalmPens();
        ShapeNodes.each(root, shape -> pens.calm(shape.getShapePainter(), shape.getShape()));
    }

    private void calm(ShapePainter painter, Shape shape) {
        if (painter instanceof CompositeShapePainter several) {
            for (int i = 0; i < several.getShapePainterCount(); i++) {
                calm(several.getShapePainter(i), shape);
            }
        } else if (painter instanceof StrokeShapePainter pen && pen.getStroke() instanceof BasicStroke stroke) {
            pen.setStroke(calm(stroke, shape));
        }
    }

    private Stroke calm(BasicStroke stroke, Shape shape) {
        float[] pattern = stroke.getDashArray();
        if (pattern == null) {
            return stroke;
        }
        double period = 0;
        for (float part : pattern) {
            period += part;
        }
        dashes += pattern.length * length(shape) / period;
        return dashes <= MOST_DASHES
                ? stroke
                : new BasicStroke(
                        stroke.getLineWidth(), stroke.getEndCap(), stroke.getLineJoin(), stroke.getMiterLimit());
    }

    /** No shorter than the shape's line: along the places that span its curves. */
    private static double length(Shape shape) {
        double length = 0;
        double[] places = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
            int kind = path.currentSegment(places);
            int count = switch (kind) {
                case PathIterator.SEG_CUBICTO -> 3;
                case PathIterator.SEG_QUADTO -> 2;
                case PathIterator.SEG_CLOSE -> 0;
                default -> 1;
            };
            if (kind == PathIterator.SEG_MOVETO) {
                startX = places[0];
                startY = places[1];
            } else if (kind == PathIterator.SEG_CLOSE) {
                length += Math.hypot(startX - x, startY - y);
                x = startX;
                y = startY;
            }
            for (int i = 0; i < count; i++) {
                if (kind != PathIterator.SEG_MOVETO) {
                    length += Math.hypot(places[2 * i] - x, places[2 * i + 1] - y);
                }
                x = places[2 * i];
                y = places[2 * i + 1];
            }
        }
        return length;
    }
}
