package easewright.editor.panel;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** Keeps a part of a scrolled page in its place in the window while the page around it is made anew. */
final class HeldStill {
    private HeldStill() {}

    /**
     * @param part   what stays where it is; may be null
     * @param change makes the page anew
     */
    static void during(Node part, Runnable change) {
        ScrollPane pane = part == null || part.getScene() == null ? null : around(part);
        if (pane == null) {
            change.run();
            return;
        }
        double before = top(part, pane);
        double from = pane.getVvalue() / pane.getVmax() * rest(pane);
        change.run();
        if (part.getScene() == null) {
            return;
        }
        pane.applyCss();
        pane.layout();
        double rest = rest(pane);
        if (rest > 0) {
            double wanted = from + top(part, pane) - before;
            pane.setVvalue(Math.max(0, Math.min(1, wanted / rest)) * pane.getVmax());
        }
    }

    private static ScrollPane around(Node part) {
        Parent parent = part.getParent();
        while (parent != null && !(parent instanceof ScrollPane)) {
            parent = parent.getParent();
        }
        return (ScrollPane) parent;
    }

    private static double top(Node part, ScrollPane pane) {
        Bounds place = pane.getContent().sceneToLocal(part.localToScene(part.getBoundsInLocal()));
        return place.getMinY();
    }

    private static double rest(ScrollPane pane) {
        return Math.max(
                0,
                pane.getContent().getLayoutBounds().getHeight()
                        - pane.getViewportBounds().getHeight());
    }
}
