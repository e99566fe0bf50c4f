package easewright.editor.panel;

import easewright.editor.model.ClothWords;
import easewright.editor.model.Desk;
import easewright.text.Words;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A test of the cloth by hand: what came of it, the length found, and what to do. What is wrong with a length stands in
 * the place of what to do, so that nothing moves.
 */
final class HandTest extends VBox {
    private final Label result = new Label();
    private final Label how = new Label();
    private final Label now = new Label();
    private final LengthField field;
    private ClothWords.Test test;

    /**
     * @param taker takes the length found, mm, or empty when the field was emptied; says whether it can be
     */
    HandTest(String id, Predicate<OptionalDouble> taker) {
        super(2);
        Label wrong = new Label();
        field = LengthField.refusing(wrong, mm -> taker.test(mm) ? "" : test.range());
        field.setId(id);
        field.setPrefWidth(EaseRowView.FIELD);
        field.setMinWidth(USE_PREF_SIZE);
        how.getStyleClass().add("quiet");
        how.setWrapText(true);
        how.setMinHeight(USE_PREF_SIZE);
        how.visibleProperty().bind(wrong.visibleProperty().not());
        now.getStyleClass().add("quiet");
        now.setMinWidth(USE_PREF_SIZE);
        HBox row = new HBox(8, result, Parts.gap(), now, field);
        row.setAlignment(Pos.CENTER_LEFT);
        StackPane below = new StackPane(how, wrong);
        below.setAlignment(Pos.TOP_LEFT);
        getChildren().setAll(row, below);
    }

    void show(String what, ClothWords.Test is, Desk desk) {
        test = is;
        Words words = desk.words();
        result.setText(test.result());
        now.setText(words.of("editor.cloth.length-now"));
        Parts.present(now, test.can());
        field.setPromptText(test.can() ? test.marked() : "");
        how.setText(test.how());
        field.describe(words.of("editor.cloth." + what + ".name"), words.of("editor.cloth." + what + ".hint"));
        field.show(test.length(), desk.unit());
        field.setDisable(!test.can());
    }
}
