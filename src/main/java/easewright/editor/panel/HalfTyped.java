package easewright.editor.panel;

import easewright.editor.model.Unfinished;
import java.util.List;
import javafx.scene.Scene;

/** What stands in the fields of the window and has not been taken yet. */
public final class HalfTyped {
    private HalfTyped() {}

    /** In the order of the window. */
    public static List<Unfinished.Typed> in(Scene scene) {
        return scene.getRoot().lookupAll(".text-field").stream()
                .filter(CheckedField.class::isInstance)
                .map(CheckedField.class::cast)
                .filter(field -> !field.getText().equals(field.shown()))
                .map(field -> new Unfinished.Typed(field.called(), field.getText()))
                .toList();
    }
}
