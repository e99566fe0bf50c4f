package easewright.editor.panel;

import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;

/**
 * Hints that appear beside the pointer. Making one is costly, for each has a window of its own: a control keeps its
 * hint, and only the words change.
 */
final class Hints {
    private Hints() {}

    static void on(Control control, String words) {
        if (control.getTooltip() == null) {
            control.setTooltip(new Tooltip(words));
        } else if (!words.equals(control.getTooltip().getText())) {
            control.getTooltip().setText(words);
        }
    }
}
