package easewright.print.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads back what a PDF draws: each line that is stroked, in mm from the upper left corner of its page. */
final class PdfLines extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    /** One stroked line: its shape and the width of the pen, mm. */
    record Stroked(Path2D shape, double pen) {
        Rectangle2D box() {
            // Of the curve itself: a path's own box would hold the control places as well.
            Path2D flat = new Path2D.Double();
            flat.append(shape.getPathIterator(null, 1e-4), false);
            return flat.getBounds2D();
        }

        /** Length of the whole line, curves in small steps, mm. */
        double length() {
            double sum = 0;
            double[] c = new double[6];
            Point2D.Double at = new Point2D.Double();
            Point2D.Double start = new Point2D.Double();
            for (PathIterator i = shape.getPathIterator(null, 1e-4); !i.isDone(); i.next()) {
                int kind = i.currentSegment(c);
                Point2D.Double next = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(c[0], c[1]);
                if (kind == PathIterator.SEG_MOVETO) {
                    start = next;
                } else {
                    sum += at.distance(next);
                }
                at = next;
            }
            return sum;
        }
    }

    private final List<Stroked> strokes = new ArrayList<>();
    private final AffineTransform toMm;
    private GeneralPath path = new GeneralPath();

    private PdfLines(PDPage page) {
        super(page);
        toMm = new AffineTransform(MM, 0, 0, -MM, 0, page.getMediaBox().getHeight() * MM);
    }

    static List<Stroked> of(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PdfLines lines = new PdfLines(document.getPage(page));
            lines.processPage(document.getPage(page));
            return lines.strokes;
        }
    }

    static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("A print has no pictures");
    }

    @Override
    public void clip(int rule) {
        // What is clipped is looked at by other tests.
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() {
        strokes.add(
                new Stroked(new Path2D.Double(path, toMm), getGraphicsState().getLineWidth() * MM));
        endPath();
    }

    @Override
    public void fillPath(int rule) {
        endPath();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        strokePath();
    }

    @Override
    public void shadingFill(COSName name) {
        throw new AssertionError("A print has no shadings");
    }
}
