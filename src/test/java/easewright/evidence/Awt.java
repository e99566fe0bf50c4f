package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.QuadCurve2D;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;

/** The plane geometry of the Java platform ({@code java.awt.geom}) as a witness. */
final class Awt {
    private static final int HALVINGS = 9;

    private Awt() {}

    /** A path of SVG, parsed by Apache Batik. Its numbers must be exact in single precision; arcs become approximate. */
    static Path2D parsed(String d) throws Exception {
        return new Path2D.Double(AWTPathProducer.createShape(new StringReader(d), PathIterator.WIND_EVEN_ODD));
    }

    static Path2D path(List<Segment> closed) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Point start = closed.get(0).start();
        path.moveTo(start.x(), start.y());
        for (Segment s : closed) {
            Point end = s.end();
            if (s instanceof Cubic c) {
                path.curveTo(
                        c.control1().x(),
                        c.control1().y(),
                        c.control2().x(),
                        c.control2().y(),
                        end.x(),
                        end.y());
            } else {
                path.lineTo(end.x(), end.y());
            }
        }
        path.closePath();
        return path;
    }

    /** Chords of curves halved again and again, two such sums extrapolated (Richardson: the error falls by fourths). */
    static double length(Shape shape) {
        double sum = 0;
        for (CubicCurve2D curve : cubics(shape)) {
            double coarse = chords(curve, HALVINGS);
            double fine = chords(curve, HALVINGS + 1);
            sum += fine + (fine - coarse) / 3;
        }
        return sum;
    }

    private static double chords(CubicCurve2D curve, int halvings) {
        if (halvings == 0) {
            return curve.getP1().distance(curve.getP2());
        }
        CubicCurve2D left = new CubicCurve2D.Double();
        CubicCurve2D right = new CubicCurve2D.Double();
        curve.subdivide(left, right);
        return chords(left, halvings - 1) + chords(right, halvings - 1);
    }

    private static List<CubicCurve2D> cubics(Shape shape) {
        List<CubicCurve2D> found = new ArrayList<>();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    startX = c[0];
                    startY = c[1];
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_LINETO -> {
                    found.add(straight(new Line2D.Double(x, y, c[0], c[1])));
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_QUADTO -> {
                    found.add(raised(new QuadCurve2D.Double(x, y, c[0], c[1], c[2], c[3])));
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    found.add(new CubicCurve2D.Double(x, y, c[0], c[1], c[2], c[3], c[4], c[5]));
                    x = c[4];
                    y = c[5];
                }
                default -> {
                    found.add(straight(new Line2D.Double(x, y, startX, startY)));
                    x = startX;
                    y = startY;
                }
            }
        }
        return found;
    }

    private static CubicCurve2D straight(Line2D line) {
        return new CubicCurve2D.Double(
                line.getX1(),
                line.getY1(),
                line.getX1(),
                line.getY1(),
                line.getX2(),
                line.getY2(),
                line.getX2(),
                line.getY2());
    }

    private static CubicCurve2D raised(QuadCurve2D q) {
        return new CubicCurve2D.Double(
                q.getX1(),
                q.getY1(),
                (q.getX1() + 2 * q.getCtrlX()) / 3,
                (q.getY1() + 2 * q.getCtrlY()) / 3,
                (q.getX2() + 2 * q.getCtrlX()) / 3,
                (q.getY2() + 2 * q.getCtrlY()) / 3,
                q.getX2(),
                q.getY2());
    }

    /** The width of an area at a level: that of its part within a thin strip on either side of it. */
    static double width(Area area, double y, double strip) {
        Area part = new Area(new Rectangle2D.Double(-1e4, y - strip / 2, 2e4, strip));
        part.intersect(area);
        return part.getBounds2D().getWidth();
    }

    /** Area of what has straight sides only (shoelace formula). */
    static double polygonArea(Shape shape) {
        double sum = 0;
        for (CubicCurve2D side : cubics(shape)) {
            sum += side.getX1() * side.getY2() - side.getX2() * side.getY1();
        }
        return Math.abs(sum) / 2;
    }
}
