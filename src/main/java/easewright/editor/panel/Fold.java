package easewright.editor.panel;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** What is seldom needed, below a line of words that opens and closes it. */
final class Fold extends VBox {
    private final ToggleButton head = new ToggleButton();
    private final Node inside;
    private String title = "";
    private boolean folds = true;

    /**
     * @param id of the line that is pressed
     */
    Fold(String id, Node inside) {
        super(8, inside);
        this.inside = inside;
        head.setId(id);
        head.getStyleClass().addAll("small", "fold-head");
        head.setOnAction(e -> show());
        getChildren().add(0, head);
        show();
    }

    /**
     * @param folds otherwise what is inside is to be seen without that line
     */
    void show(String words, String hint, boolean folds) {
        title = words;
        this.folds = folds;
        Hints.on(head, hint);
        show();
    }

    private void show() {
        head.setText((head.isSelected() ? "\u25be " : "\u25b8 ") + title);
        head.setAccessibleText(title);
        Parts.present(head, folds);
        Parts.present(inside, !folds || head.isSelected());
    }

    void close() {
        head.setSelected(false);
        show();
    }
}
