package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;

/**
 * The words that are written on the drawing itself, where it is to be seen. A name of a piece gives way to the one that the
 * table writes, so that all pieces are named in one hand, whatever they were drawn with; other words stay to be read.
 *
 * @param shown whether the drawing is to be seen
 */
record DrawnWords(boolean shown, Viewport view) {
    /** Lower letters are not read on a screen, pixels. */
    static final double READABLE = 9;

    /** Still lower ones are seen as dots at most, pixels. */
    static final double SEEN = 2.5;

    /** Covers with paper the names on a piece: what is written in their stead says the same. */
    void cover(GraphicsContext gc, Ink ink, TableScene.PieceSight piece) {
        if (shown && !piece.title().isEmpty()) {
            gc.setFill(ink.paper());
            piece.written().stream()
                    .filter(w -> w.names() && isOn(piece, w.box()))
                    .map(w -> onScreen(w.box()))
                    .forEach(box -> gc.fillRect(box.minX(), box.minY(), box.width(), box.height()));
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
                        .filter(w -> !w.names() || !isOn(piece, w.box()))
                        .map(w -> onScreen(w.box()))
                        .toList()
                : List.of();
    }

    private Box onScreen(Box box) {
        return Box.around(List.of(
                view.toScreen(new Point(box.minX(), box.minY())), view.toScreen(new Point(box.maxX(), box.maxY()))));
    }
}
