package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;

/**
 * Writes the name of a piece, and with it how often the piece is cut, where there is room on it: one below the other,
 * else beside each other, in more rows, smaller, along a piece that is higher than wide, shortened; else beside the piece.
 */
final class NamePainter {
    /** A piece less wide than this on the screen has no name on it, pixels. */
    private static final double LEAST = 28;

    /** Nor one less high. */
    private static final double LOWEST = 12;

    /** In how many rows and columns room is looked for where there is none in the best place. */
    private static final int ROWS = 12;

    private static final int COLUMNS = 5;

    /** Before and behind words where there is room, pixels. */
    private static final double ROOMY = 8;

    private static final double CLOSE = 2;

    /** On a piece at least this wide and high a name stands over lines rather than nowhere, pixels. */
    private static final double LARGE = 40;

    /** So many times as high as wide a piece has its name along it where it has no room across. */
    private static final double UPRIGHT = 2;

    /** A quarter turn to the left: read from below. */
    private static final double UP = -Math.PI / 2;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom table;
    private final int first;
    private final double wide;
    private final double high;
    private final NameLetters letters;

    /** The part of the room in which the piece lies. */
    private LabelRoom room;

    /** Places on the piece other than the best. */
    private List<Point> places;

    private boolean written;

    private Optional<PlacedName> placed = Optional.empty();

    private final SizesAlike alike;

    /**
     * @param first size of the letters, to begin with
     * @param alike how the other sizes of the piece are named
     */
    NamePainter(
            GraphicsContext gc,
            Viewport view,
            Ink ink,
            TableScene.PieceSight sight,
            LabelRoom room,
            int first,
            SizesAlike alike) {
        this.first = first;
        this.alike = alike;
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.table = room;
        this.room = room;
        Box box = sight.piece().outline().box();
        wide = box.width() * view.scale();
        high = box.height() * view.scale();
        letters = new NameLetters(gc, ink, sight.aside(), Math.min(wide, high));
    }

    /** The largest letters in which the names of all pieces have room where it is best, those left out that have none. */
    static int first(List<TableScene.PieceSight> seen, Viewport view) {
        int first = 0;
        for (TableScene.PieceSight sight : seen) {
            if (sight.title().isEmpty()) {
                continue;
            }
            double wide = sight.name().width() * view.scale() - 2 * ROOMY;
            double high = sight.name().height() * view.scale();
            first = NameSettings.of(sight).whole().stream()
                    .filter(way -> way.size() < NameSetting.SMALLEST && way.wide() <= wide && way.high() <= high)
                    .mapToInt(NameSetting::size)
                    .min()
                    .stream()
                    .reduce(first, Math::max);
        }
        return first;
    }

    /** Finds room for it on the piece, clear of all lines. */
    void onPiece() {
        if (sight.title().isEmpty()) {
            written = true;
            table.told().nameLacks(sight.piece().id());
            return;
        }
        boolean upright = high > UPRIGHT * wide;
        if (wide < (upright && !sight.aside() ? LOWEST : LEAST) || high < (upright ? LEAST : LOWEST)) {
            return;
        }
        Box box = sight.piece().outline().box();
        room = table.within(Box.around(List.of(
                view.toScreen(new Point(box.minX(), box.minY())), view.toScreen(new Point(box.maxX(), box.maxY())))));
        NameSettings settings = settings();
        if (asOtherSizes(settings)) {
            return;
        }
        List<Point> best = List.of(view.toScreen(sight.name().at()));
        // In letters that go with the other names it stands better at another place than in the lowest ones at the
        // best.
        List<NameSetting> large = settings.whole().stream()
                .filter(way -> way.size() < NameSetting.SMALLEST)
                .toList();
        if (wide >= LEAST && write(large, first, best, 0, ROOMY)) {
            return;
        }
        // What has no room for the lowest letters has none for words.
        List<Point> open = elsewhere().stream()
                .filter(p -> room.isClear(p, NameSetting.least(), NameSetting.least()))
                .toList();
        boolean across = wide >= LEAST
                && (write(large, first, open, 0, ROOMY)
                        || write(settings.whole(), NameSetting.SMALLEST, best, 0, ROOMY)
                        || write(settings.whole(), NameSetting.SMALLEST, open, 0, ROOMY)
                        || write(settings.whole(), NameSetting.SMALLEST, open, 0, CLOSE)
                        || write(settings.whole(), NameSetting.SMALLEST, open, 0, 0));
        boolean along = !across && upright && write(settings.narrow(), first, open, UP, 0);
        if (!across && !along && wide >= LEAST && !sight.instructs()) {
            write(settings.cut(), 0, open, 0, 0);
        }
    }

    /** As the last size of the same piece was named, where that leaves this one clear as well. */
    private boolean asOtherSizes(NameSettings settings) {
        return alike.of(sight, settings, view)
                .filter(like ->
                        room.takeClear(like.at(), like.way().wide(), like.way().high(), like.turn()))
                .map(like -> {
                    write(like.way(), like.at(), like.turn());
                    return true;
                })
                .orElse(false);
    }

    /** Those that have found a place on their pieces. */
    static List<PlacedName> placed(List<NamePainter> names) {
        return names.stream().flatMap(name -> name.placed.stream()).toList();
    }

    /**
     * Writes it beside the piece, if it is not on it, or in short rows, or over lines that it may hide; at last without how
     * often the piece is cut. Notes where it is not whole.
     *
     * @param size of the letters of names on their pieces
     */
    void elsewhereThanOn(int size) {
        boolean slim = Math.min(wide, high) < LARGE;
        if (!written && (slim || !overLevels())) {
            written = BesideName.paint(gc, view, ink, sight, table, size) || slim && overLevels();
        }
        if (!written && wide >= LEAST && high >= LOWEST && sight.instructs()) {
            NameSettings settings = settings();
            List<Point> all = elsewhere();
            written = write(settings.stacked(), 0, all, 0, 0) || write(settings.cut(), 0, all, 0, 0);
        }
        if (!written) {
            overLines();
        }
        if (!written && wide >= LEAST && high >= LOWEST && write(settings().bare(), 0, elsewhere(), 0, 0)) {
            table.told().nameLacks(sight.piece().id());
        }
        if (!written) {
            table.told().nameLacks(sight.piece().id());
        }
    }

    /** Better over a level or a line inside the piece than beside it. */
    private boolean overLevels() {
        if (wide < LEAST || high < LOWEST || sight.aside()) {
            return false;
        }
        List<Point> best = List.of(view.toScreen(sight.name().at()));
        for (NameSetting last : lowest()) {
            Optional<Point> at = room.takeClear(best, last.wide(), last.high())
                    .or(() -> room.takeClear(elsewhere(), last.wide(), last.high()));
            if (at.isPresent()) {
                write(last, at.get(), 0);
                return true;
            }
        }
        return false;
    }

    /** In the lowest letters, with all that belongs to it. */
    private List<NameSetting> lowest() {
        return sight.instructs()
                ? settings().whole().stream()
                        .filter(s -> s.size() == NameSetting.SMALLEST)
                        .toList()
                : List.of(NameSetting.alone(sight.title(), NameSetting.SMALLEST, true));
    }

    /** Better over a notch or a stitching line than nowhere, but not over a dart, the grain or the sign of a fold. */
    private void overLines() {
        if (Math.min(wide, high) < LARGE) {
            return;
        }
        DrawnLine outline = outline();
        List<NameSetting> ways = new ArrayList<>();
        NameSettings settings = settings();
        settings.whole().stream().filter(s -> s.size() == NameSetting.SMALLEST).forEach(ways::add);
        ways.addAll(settings.stacked());
        ways.addAll(settings.cut());
        for (NameSetting way : ways) {
            Optional<Point> at = elsewhere().stream()
                    .filter(p -> !outline.meets(p, way.wide(), way.high(), 0))
                    .filter(p -> room.takeSparing(p, way.wide(), way.high()))
                    .findFirst();
            if (at.isPresent()) {
                write(way, at.get(), 0);
                return;
            }
        }
    }

    /** Writes it in the first way for which one of the places is clear of all lines and words. */
    private boolean write(List<NameSetting> ways, int first, List<Point> places, double turn, double beside) {
        for (NameSetting way : ways) {
            if (way.size() >= first) {
                for (Point place : places) {
                    if (room.takeClear(place, way.wide() + 2 * beside, way.high() + beside / 4, turn)) {
                        write(way, place, turn);
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private NameSettings settings() {
        return NameSettings.of(sight);
    }

    private DrawnLine outline() {
        return table.papers().outline(sight.piece().id());
    }

    /** Other places on what is seen of the piece, the best first. */
    private List<Point> elsewhere() {
        if (places == null) {
            places = spread();
        }
        return places;
    }

    private List<Point> spread() {
        DrawnLine outline = outline();
        Box box = sight.piece().outline().box();
        Point from = view.toScreen(new Point(box.minX(), box.minY()));
        Point to = view.toScreen(new Point(box.maxX(), box.maxY()));
        return room
                .view()
                .spread(
                        new Box(from.x(), from.y(), to.x(), to.y()),
                        COLUMNS,
                        ROWS,
                        view.toScreen(sight.name().at()))
                .stream()
                .filter(outline::surrounds)
                .toList();
    }

    private void write(NameSetting way, Point middle, double turn) {
        written = true;
        table.told().name(sight.piece().id(), way.words());
        alike.put(sight, settings(), way, middle, turn, view);
        if (!way.whole()) {
            table.told().nameLacks(sight.piece().id());
        }
        placed = Optional.of(new PlacedName(way, middle, turn, letters));
    }
}
