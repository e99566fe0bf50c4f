package easewright.editor.panel;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Page up and page down show what comes next of what scrolls around the keys; by itself the toolkit goes a line or two. */
final class ByPages {
    /** So much of what was seen is seen again, pixels. */
    private static final double AGAIN = 40;

    private ByPages() {}

    /** Whatever in this part has the keys. */
    static void in(Parent part) {
        part.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            int by = e.getCode() == KeyCode.PAGE_UP ? -1 : e.getCode() == KeyCode.PAGE_DOWN ? 1 : 0;
            boolean plain = !e.isShiftDown() && !e.isAltDown() && !e.isControlDown() && !e.isMetaDown();
            if (by != 0 && plain && e.getTarget() instanceof Node keys && scroll(keys, by)) {
                e.consume();
            }
        });
    }

    private static boolean scroll(Node keys, int by) {
        for (Node around = keys; around != null; around = around.getParent()) {
            if (around instanceof ScrollPane pane && pane.getContent() != null) {
                double room = pane.getViewportBounds().getHeight();
                double rest = pane.getContent().getLayoutBounds().getHeight() - room;
                if (rest > 0) {
                    double step = Math.max(AGAIN, room - AGAIN) / rest * pane.getVmax();
                    pane.setVvalue(Math.max(0, Math.min(pane.getVmax(), pane.getVvalue() + by * step)));
                    return true;
                }
            }
        }
        return false;
    }
}
