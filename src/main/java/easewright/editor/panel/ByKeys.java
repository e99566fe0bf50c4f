package easewright.editor.panel;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/** Whether a window is worked by keyboard just now: then it shows where the keys are, and says which there are. */
public final class ByKeys {
    private static final PseudoClass BY_KEYS = PseudoClass.getPseudoClass("by-keys");

    private final ReadOnlyBooleanWrapper on = new ReadOnlyBooleanWrapper(false);

    /** Follows what is done in a window. */
    public void follow(Scene scene) {
        on.addListener((o, was, is) -> scene.getRoot().pseudoClassStateChanged(BY_KEYS, is));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> on.set(true));
        scene.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> on.set(false));
        ByLetter.in(scene);
        ListsByKeys.in(scene, on::get);
        InView.follow(scene, on::get);
    }

    /** What has just come onto the table is looked at first: it is not framed before the next key. */
    public void rest() {
        on.set(false);
    }

    /** Follows what is done in a window that was opened from another one, and begins as that one is worked. */
    void followOn(Scene scene, Scene from) {
        follow(scene);
        on.set(from.getRoot().getPseudoClassStates().contains(BY_KEYS));
    }

    ReadOnlyBooleanProperty onProperty() {
        return on.getReadOnlyProperty();
    }
}
