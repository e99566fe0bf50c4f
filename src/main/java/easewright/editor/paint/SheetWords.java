package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Caption;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * Words that are written on the drawing beside the pieces, such as the length of a square to measure the scale by: other
 * words leave them to be seen, and those that are too small to be read are written anew in their place.
 */
final class SheetWords {
    /** As small words on the table are, pixels. */
    private static final double LETTERS = 11;

    /** From row to row, as a part of the height of letters. */
    private static final double PITCH = 1.2;

    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final LabelRoom room;

    SheetWords(GraphicsContext gc, Viewport view, Ink ink, LabelRoom room) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.room = room;
    }

    void paint(List<Caption> words) {
        words.forEach(this::paint);
    }

    private void paint(Caption words) {
        double high = words.height() * view.scale();
        Box drawn = around(words, high);
        if (high < DrawnWords.READABLE && high >= DrawnWords.SEEN) {
            Box place = around(words, LETTERS);
            if (room.isClear(place.centre(), place.width(), place.height())) {
                gc.setFill(ink.table());
                gc.fillRect(drawn.minX(), drawn.minY(), drawn.width(), drawn.height());
                write(words);
                drawn = place;
            }
        }
        room.put(drawn);
    }

    private void write(Caption words) {
        gc.setFont(Font.font(LETTERS));
        gc.setFill(ink.quiet());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        Point at = view.toScreen(words.middle());
        for (int i = 0; i < words.lines().size(); i++) {
            gc.fillText(words.lines().get(i), at.x(), at.y() + i * PITCH * LETTERS);
        }
    }

    /** Around words whose letters are so high, pixels. */
    private Box around(Caption words, double high) {
        Font font = Font.font(LETTERS);
        double longest = words.lines().stream()
                .mapToDouble(line -> Ruler.width(line, font))
                .max()
                .orElse(0);
        double wide = longest * high / LETTERS + 2;
        Point at = view.toScreen(words.middle());
        return new Box(
                at.x() - wide / 2,
                at.y() - PITCH / 2 * high,
                at.x() + wide / 2,
                at.y() + (words.lines().size() - 0.5) * PITCH * high);
    }
}
