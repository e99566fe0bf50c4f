package easewright.editor.panel;

import javafx.geometry.Pos;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The tab of a page. The line below the chosen one is as wide as its word: what is kept free beside it for how much there is on
 * the page does not belong to it.
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
        VBox named = new VBox(word, line);
        named.getStyleClass().add("sheet-tab-word");
        HBox all = new HBox(3, named);
        all.setAlignment(Pos.TOP_CENTER);
        if (counted) {
            count.setMinWidth(COUNT);
            all.getChildren().add(count);
        }
        setGraphic(all);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    }

    /** How much there is on its page; empty for nothing. */
    void count(String text) {
        count.setText(text);
    }
}
