package easewright.editor.panel;

import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The tab of a page. The line below the chosen one is as wide as its word, and its number where it has one: what is kept free for
 * a number does not belong to it.
 */
final class SheetTab extends ToggleButton {
    /** Room for a count, pixels. */
    private static final double COUNT = 20;

    private final Label count = new Label();

    /** @param counted whether it tells how much there is on its page, for which it has room while there is nothing as well */
    SheetTab(boolean counted) {
        getStyleClass().add("sheet-tab");
        Label word = new Label();
        word.textProperty().bind(textProperty());
        word.setMinWidth(USE_PREF_SIZE);
        Region line = new Region();
        line.getStyleClass().add("sheet-tab-line");
        HBox words = new HBox(3, word);
        if (counted) {
            count.setMinWidth(COUNT);
            words.getChildren().add(count);
        }
        VBox all = new VBox(words, line) {
            @Override
            protected void layoutChildren() {
                super.layoutChildren();
                Region under = count.getText().isEmpty() ? word : words;
                line.resize(snapSizeX(under.prefWidth(-1)), line.getHeight());
            }
        };
        all.setMaxWidth(USE_PREF_SIZE);
        all.getStyleClass().add("sheet-tab-word");
        setGraphic(all);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    }

    /** How much there is on its page; empty for nothing. */
    void count(String text) {
        count.setText(text);
    }
}
