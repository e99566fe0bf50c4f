package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/**
 * Writes the name of a piece that is too thin for it beside the piece on the table, and how often it is cut, with a short
 * line that leads there.
 */
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

    /** From row to row, and between a name and what stands behind it, pixels. */
    private static final double PITCH = 13;

    private static final double GAP = 7;

    private static final double DOT = 2;

    /** The largest letters here: beside its piece a name is read as easily in lower ones. */
    private static final int LARGEST = NameSetting.SMALLEST - 1;

    private BesideName() {}

    /**
     * Whether there was room.
     *
     * @param size of the letters of names on their pieces
     */
    static boolean paint(
            GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room, int size) {
        Box box = sight.piece().outline().box();
        Optional<Box> seen = room.view()
                .seen(Box.around(List.of(
                        view.toScreen(new Point(box.minX(), box.minY())),
                        view.toScreen(new Point(box.maxX(), box.maxY())))));
        boolean large = Math.max(box.width(), box.height()) * view.scale() >= LEAST;
        if (seen.isEmpty() || !large && !sight.pointed()) {
            return false;
        }
        for (Way way : ways(sight, Math.max(LARGEST, size))) {
            for (Point middle : places(seen.get(), way.wide(), way.high())) {
                boolean free = room.view().isAboveFoot(middle, way.high())
                        && room.isClear(middle, way.wide(), way.high())
                        && room.papers().isOnTable(middle);
                Line lead = free ? lead(view, sight, middle, way) : null;
                if (free && room.isOpen(lead) && room.takeClear(middle, way.wide(), way.high())) {
                    write(gc, ink, sight.aside(), way, middle, lead);
                    room.putLeader(lead);
                    room.told().name(sight.piece().id(), (way.name() + " " + way.below()).strip());
                    if (!way.whole()) {
                        room.told().nameLacks(sight.piece().id());
                    }
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * A way to set the words.
     *
     * @param below how the piece is cut, if it is said
     * @param two   that stands below the name, and not behind it
     * @param size  of the letters
     */
    private record Way(String name, String below, boolean two, boolean whole, int size) {
        double wide() {
            double first = Ruler.width(name, NameSetting.bold(size));
            double second = Ruler.width(below, NameSetting.plain(size));
            return 4 + (two ? Math.max(first, second) : below.isEmpty() ? first : first + GAP + second);
        }

        double high() {
            return two ? HIGH + PITCH : HIGH;
        }
    }

    private static List<Way> ways(TableScene.PieceSight sight, int size) {
        String whole = sight.title();
        String cut = NameRows.shortened(whole, LETTERS);
        List<Way> ways = new ArrayList<>();
        for (String name : whole.equals(cut) ? List.of(whole) : List.of(whole, cut)) {
            if (sight.instructs()) {
                ways.add(new Way(name, sight.subtitle(), false, name.equals(whole), size));
                ways.add(new Way(name, sight.subtitle(), true, name.equals(whole), size));
            } else {
                ways.add(new Way(name, "", false, name.equals(whole), size));
            }
        }
        return ways;
    }

    /** Where it may stand, the best first: at the ends of the piece and along its sides, pixels. */
    private static List<Point> places(Box box, double wide, double high) {
        List<Point> ends = new ArrayList<>();
        List<Point> sides = new ArrayList<>();
        boolean lies = box.width() >= box.height();
        for (double away : AWAY) {
            double x = away + wide / 2;
            double y = away + high / 2;
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
    private static Line lead(Viewport view, TableScene.PieceSight sight, Point middle, Way way) {
        Point foot = view.toScreen(sight.piece()
                .outline()
                .nearest(view.toTable(middle.x(), middle.y()))
                .point());
        double x = Math.max(middle.x() - way.wide() / 2, Math.min(middle.x() + way.wide() / 2, foot.x()));
        double y = Math.max(middle.y() - way.high() / 2, Math.min(middle.y() + way.high() / 2, foot.y()));
        return new Line(foot, new Point(x, y));
    }

    private static void write(GraphicsContext gc, Ink ink, boolean aside, Way way, Point middle, Line lead) {
        Point foot = lead.start();
        gc.setLineDashes();
        gc.setStroke(ink.quiet());
        gc.setLineWidth(1);
        gc.strokeLine(foot.x(), foot.y(), lead.end().x(), lead.end().y());
        gc.setFill(ink.quiet());
        gc.fillOval(foot.x() - DOT, foot.y() - DOT, 2 * DOT, 2 * DOT);
        gc.setFont(NameSetting.bold(way.size()));
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(aside ? ink.quiet() : ink.text());
        if (way.two()) {
            gc.setTextAlign(TextAlignment.CENTER);
            gc.fillText(way.name(), middle.x(), middle.y() - PITCH / 2);
            gc.setFont(NameSetting.plain(way.size()));
            gc.setFill(ink.quiet());
            gc.fillText(way.below(), middle.x(), middle.y() + PITCH / 2);
            return;
        }
        double left = middle.x() - way.wide() / 2 + 2;
        gc.setTextAlign(TextAlignment.LEFT);
        gc.fillText(way.name(), left, middle.y());
        gc.setFont(NameSetting.plain(way.size()));
        gc.setFill(ink.quiet());
        gc.fillText(way.below(), left + Ruler.width(way.name(), NameSetting.bold(way.size())) + GAP, middle.y());
    }
}
