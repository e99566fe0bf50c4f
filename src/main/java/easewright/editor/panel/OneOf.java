package easewright.editor.panel;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyEvent;

/**
 * Buttons of which one is on, and stays on when it is pressed once more. The arrow keys go from one to the next and do what a press on it does: by themselves they
 * would only light the next button, and what it stands for would not follow.
 */
final class OneOf extends ToggleGroup {
    OneOf() {
        getToggles().addListener((ListChangeListener<Toggle>) change -> {
            while (change.next()) {
                change.getAddedSubList().stream()
                        .filter(ToggleButton.class::isInstance)
                        .map(ToggleButton.class::cast)
                        .forEach(b -> b.addEventFilter(KeyEvent.KEY_PRESSED, e -> pressed(b, e)));
            }
        });
        selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null && getToggles().contains(was)) {
                was.setSelected(true);
            }
        });
    }

    private void pressed(ToggleButton from, KeyEvent e) {
        boolean modified = e.isAltDown() || e.isShiftDown() || e.isShortcutDown();
        int step = switch (e.getCode()) {
            case LEFT, UP -> -1;
            case RIGHT, DOWN -> 1;
            default -> 0;
        };
        if (step != 0 && !modified) {
            e.consume();
            for (int i = getToggles().indexOf(from) + step;
                    i >= 0 && i < getToggles().size();
                    i += step) {
                if (getToggles().get(i) instanceof ToggleButton to && !to.isDisabled() && to.isVisible()) {
                    to.requestFocus();
                    if (!to.isSelected()) {
                        to.fire();
                    }
                    return;
                }
            }
        }
    }
}
