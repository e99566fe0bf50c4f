package easewright.editor.panel;

import javafx.scene.input.KeyEvent;

/** Where a key leads among several that lie in a row. */
final class ByArrows {
    private ByArrows() {}

    /**
     * The number of the one a key goes to: the arrows to the next or the one before, Home and End to the first and the
     * last; −1 where the key is none of these, or there is none.
     *
     * @param at where the key was pressed
     */
    static int to(KeyEvent e, int at, int count) {
        if (e.isAltDown() || e.isShiftDown() || e.isShortcutDown() || count == 0) {
            return -1;
        }
        return switch (e.getCode()) {
            case LEFT, UP, KP_LEFT, KP_UP -> Math.max(0, at - 1);
            case RIGHT, DOWN, KP_RIGHT, KP_DOWN -> Math.min(count - 1, at + 1);
            case HOME -> 0;
            case END -> count - 1;
            default -> -1;
        };
    }
}
