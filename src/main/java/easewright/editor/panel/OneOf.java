package easewright.editor.panel;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * Buttons of which one is on, and stays on when it is pressed once more. They are one stop on the way of the Tab key,
 * the one that is on. The arrow keys go from one to the next and do what a press on it does: by themselves they would
 * only light the next button, and what it stands for would not follow.
 */
final class OneOf extends ToggleGroup {
    OneOf() {
        getToggles().addListener((ListChangeListener<Toggle>) change -> {
            while (change.next()) {
                change.getAddedSubList().stream()
                        .filter(ToggleButton.class::isInstance)
                        .map(ToggleButton.class::cast)
                        .forEach(this::add);
            }
            settle();
        });
        selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null && getToggles().contains(was)) {
                was.setSelected(true);
            }
            settle();
        });
    }

    private void add(ToggleButton button) {
        button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        button.addEventFilter(KeyEvent.KEY_PRESSED, e -> pressed(button, e));
        // What is pressed by the mouse gets the keys as any other button does.
        button.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> button.setFocusTraversable(true));
        button.focusedProperty().addListener((o, was, is) -> settle());
    }

    private List<ToggleButton> buttons() {
        return getToggles().stream()
                .filter(ToggleButton.class::isInstance)
                .map(ToggleButton.class::cast)
                .filter(b -> !b.isDisabled() && b.isVisible())
                .toList();
    }

    private void settle() {
        List<ToggleButton> buttons = buttons();
        ToggleButton stop = buttons.stream()
                .filter(b -> b.isFocused() || b.isSelected())
                .findFirst()
                .orElse(buttons.isEmpty() ? null : buttons.get(0));
        buttons.forEach(b -> b.setFocusTraversable(b == stop || b.isFocused() || b.isSelected()));
    }

    private void pressed(ToggleButton from, KeyEvent e) {
        List<ToggleButton> buttons = buttons();
        int at = buttons.indexOf(from);
        int to = ByArrows.to(e, at, buttons.size());
        if (at >= 0 && to >= 0) {
            e.consume();
            buttons.get(to).requestFocus();
            if (!buttons.get(to).isSelected()) {
                buttons.get(to).fire();
            }
        }
    }
}
