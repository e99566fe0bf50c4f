package easewright.editor.panel;

import javafx.beans.InvalidationListener;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;

/**
 * Keeps the room of a page's bar at the right of it, so that no column moves when the bar comes or goes; where all of the page is
 * seen, the bar is not.
 */
final class BarRoom {
    /** What is higher by less needs no bar, pixels. */
    private static final double HAIR = 0.5;

    private BarRoom() {}

    /** @param page with its content */
    static void keep(ScrollPane page) {
        page.setVbarPolicy(ScrollPane.ScrollBarPolicy.ALWAYS);
        InvalidationListener look = o -> look(page);
        page.getContent().layoutBoundsProperty().addListener(look);
        page.viewportBoundsProperty().addListener(look);
        page.skinProperty().addListener(look);
    }

    private static void look(ScrollPane page) {
        double high = page.getContent().getLayoutBounds().getHeight();
        boolean needed = high > page.getViewportBounds().getHeight() + HAIR;
        for (Node part : page.getChildrenUnmodifiable()) {
            if (part instanceof ScrollBar bar && bar.getOrientation() == Orientation.VERTICAL) {
                // Above what the look says of bars under the pointer and elsewhere.
                bar.setStyle(needed ? "" : "-fx-opacity: 0");
                bar.setMouseTransparent(!needed);
            }
        }
    }
}
