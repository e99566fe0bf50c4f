package easewright.editor.paint;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;

/**
 * Draws edges that do not fit what they are sewn to: a fine zigzag along the line, the sign of a seam that a trial puts out,
 * but quieter, and once for each seam by how much. It says where; what to do stands on the page True.
 */
final class MisfitPainter {
    /** How far inside its edge the words may stand, the best first, pixels. */
    private static final double[] DEEP = {18, 22, 27};

    /** Where along its edge, the best first. */
    private static final double[] ALONG = {0.5, 0.72, 0.28, 0.86, 0.14, 0.61, 0.39};

    /** From tip to tip of the zigzag along the line, and how far inside the line its tips are, pixels. */
    private static final double TEETH = 5;

    private static final double LOW = 3;

    private static final double HIGH = 7;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final List<TableScene.Misfit> misfits;

    MisfitPainter(GraphicsContext gc, Viewport view, Ink ink, List<TableScene.Misfit> misfits) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.misfits = misfits;
    }

    void lines() {
        new Pen(gc, view).set(ink.moved(), 1.1);
        for (TableScene.Misfit misfit : misfits) {
            for (List<Segment> run : misfit.runs()) {
                List<Point> corners = zigzag(run, view, misfit.clockwise(), LOW, HIGH);
                gc.strokePolyline(
                        corners.stream().mapToDouble(Point::x).toArray(),
                        corners.stream().mapToDouble(Point::y).toArray(),
                        corners.size());
            }
        }
    }

    /** Notes where the lines are, for words that are to keep clear of them. */
    void keepClear(LabelRoom room) {
        for (TableScene.Misfit misfit : misfits) {
            for (List<Segment> run : misfit.runs()) {
                List<Point> corners = zigzag(run, view, misfit.clockwise(), HIGH - 1, HIGH);
                if (corners.size() > 1) {
                    room.putFaint(DrawnLine.through(corners));
                }
            }
        }
    }

    /** Where there is room beside all else: the page True has the same in words. */
    void words(LabelRoom room) {
        misfits.stream().filter(m -> !m.words().isEmpty()).forEach(m -> words(m, room));
    }

    private void words(TableScene.Misfit misfit, LabelRoom room) {
        Font font = Font.font(11);
        double wide = Ruler.width(misfit.words(), font) + 6;
        Curve run = new Curve(misfit.runs().stream()
                .max(Comparator.comparingDouble(MisfitPainter::length))
                .orElseThrow());
        double length = length(run.segments());
        if (length * view.scale() < wide) {
            return;
        }
        for (double deep : DEEP) {
            for (double share : ALONG) {
                double at = share * length;
                Point along = run.pointAtLength(at + 0.5).minus(run.pointAtLength(at - 0.5));
                if (along.norm() > 0) {
                    Point in = inward(along.unit(), misfit.clockwise());
                    Point middle = view.toScreen(run.pointAtLength(at)).plus(in.times(deep));
                    double turn = Math.atan2(in.x(), -in.y());
                    if (room.takeClear(middle, wide, 13, turn)) {
                        MarkPainter.name(gc, ink, ink.moved(), misfit.words(), font, middle, turn);
                        return;
                    }
                }
            }
        }
    }

    private static double length(List<Segment> run) {
        return run.stream().mapToDouble(Segment::length).sum();
    }

    /** Off an edge, into the piece that it is of. */
    static Point inward(Point tangent, boolean clockwise) {
        Point normal = tangent.quarterTurned();
        return clockwise ? normal : normal.times(-1);
    }

    /** Along the inner side of a run, between two distances from it, pixels. */
    static List<Point> zigzag(List<Segment> run, Viewport view, boolean clockwise, double low, double high) {
        List<Point> corners = new ArrayList<>();
        Tracer.walk(run, TEETH / view.scale(), (place, tangent) -> {
            double reach = corners.size() % 2 == 0 ? low : high;
            corners.add(view.toScreen(place).plus(inward(tangent, clockwise).times(reach)));
        });
        return corners;
    }
}
