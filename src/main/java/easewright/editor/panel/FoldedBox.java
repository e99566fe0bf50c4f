package easewright.editor.panel;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A box whose parts are put into it when it is first unfolded: until then nothing of them has to be styled. */
final class FoldedBox extends VBox {
    private List<Node> inside = List.of();

    FoldedBox(double spacing) {
        super(spacing);
    }

    /** What will lie in it. */
    void hold(Node... parts) {
        inside = List.of(parts);
    }

    /** Puts its parts there, also that a text can be put back into a field among them while it is folded away. */
    void fill() {
        if (getChildren().isEmpty()) {
            getChildren().setAll(inside);
        }
    }
}
