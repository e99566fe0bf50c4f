package easewright.editor.panel;

import javafx.scene.Node;

/**
 * Whether a page has been hidden for longer than one picture. Before each picture the toolkit asks every part of the window
 * where it lies, of hidden pages as well, which have most of the parts; nothing comes of it for them but once, when they
 * are hidden.
 */
final class Unseen {
    private boolean settled;

    /** Asked once before each picture. */
    boolean is(Node page) {
        boolean before = settled;
        settled = !page.isVisible();
        return before && settled;
    }
}
