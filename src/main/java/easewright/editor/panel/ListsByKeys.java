package easewright.editor.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;

/**
 * Lists that hang on a button: opened by a key, the first entry has the keys, so that Enter always chooses what is lit.
 * The toolkit lights it only the first time it makes the list.
 */
final class ListsByKeys {
    private ListsByKeys() {}

    /**
     * Follows the lists of a window.
     *
     * @param byKeys whether the window is worked by keyboard
     */
    static void in(Scene scene, BooleanSupplier byKeys) {
        scene.focusOwnerProperty().addListener((o, was, is) -> {
            if (is instanceof MenuButton list && list.getProperties().put(ListsByKeys.class, true) == null) {
                list.showingProperty().addListener((p, closed, opened) -> {
                    if (opened && byKeys.getAsBoolean()) {
                        Platform.runLater(() -> first(list));
                    }
                });
            }
        });
    }

    private static void first(MenuButton list) {
        List<MenuItem> items = entries(list);
        if (list.isShowing() && at(items) < 0 && !items.isEmpty()) {
            go(items.get(0));
        }
    }

    /** What can be chosen from an open list. */
    static List<MenuItem> entries(MenuButton list) {
        return list.getItems().stream()
                .filter(i -> i.isVisible() && !i.isDisable() && i.getText() != null)
                .toList();
    }

    /** The number of the entry that has the keys, below 0 for none. */
    static int at(List<MenuItem> items) {
        for (int i = 0; i < items.size(); i++) {
            if (line(items.get(i)).filter(Node::isFocused).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    /** Gives the keys to an entry of an open list. */
    static void go(MenuItem item) {
        line(item).ifPresent(Node::requestFocus);
    }

    private static Optional<Node> line(MenuItem item) {
        return Optional.ofNullable(item.getStyleableNode());
    }
}
