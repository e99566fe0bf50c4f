package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Writes the name of a piece that is too thin for it beside the piece on the table, with a short line that leads there. */
final class BesideName {
    /** A piece shorter than this on the screen is left without a name from afar, pixels. */
    private static final double LEAST = 40;

    /** Between a piece and its name, the nearest first, pixels. */
    private static final double[] AWAY = {10, 22};

    /** Along the piece, as parts of its length, the best first. */
    private static final double[] ALONG = {0.5, 0.25, 0.75, 0.1, 0.9};

    /** Longer names are shortened to so many letters. */
    private static final int LETTERS = 28;

    private static final double HIGH = 14;

    private static final double DOT = 2;

    private static final Font FONT = Font.font(11);

    private BesideName() {}

    /** Whether there was room. */
    static boolean paint(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        Box box = sight.piece().outline().box();
        Optional<Box> seen = room.view()
                .seen(Box.around(List.of(
                        view.toScreen(new Point(box.minX(), box.minY())),
                        view.toScreen(new Point(box.maxX(), box.maxY())))));
        boolean large = Math.max(box.width(), box.height()) * view.scale() >= LEAST;
        if (seen.isEmpty() || !large && !sight.pointed()) {
            return false;
        }
        List<String> ways = List.of(sight.title(), NameRows.shortened(sight.title(), LETTERS));
        for (String words : ways) {
            double wide = Ruler.width(words, FONT) + 4;
            for (Point middle : places(seen.get(), wide)) {
                boolean free = room.view().isAboveFoot(middle, HIGH)
                        && room.isClear(middle, wide, HIGH)
                        && room.papers().isOnTable(middle);
                Line lead = free ? lead(view, sight, middle, wide) : null;
                if (free && room.isOpen(lead) && room.takeClear(middle, wide, HIGH)) {
                    write(gc, ink, words, middle, lead);
                    room.putLeader(lead);
                    if (!words.equals(sight.title())) {
                        room.nameLacks(sight.piece().id());
                    }
                    return true;
                }
            }
        }
        return false;
    }

    /** Where it may stand, the best first: at the ends of the piece and along its sides, pixels. */
    private static List<Point> places(Box box, double wide) {
        List<Point> ends = new ArrayList<>();
        List<Point> sides = new ArrayList<>();
        boolean lies = box.width() >= box.height();
        for (double away : AWAY) {
            double x = away + wide / 2;
            double y = away + HIGH / 2;
            for (double part : lies ? new double[] {0.5} : ALONG) {
                double at = box.minY() + part * box.height();
                (lies ? ends : sides).add(new Point(box.maxX() + x, at));
                (lies ? ends : sides).add(new Point(box.minX() - x, at));
            }
            for (double part : lies ? ALONG : new double[] {0.5}) {
                double at = box.minX() + part * box.width();
                (lies ? sides : ends).add(new Point(at, box.maxY() + y));
                (lies ? sides : ends).add(new Point(at, box.minY() - y));
            }
        }
        List<Point> places = new ArrayList<>(lies ? ends : sides);
        places.addAll(lies ? sides : ends);
        return places;
    }

    /** From the edge of the piece to the words, pixels. */
    private static Line lead(Viewport view, TableScene.PieceSight sight, Point middle, double wide) {
        Point foot = view.toScreen(sight.piece()
                .outline()
                .nearest(view.toTable(middle.x(), middle.y()))
                .point());
        double x = Math.max(middle.x() - wide / 2, Math.min(middle.x() + wide / 2, foot.x()));
        double y = Math.max(middle.y() - HIGH / 2, Math.min(middle.y() + HIGH / 2, foot.y()));
        return new Line(foot, new Point(x, y));
    }

    private static void write(GraphicsContext gc, Ink ink, String words, Point middle, Line lead) {
        Point foot = lead.start();
        gc.setLineDashes();
        gc.setStroke(ink.quiet());
        gc.setLineWidth(1);
        gc.strokeLine(foot.x(), foot.y(), lead.end().x(), lead.end().y());
        gc.setFill(ink.quiet());
        gc.fillOval(foot.x() - DOT, foot.y() - DOT, 2 * DOT, 2 * DOT);
        gc.setFont(FONT);
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(ink.text());
        gc.fillText(words, middle.x(), middle.y());
    }
}
