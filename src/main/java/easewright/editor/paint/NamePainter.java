package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/**
 * Writes the name of a piece, and with it how often the piece is cut, where there is room: one below the other, else
 * beside each other, else smaller, else the name alone.
 */
final class NamePainter {
    /** The sizes of letters: few, so that the names of one table go together. */
    private static final double[] SIZES = {18, 15, 12, 10};

    /** Of the smaller words that go with names of these sizes. */
    private static final double[] SMALL = {12, 11, 10, 10};

    /** Smaller than this, both are not written one below the other. */
    private static final double LEAST_OF_TWO = 12;

    /** A piece as large as this many letters across and down has its name in them. */
    private static final double LETTERS = 11;

    /** A piece less wide than this on the screen goes without a name, pixels. */
    private static final double LEAST = 28;

    /** Between two words beside each other, as a part of their size. */
    private static final double GAP = 0.6;

    /** Nor one less high. */
    private static final double LOWEST = 12;

    /** Where it is looked for elsewhere, letters are no larger than the second size. */
    private static final int ELSEWHERE = 1;

    /** In how many rows and columns room is looked for where there is none in the best place. */
    private static final int ROWS = 12;

    private static final int COLUMNS = 5;

    /** Before and behind words where there is room, pixels. */
    private static final double ROOMY = 3;

    /** How high words are, as a part of their size: most letters have no part below the line. */
    private static final double HIGH = 1;

    /** How high two lines are. */
    private static final double TWO_HIGH = 2.4;

    /** On a piece at least this wide and high a name stands over lines rather than nowhere, pixels. */
    private static final double LARGE = 40;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom room;
    private final String name;
    private final String subtitle;
    private final double nameWide;
    private final double subtitleWide;
    private double beside = ROOMY;

    private NamePainter(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.room = room;
        name = sight.piece().name();
        subtitle = sight.subtitle();
        nameWide = Ruler.width(name, bold(SIZES[0])) / SIZES[0];
        subtitleWide = Ruler.width(subtitle, Font.font(SMALL[0])) / SMALL[0];
    }

    static void paint(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        Box box = sight.piece().outline().box();
        if (box.width() * view.scale() >= LEAST && box.height() * view.scale() >= LOWEST) {
            gc.setTextBaseline(VPos.CENTER);
            new NamePainter(gc, view, ink, sight, room)
                    .paint(Math.sqrt(box.width() * box.height()) * view.scale() / LETTERS);
        }
    }

    private void paint(double fitting) {
        int first = 0;
        while (first < SIZES.length - 1 && SIZES[first] > fitting) {
            first++;
        }
        Point best = view.toScreen(sight.name().at());
        if (tryAll(first, List.of(best))) {
            return;
        }
        List<Point> places = elsewhere();
        // What has no room for the lowest letters has none for words.
        double least = HIGH * SIZES[SIZES.length - 1];
        List<Point> open =
                places.stream().filter(p -> room.isClear(p, least, least)).toList();
        if (tryAll(Math.max(first, ELSEWHERE), open)) {
            return;
        }
        beside = 0;
        if (!tryAll(SIZES.length - 1, open)) {
            overLines(best, places);
        }
    }

    /** Better over a line inside the piece than nowhere: nearer there is room. */
    private void overLines(Point best, List<Point> places) {
        int last = SIZES.length - 1;
        double wide = nameWide * SIZES[last];
        double high = HIGH * SIZES[last];
        Box box = sight.piece().outline().box();
        boolean large = Math.min(box.width(), box.height()) * view.scale() >= LARGE;
        places.add(0, best);
        room.takeClear(places, wide, high)
                .or(() -> large ? room.take(List.of(best), wide, high) : Optional.empty())
                .ifPresent(p -> alone(p, last));
    }

    private boolean tryAll(int first, List<Point> places) {
        for (int i = first; i < SIZES.length; i++) {
            if (inTwoLines(i, places) || inOneLine(i, places)) {
                return true;
            }
        }
        for (int i = first; i < SIZES.length; i++) {
            Optional<Point> at = clear(places, nameWide * SIZES[i], HIGH * SIZES[i]);
            if (at.isPresent()) {
                alone(at.get(), i);
                return true;
            }
        }
        return sizeBelow(places);
    }

    private boolean inTwoLines(int i, List<Point> places) {
        return SIZES[i] >= LEAST_OF_TWO && inTwoLines(i, places, name, nameWide, subtitle, subtitleWide);
    }

    private boolean inTwoLines(int i, List<Point> places, String upper, double wide, String lower, double lowerWide) {
        double size = SIZES[i];
        Optional<Point> at = clear(places, Math.max(wide * size, lowerWide * SMALL[i]), TWO_HIGH * size);
        at.ifPresent(p -> both(
                i,
                TextAlignment.CENTER,
                upper,
                p.plus(new Point(0, -size * 0.55)),
                lower,
                p.plus(new Point(0, size * 0.6))));
        return at.isPresent();
    }

    /** On a very small piece of several sizes. */
    private boolean sizeBelow(List<Point> places) {
        int last = SIZES.length - 1;
        String plain = sight.piece().plainName();
        double wide = Ruler.width(plain, bold(SIZES[last])) / SIZES[last];
        return sight.piece()
                .size()
                .filter(size -> inTwoLines(last, places, plain, wide, size, size.length()))
                .isPresent();
    }

    /** On a narrow piece such as a band: the name and beside it how often it is cut. */
    private boolean inOneLine(int i, List<Point> places) {
        double size = SIZES[i];
        double wide = nameWide * size + GAP * size + subtitleWide * SMALL[i];
        Optional<Point> at = clear(places, wide, HIGH * size);
        at.map(p -> p.minus(new Point(wide / 2, 0)))
                .ifPresent(start -> both(
                        i,
                        TextAlignment.LEFT,
                        name,
                        start,
                        subtitle,
                        start.plus(new Point((nameWide + GAP) * size, 0))));
        return at.isPresent();
    }

    private void both(int i, TextAlignment align, String large, Point first, String small, Point second) {
        gc.setTextAlign(align);
        gc.setFont(bold(SIZES[i]));
        words(large, sight.aside() ? ink.quiet() : ink.text(), first);
        gc.setFont(Font.font(SMALL[i]));
        words(small, ink.quiet(), second);
    }

    /** On a very small piece; nearer there is room for more. */
    private void alone(Point at, int i) {
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setFont(bold(SIZES[i]));
        words(name, sight.aside() ? ink.quiet() : ink.text(), at);
    }

    /** Takes the first of the places that lies on the piece and is clear of all lines and words. */
    private Optional<Point> clear(List<Point> places, double wide, double high) {
        return places.stream()
                .filter(p -> room.takeClear(p, wide + 2 * beside, high))
                .findFirst();
    }

    /** Other places on what is seen of the piece, the best first; the list may be added to. */
    private List<Point> elsewhere() {
        DrawnLine outline =
                DrawnLine.along(sight.piece().outline().segments(), view).get(0);
        Box box = sight.piece().outline().box();
        Point from = view.toScreen(new Point(box.minX(), box.minY()));
        Point to = view.toScreen(new Point(box.maxX(), box.maxY()));
        return room
                .spread(
                        new Box(from.x(), from.y(), to.x(), to.y()),
                        COLUMNS,
                        ROWS,
                        view.toScreen(sight.name().at()))
                .stream()
                .filter(outline::surrounds)
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static Font bold(double size) {
        return Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, size);
    }

    /** Words with a rim of paper, so that what is faintly drawn below does not stand between the letters. */
    private void words(String text, Color color, Point place) {
        if (!sight.aside()) {
            gc.setStroke(ink.paper());
            gc.setLineWidth(5);
            gc.setLineDashes();
            gc.strokeText(text, place.x(), place.y());
        }
        gc.setFill(color);
        gc.fillText(text, place.x(), place.y());
    }
}
