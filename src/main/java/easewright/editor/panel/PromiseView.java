package easewright.editor.panel;

import easewright.text.Words;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What is going to be told of an amount, under the signs it is told with, in the room that is kept for that. */
final class PromiseView extends VBox {
    private static final String[] SIGNS = {"\u2194", "=", "\u2713"};
    private static final String[] LINES = {"moved", "stayed", "fits"};

    PromiseView() {
        getStyleClass().add("effect");
        for (String sign : SIGNS) {
            Label mark = new Label(sign);
            mark.getStyleClass().addAll("effect-sign", "quiet");
            Label said = new Label();
            said.getStyleClass().addAll("effect-words", "quiet");
            said.setMinHeight(Region.USE_PREF_SIZE);
            getChildren().add(new HBox(7, mark, said));
        }
    }

    void say(Words words) {
        for (int i = 0; i < LINES.length; i++) {
            HBox row = (HBox) getChildren().get(i);
            ((Label) row.getChildren().get(1)).setText(words.of("editor.here.promise." + LINES[i]));
        }
    }
}
