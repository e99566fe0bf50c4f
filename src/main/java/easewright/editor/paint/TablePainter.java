package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/** Draws the whole table: its grid, then piece after piece. */
public final class TablePainter {
    /** Grid lines closer than this many pixels would be a grey wash. */
    private static final double CLOSEST_GRID = 9;

    /** Words leave so much around the ends of a cut, pixels. */
    private static final double PLACE = 20;

    /** Each step a whole multiple of the one before it, mm. */
    private static final double[] CM_STEPS = {1, 10, 50, 100, 500, 1000, 5000};

    private static final double[] INCH_STEPS = {25.4 / 16, 25.4 / 4, 25.4, 25.4 * 6, 25.4 * 36, 25.4 * 360};

    private TablePainter() {}

    /** Paints the scene over a canvas of the given size in pixels; gives the room that its words have taken. */
    public static LabelRoom paint(
            GraphicsContext gc, double width, double height, Viewport view, Ink ink, TableScene scene) {
        return paint(
                TableLayers.one(gc),
                width,
                height,
                1,
                view,
                ink,
                scene,
                Underlay.NONE,
                List.of(),
                List.of(),
                new DrawnLines());
    }

    /**
     * The same with the drawing itself faintly on the paper of the pieces.
     *
     * @param pixels of the screen to one of the picture
     * @param cuts  where pieces are to be cut: above their lines and below their words
     * @param grips the middles of grips that words are to leave to be seen, pixels
     * @param kept  lines of the last picture, and then of this one
     */
    public static LabelRoom paint(
            TableLayers layers,
            double width,
            double height,
            double pixels,
            Viewport view,
            Ink ink,
            TableScene scene,
            Underlay underlay,
            List<Line> cuts,
            List<Point> grips,
            DrawnLines kept) {
        List<TableScene.PieceSight> seen = scene.pieces().stream()
                .filter(piece -> inSight(piece, view, width, height))
                .toList();
        DrawnWords words = new DrawnWords(underlay.drawn().isPresent(), view);
        kept.begin(view);
        layers.begin(
                new TableLayers.Sheet(width, height, pixels, view, ink, scene.trying(), scene.inches()),
                seen,
                underlay.isEmpty(),
                kept);
        GraphicsContext gc = layers.above();
        List<PiecePainter> pieces = seen.stream()
                .map(piece -> new PiecePainter(
                        layers.isStill(piece) ? layers.below() : gc,
                        view,
                        piece.aside() ? ink.aside() : ink,
                        piece,
                        scene.trying(),
                        words,
                        kept))
                .toList();
        if (layers.isFresh()) {
            ground(layers.below(), width, height, view, ink, scene.inches());
        }
        // All papers below all lines, as of sizes that lie over each other each is to be seen; what is aside undermost.
        List<PiecePainter> asideFirst = new ArrayList<>(pieces);
        asideFirst.removeIf(piece -> !layers.isFresh() && layers.isStill(piece.sight()));
        asideFirst.sort(Comparator.comparing(PiecePainter::isAside).reversed());
        asideFirst.forEach(PiecePainter::paper);
        if (!underlay.isEmpty()) {
            underlay.paint(gc, view);
            seen.forEach(piece -> words.cover(gc, ink, piece));
        }
        asideFirst.forEach(piece -> piece.lines(underlay.drawn().isPresent()));
        MisfitPainter misfits = new MisfitPainter(gc, view, ink, scene.misfits());
        misfits.lines();
        LabelRoom room = new LabelRoom(new Box(0, 0, width, height));
        pieces.forEach(piece -> piece.keepClear(room));
        misfits.keepClear(room);
        seen.forEach(piece -> words.boxes(piece).forEach(room::put));
        if (underlay.drawn().isPresent()) {
            new SheetWords(gc, view, ink, room).paint(scene.beside());
        }
        for (Line cut : cuts) {
            room.put(LabelRoom.around(view.toScreen(cut.start()), PLACE, PLACE));
            room.put(LabelRoom.around(view.toScreen(cut.end()), PLACE, PLACE));
        }
        grips.forEach(grip -> room.put(LabelRoom.around(grip, LevelPainter.GRIP, LevelPainter.GRIP)));
        List<LevelPainter> levels = seen.stream()
                .map(piece -> new LevelPainter(gc, view, piece.aside() ? ink.aside() : ink, piece, room))
                .toList();
        levels.forEach(LevelPainter::lines);
        cuts.forEach(cut -> PlacePainter.cut(gc, view, ink, cut));
        levels.forEach(LevelPainter::ends);
        levels.forEach(LevelPainter::keepClear);
        List<LevelLabels> labels = seen.stream()
                .map(piece -> new LevelLabels(gc, view, piece.aside() ? ink.aside() : ink, piece, room))
                .toList();
        LevelLabels.Common common = LevelLabels.common(labels, room);
        labels.forEach(label -> label.atWork(common));
        boolean compact = labels.stream().anyMatch(LevelLabels::isCompact);
        labels.forEach(label -> label.write(compact));
        labels.forEach(LevelLabels::clearOthers);
        labels.forEach(label -> label.write(false));
        SizeTagPainter.paint(gc, view, ink, scene.tags(), room);
        SizesAlike alike = new SizesAlike();
        int first = NamePainter.first(seen, view);
        List<NamePainter> names = seen.stream()
                .map(piece -> new NamePainter(gc, view, ink, piece, room, first, alike))
                .toList();
        names.forEach(NamePainter::onPiece);
        int letters = PlacedName.common(first, NamePainter.placed(names));
        names.forEach(name -> name.elsewhereThanOn(letters));
        NamePainter.placed(names).forEach(name -> name.paint(letters));
        labels.forEach(LevelLabels::others);
        labels.forEach(label -> label.write(false));
        misfits.words(room);
        return room;
    }

    /** Paints the table with nothing on it. */
    public static void ground(GraphicsContext gc, double width, double height, Viewport view, Ink ink, boolean inches) {
        gc.setFill(ink.table());
        gc.fillRect(0, 0, width, height);
        grid(gc, width, height, view, ink, inches);
    }

    private static boolean inSight(TableScene.PieceSight sight, Viewport view, double width, double height) {
        var box = sight.piece().outline().box();
        if (sight.ghost().isPresent()) {
            box = box.union(sight.ghost().get().box());
        }
        double reach = 60;
        return view.screenX(box.maxX()) > -reach
                && view.screenX(box.minX()) < width + reach
                && view.screenY(box.maxY()) > -reach
                && view.screenY(box.minY()) < height + reach;
    }

    /** Fine lines as close as they can be told apart, and stronger ones at the next round step. */
    private static void grid(GraphicsContext gc, double width, double height, Viewport view, Ink ink, boolean inches) {
        double[] steps = inches ? INCH_STEPS : CM_STEPS;
        int fine = 0;
        while (fine < steps.length - 2 && steps[fine] * view.scale() < CLOSEST_GRID) {
            fine++;
        }
        gc.setFill(ink.grid());
        lines(gc, width, height, view, steps[fine]);
        gc.setFill(ink.gridStrong());
        lines(gc, width, height, view, steps[fine + 1]);
    }

    /** Each line is filled as a box one pixel wide: stroked, it would be worked out as a curve, at many times the cost. */
    private static void lines(GraphicsContext gc, double width, double height, Viewport view, double step) {
        double firstX = Math.ceil(-view.x() / view.scale() / step) * step;
        for (double mm = firstX; view.screenX(mm) < width; mm += step) {
            gc.fillRect(Math.floor(view.screenX(mm)), 0, 1, height);
        }
        double firstY = Math.ceil(-view.y() / view.scale() / step) * step;
        for (double mm = firstY; view.screenY(mm) < height; mm += step) {
            gc.fillRect(0, Math.floor(view.screenY(mm)), width, 1);
        }
    }
}
