package easewright.editor.panel;

import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.stage.Window;

/**
 * Keeps a list that opens above its field, for want of room below, close to it. The toolkit places the list by a height
 * that it takes it to have before its rows are made, and leaves a gap where they turn out lower.
 */
final class ListPlace {
    private ListPlace() {}

    static void above(ComboBox<?> box) {
        box.setOnShown(e -> Platform.runLater(() -> close(box)));
    }

    private static void close(ComboBox<?> box) {
        if (!box.isShowing() || !(box.getSkin() instanceof ComboBoxListViewSkin<?> skin)) {
            return;
        }
        Node list = skin.getPopupContent();
        Window window = list.getScene().getWindow();
        Bounds field = box.localToScreen(box.getLayoutBounds());
        Bounds seen = list.localToScreen(list.getLayoutBounds());
        if (field != null && seen != null && seen.getMinY() < field.getMinY()) {
            window.setY(window.getY() + field.getMinY() - seen.getMaxY());
        }
    }
}
