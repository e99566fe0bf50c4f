package easewright.editor.panel;

import java.util.Collection;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/**
 * Pages on top of each other, of which one is visible. Each is put there when it is first turned to: what lies in a window
 * is styled with it and asked for its bounds before each picture, hidden or not.
 */
class Turned extends StackPane {
    /** The pages that may be turned to; what is visible already is there at once. */
    final void hold(Collection<? extends Node> pages) {
        for (Node page : pages) {
            put(page);
            page.visibleProperty().addListener(o -> put(page));
        }
    }

    private void put(Node page) {
        if (page.isVisible() && page.getParent() != this) {
            getChildren().add(page);
            // What scrolls has its parts only once it is styled, and where the keys go is looked for among them.
            page.applyCss();
        }
    }
}
