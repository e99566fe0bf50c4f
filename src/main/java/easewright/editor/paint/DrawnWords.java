package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;

/**
 * The words that are written on the drawing itself, where it is to be seen: what can be read there is not said again, and
 * what cannot be read gives way to what is said instead.
 *
 * @param shown whether the drawing is to be seen
 */
record DrawnWords(boolean shown, Viewport view) {
    /** Lower letters are not read on a screen, pixels. */
    static final double READABLE = 9;

    /** Still lower ones are seen as dots at most, pixels. */
    static final double SEEN = 2.5;

    /** Whether the drawing says the name of a piece there, to be read. */
    boolean say(TableScene.PieceSight piece) {
        return shown && piece.written().stream().anyMatch(w -> w.names() && isRead(w));
    }

    private boolean isRead(TableScene.Written words) {
        return words.high() * view.scale() >= READABLE;
    }

    /** Covers with paper the names that are too small to be read: what is written in their stead says the same. */
    void cover(GraphicsContext gc, Ink ink, TableScene.PieceSight piece) {
        if (shown && !piece.title().isEmpty()) {
            gc.setFill(ink.paper());
            piece.written().stream().filter(w -> w.names() && !isRead(w)).forEach(w -> {
                Box box = onScreen(w.box());
                if (isOn(piece, w.box())) {
                    gc.fillRect(box.minX(), box.minY(), box.width(), box.height());
                }
            });
        }
    }

    private static boolean isOn(TableScene.PieceSight piece, Box box) {
        return Stream.of(
                        new Point(box.minX(), box.minY()),
                        new Point(box.maxX(), box.minY()),
                        new Point(box.maxX(), box.maxY()),
                        new Point(box.minX(), box.maxY()))
                .allMatch(piece.piece().outline()::contains);
    }

    /** Around the words on a piece that stay to be seen, pixels. */
    List<Box> boxes(TableScene.PieceSight piece) {
        return shown
                ? piece.written().stream()
                        .filter(w -> !w.names() || isRead(w) || !isOn(piece, w.box()))
                        .map(w -> onScreen(w.box()))
                        .toList()
                : List.of();
    }

    private Box onScreen(Box box) {
        return Box.around(List.of(
                view.toScreen(new Point(box.minX(), box.minY())), view.toScreen(new Point(box.maxX(), box.maxY()))));
    }
}
