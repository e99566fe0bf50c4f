package easewright.editor.file;

import java.util.HashSet;
import java.util.Set;
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
     * @param owner steps back, until the last that stands over it is closed
     * @param over  while this one is shown
     */
    public static void step(Window owner, Window over) {
        Scene scene = owner.getScene();
        over.showingProperty().addListener((o, was, is) -> {
            Stack stack = (Stack) scene.getProperties().computeIfAbsent(BEHIND, b -> new Stack(scene.getFill()));
            if (is) {
                stack.over.add(over);
            } else {
                stack.over.remove(over);
            }
            boolean behind = !stack.over.isEmpty();
            scene.setFill(behind ? Color.BLACK : stack.fill);
            scene.getRoot().pseudoClassStateChanged(BEHIND, behind);
            if (!behind) {
                scene.getProperties().remove(BEHIND);
            }
        });
    }

    /**
     * What is over one window.
     *
     * @param fill its own, from before the first of them
     */
    private record Stack(Paint fill, Set<Window> over) {
        Stack(Paint fill) {
            this(fill, new HashSet<>());
        }
    }
}
