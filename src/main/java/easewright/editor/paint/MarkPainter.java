package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Caption;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws a {@link MarkScene} over the pieces. */
public final class MarkPainter {
    /** A piece less wide than this on the screen goes without names of edges, pixels. */
    static final double LEAST_ROOM = 110;

    /** Words smaller than this on the screen are left out, pixels. */
    private static final double SMALLEST_LETTERS = 4;

    /** Those that are shown are at least this large, pixels. */
    private static final double READABLE = 11;

    /** How far inside its edge a name may stand, the best first, pixels. */
    private static final double[] DEEP = {10.5, 13, 19, 25};

    /** A name farther from its edge is led to it, pixels. */
    private static final double BESIDE = 14;

    /** From the middle of letters to where a line that leads to them ends, pixels. */
    private static final double LETTERS = 6;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;

    private final LabelRoom room;

    private MarkPainter(GraphicsContext gc, Viewport view, Ink ink, LabelRoom room) {
        this.room = room;
        this.gc = gc;
        this.view = view;
        this.ink = ink;
    }

    /**
     * Draws on top of what is there.
     *
     * @param below the room taken by words that are there already
     */
    public static void paint(GraphicsContext gc, Viewport view, Ink ink, MarkScene scene, LabelRoom below) {
        MarkPainter painter = new MarkPainter(gc, view, ink, below.above());
        painter.soft(scene);
        painter.strong(scene);
        if (!scene.soft().isEmpty() || !scene.strong().isEmpty()) {
            painter.bare(below.words());
        }
        painter.loose(scene);
        painter.captions(scene.captions());
        scene.edges().forEach(painter::edge);
        scene.dots().forEach(painter::dot);
        scene.tape().ifPresent(painter::tape);
    }

    private void loose(MarkScene scene) {
        gc.setStroke(ink.quiet());
        gc.setLineWidth(1);
        gc.setLineDashes();
        gc.beginPath();
        Tracer.trace(gc, view, scene.loose(), false);
        gc.stroke();
    }

    /** The larger ones first; what has no room appears when the table is looked at from nearer. */
    private void captions(List<Caption> captions) {
        captions.stream()
                .sorted(Comparator.comparingDouble(Caption::height).reversed())
                .forEach(this::caption);
    }

    private void caption(Caption caption) {
        double drawn = caption.height() * view.scale();
        if (drawn < SMALLEST_LETTERS) {
            return;
        }
        double size = Math.max(drawn, READABLE);
        Font font = Font.font(size);
        double wide = caption.lines().stream()
                .mapToDouble(line -> Ruler.width(line, font))
                .max()
                .orElse(0);
        double high = 1.2 * size * caption.lines().size();
        Point at = view.toScreen(caption.middle());
        Point middle = at.plus(new Point(0, (high - 1.2 * size) / 2));
        if (!room.take(LabelRoom.around(middle, wide, high))) {
            return;
        }
        gc.setFont(font);
        gc.setFill(ink.quiet());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        for (int i = 0; i < caption.lines().size(); i++) {
            gc.fillText(caption.lines().get(i), at.x(), at.y() + i * size * 1.2);
        }
    }

    /** Along its edge, inside the piece, with a rim of paper so that a line below does not cross it out. */
    private void edge(MarkScene.EdgeName edge) {
        Font font = Font.font(11);
        double wide = Ruler.width(edge.words(), font);
        // Words longer than their edge would say nothing of where it lies, and on a small piece they would cover it.
        if (edge.length() * view.scale() < wide + 6 || edge.room() * view.scale() < LEAST_ROOM) {
            return;
        }
        for (double deep : DEEP) {
            for (MarkScene.Spot spot : edge.spots()) {
                Point at = view.toScreen(spot.at()).plus(spot.inward().times(deep));
                double turn = Math.atan2(spot.inward().x(), -spot.inward().y());
                // With more air to what stands within the piece than to the edge.
                if (room.takeClear(at.plus(spot.inward().times(1.5)), wide + 6, 14, turn)) {
                    if (deep > BESIDE) {
                        lead(view.toScreen(spot.at()), spot.inward().times(deep - LETTERS));
                    }
                    name(gc, ink, ink.guard(), edge.words(), font, at, turn);
                    return;
                }
            }
        }
    }

    /** From an edge to its name. */
    private void lead(Point foot, Point way) {
        gc.setStroke(ink.guard());
        gc.setFill(ink.guard());
        gc.setLineWidth(1);
        gc.setLineDashes();
        gc.strokeLine(foot.x(), foot.y(), foot.x() + way.x(), foot.y() + way.y());
        gc.fillOval(foot.x() - 2, foot.y() - 2, 4, 4);
    }

    /** Takes away what was laid over words on the table below. */
    private void bare(List<Box> words) {
        for (Box box : words) {
            gc.clearRect(box.minX(), box.minY(), box.width(), box.height());
        }
    }

    /**
     * Along the edge, and never upside down.
     *
     * @param turn of the edge, radians
     */
    static void name(GraphicsContext gc, Ink ink, Color color, String words, Font font, Point at, double turn) {
        double degrees = Math.toDegrees(turn);
        double upright = degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
        gc.save();
        gc.translate(at.x(), at.y());
        gc.rotate(upright);
        RimmedWords.paint(gc, ink, words, font, new Point(0, 0), 4, color);
        gc.restore();
    }

    private void soft(MarkScene scene) {
        gc.setStroke(ink.level().deriveColor(0, 1, 1, 0.28));
        gc.setLineWidth(9);
        gc.setLineDashes();
        gc.beginPath();
        Tracer.trace(gc, view, scene.soft(), false);
        gc.stroke();
    }

    private void strong(MarkScene scene) {
        gc.setStroke(ink.level());
        gc.setLineWidth(4);
        gc.setLineDashes();
        gc.setLineCap(StrokeLineCap.ROUND);
        gc.beginPath();
        Tracer.trace(gc, view, scene.strong(), false);
        gc.stroke();
        gc.setLineCap(StrokeLineCap.BUTT);
    }

    /** A filled dot where clicked, a ring around what is caught, a cross on a line, a small dot elsewhere. */
    private void dot(MarkScene.Dot dot) {
        Point at = view.toScreen(dot.at());
        gc.setLineDashes();
        gc.setLineWidth(2);
        gc.setStroke(ink.moved());
        gc.setFill(ink.moved());
        switch (dot.sign()) {
            case PICKED -> {
                gc.fillOval(at.x() - 5, at.y() - 5, 10, 10);
                gc.setStroke(ink.paper());
                gc.strokeOval(at.x() - 5, at.y() - 5, 10, 10);
            }
            case CAUGHT -> {
                gc.strokeOval(at.x() - 7, at.y() - 7, 14, 14);
                gc.fillOval(at.x() - 2, at.y() - 2, 4, 4);
            }
            case ON_LINE -> {
                gc.strokeLine(at.x() - 6, at.y() - 6, at.x() + 6, at.y() + 6);
                gc.strokeLine(at.x() - 6, at.y() + 6, at.x() + 6, at.y() - 6);
            }
            case FREE -> gc.fillOval(at.x() - 2.5, at.y() - 2.5, 5, 5);
        }
    }

    private void tape(MarkScene.Tape tape) {
        Point from = view.toScreen(tape.from());
        Point to = view.toScreen(tape.to());
        gc.setStroke(ink.moved());
        gc.setLineWidth(2.4);
        gc.setLineDashes();
        gc.strokeLine(from.x(), from.y(), to.x(), to.y());
        Point along = from.equals(to) ? new Point(1, 0) : to.minus(from).unit();
        Point across = along.quarterTurned().times(7);
        gc.strokeLine(from.x() - across.x(), from.y() - across.y(), from.x() + across.x(), from.y() + across.y());
        gc.strokeLine(to.x() - across.x(), to.y() - across.y(), to.x() + across.x(), to.y() + across.y());
        label(from.towards(to, 0.5), tape.words());
    }

    private void label(Point middle, String words) {
        Font font = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);
        double width = Ruler.width(words, font) + 16;
        double height = 24;
        gc.setFill(ink.moved());
        gc.fillRoundRect(middle.x() - width / 2, middle.y() - height / 2, width, height, height, height);
        gc.setFont(font);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(ink.paper());
        gc.fillText(words, middle.x(), middle.y());
    }
}
