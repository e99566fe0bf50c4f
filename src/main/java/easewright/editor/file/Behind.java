package easewright.editor.file;

import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.stage.Window;

/** A window that steps back while another one stands over it, which not every desktop gives a frame. */
public final class Behind {
    private static final PseudoClass BEHIND = PseudoClass.getPseudoClass("behind");

    private Behind() {}

    /**
     * @param owner steps back
     * @param over  while this one is shown
     */
    public static void step(Window owner, Window over) {
        Scene scene = owner.getScene();
        Paint before = scene.getFill();
        over.showingProperty().addListener((o, was, is) -> {
            scene.setFill(is ? Color.BLACK : before);
            scene.getRoot().pseudoClassStateChanged(BEHIND, is);
        });
    }
}
