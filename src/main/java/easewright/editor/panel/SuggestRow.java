package easewright.editor.panel;

import easewright.editor.mark.SuggestView;
import easewright.text.Words;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One suggestion with its box to tick. It never becomes lower, so that nothing moves up under the mouse. */
final class SuggestRow extends HBox {
    private final CheckBox tick = new CheckBox();
    private final Label what = new Label();
    private final Label why = new Label();
    private SuggestView.Group group;
    private SuggestView.Row row;

    /** What is done with a suggestion. */
    interface Hand {
        void tick(String key, boolean taken);

        /** Shows on the table what it speaks of, or no longer. */
        void point(String key, boolean on);
    }

    /**
     * @param shower brings a piece into sight
     */
    SuggestRow(Hand hand, Consumer<String> shower) {
        super(10);
        tick.getStyleClass().add("first-line");
        tick.setOnAction(e -> hand.tick(row.key(), tick.isSelected()));
        tick.focusedProperty().addListener((o, was, is) -> hand.point(row.key(), is));
        what.setWrapText(true);
        why.setWrapText(true);
        why.getStyleClass().add("quiet");
        VBox text = new VBox(what, why);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        getChildren().setAll(tick, text);
        getStyleClass().add("mark-row");
        setOnMouseEntered(e -> hand.point(row.key(), true));
        setOnMouseExited(e -> hand.point(row.key(), false));
        text.setOnMouseClicked(e -> {
            if (!group.piece().isEmpty()) {
                shower.accept(group.piece());
            }
        });
    }

    void show(SuggestView.Group in, SuggestView.Row now, Words words) {
        group = in;
        row = now;
        if (getHeight() > 0) {
            setMinHeight(getHeight());
        }
        String reason = now.guess() ? words.of("editor.suggest.guess", Map.of("why", now.why())) : now.why();
        tick.setSelected(now.taken());
        tick.setDisable(!now.offered());
        tick.setAccessibleText(
                in.piece().isEmpty() || now.what().contains(in.title())
                        ? now.what()
                        : words.of("editor.suggest.on", Map.of("what", now.what(), "piece", in.title())));
        tick.setAccessibleHelp(reason);
        Hints.on(tick, words.of("editor.suggest.tick.hint"));
        what.setText(now.what());
        what.setDisable(!now.offered());
        why.setText(reason);
    }

    boolean hasKeys() {
        return tick.isFocused();
    }

    void takeKeys() {
        tick.requestFocus();
    }
}
