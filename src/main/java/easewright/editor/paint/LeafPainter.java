package easewright.editor.paint;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Leaf;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.print.ink.Tone;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Paints a page of a print as it will come out of the printer. */
public final class LeafPainter {
    /** Writing smaller than this many pixels is left out: it would be grey dust. */
    private static final double SMALLEST = 2.5;

    /** Letters are set so many times as large and drawn smaller: at their own size they would stand on whole pixels. */
    private static final double FINER = 8;

    private static final Map<Boolean, String> FAMILIES = new ConcurrentHashMap<>();

    private final GraphicsContext gc;
    private final double scale;
    private final double left;
    private final double top;

    /**
     * @param scale pixels to the millimetre
     * @param left  where the page's upper left corner lies, pixels
     */
    public LeafPainter(GraphicsContext gc, double scale, double left, double top) {
        this.gc = gc;
        this.scale = scale;
        this.left = left;
        this.top = top;
    }

    public void paint(Leaf leaf) {
        gc.setFill(Color.rgb(0, 0, 0, 0.16));
        gc.fillRect(left + 2, top + 3, leaf.width() * scale, leaf.height() * scale);
        gc.setFill(Color.WHITE);
        gc.fillRect(left, top, leaf.width() * scale, leaf.height() * scale);
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.ROUND);
        for (Leaf.Layer layer : leaf.layers()) {
            gc.save();
            Box seen = layer.clip().orElse(new Box(0, 0, leaf.width(), leaf.height()));
            gc.beginPath();
            gc.rect(x(seen.minX()), y(seen.minY()), seen.width() * scale, seen.height() * scale);
            gc.clip();
            for (Mark mark : layer.picture().marks()) {
                mark(layer.place().equals(Affine.IDENTITY) ? mark : mark.transformed(layer.place()), leaf.bold());
            }
            gc.restore();
        }
    }

    private void mark(Mark mark, double bold) {
        if (mark instanceof Mark.Stroke stroke) {
            Pen pen = stroke.pen();
            gc.setStroke(colour(pen.tone()));
            gc.setLineWidth(Math.max(0.5, pen.width() * bold * scale));
            gc.setLineDashes(pen.dashes().stream()
                    .mapToDouble(d -> Math.max(1, d * bold * scale))
                    .toArray());
            path(stroke.run(), stroke.closed());
            gc.stroke();
        } else if (mark instanceof Mark.Fill fill) {
            gc.setFill(colour(fill.tone()));
            path(fill.loop(), true);
            gc.fill();
        } else if (mark instanceof Mark.Writing writing && writing.size() * scale >= SMALLEST) {
            write(writing);
        }
    }

    private void path(List<Segment> run, boolean closed) {
        gc.beginPath();
        Point pen = null;
        for (Segment segment : run) {
            if (!segment.start().equals(pen)) {
                gc.moveTo(x(segment.start().x()), y(segment.start().y()));
            }
            pen = segment.end();
            if (segment instanceof Cubic c) {
                gc.bezierCurveTo(
                        x(c.control1().x()),
                        y(c.control1().y()),
                        x(c.control2().x()),
                        y(c.control2().y()),
                        x(pen.x()),
                        y(pen.y()));
            } else {
                gc.lineTo(x(pen.x()), y(pen.y()));
            }
        }
        if (closed) {
            gc.closePath();
        }
    }

    private void write(Mark.Writing writing) {
        gc.save();
        gc.setFill(colour(writing.tone()));
        gc.setFont(font(writing.bold(), writing.size() * scale * FINER));
        gc.setTextAlign(
                switch (writing.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        gc.translate(x(writing.at().x()), y(writing.at().y()));
        gc.rotate(Math.toDegrees(writing.turn()));
        gc.scale(1 / FINER, 1 / FINER);
        gc.fillText(writing.text(), 0, 0);
        gc.restore();
    }

    /** The very typeface that is printed; where it cannot be loaded, the one of the window. */
    private static Font font(boolean bold, double size) {
        String name = FAMILIES.computeIfAbsent(bold, b -> {
            try (InputStream in = Lettering.of(b).open()) {
                Font loaded = Font.loadFont(in, 12);
                return loaded == null ? "" : loaded.getName();
            } catch (IOException e) {
                return "";
            }
        });
        return name.isEmpty() ? Font.font(size) : new Font(name, size);
    }

    private double x(double mm) {
        return left + mm * scale;
    }

    private double y(double mm) {
        return top + mm * scale;
    }

    private static Color colour(Tone tone) {
        int rgb = tone.rgb();
        return Color.rgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }
}
